package org.borewright.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import org.borewright.api.problem.ProblemDocument;

/**
 * A refusal in words.
 *
 * @param problem what was refused, why, and the way out
 */
@CheckedTemplate(basePath = "page")
record ProblemPage(ProblemDocument problem) implements TemplateInstance {}
