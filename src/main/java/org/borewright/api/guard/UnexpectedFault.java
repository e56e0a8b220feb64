package org.borewright.api.guard;

import java.util.UUID;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemDocument;
import org.borewright.api.problem.ProblemType;
import org.jboss.logging.Logger;

/** Our own fault: logged in full under an id, of which the answer tells no more than that id. */
final class UnexpectedFault {

    private static final Logger LOG = Logger.getLogger(UnexpectedFault.class);

    private UnexpectedFault() {}

    /** Logs the cause. @return the document to answer with */
    static ProblemDocument log(Throwable cause, String asked) {
        String id = "urn:uuid:" + UUID.randomUUID();
        LOG.errorf(cause, "%s failed, id %s", asked, id);
        return ProblemDocument.of(
                Problem.of(ProblemType.UNEXPECTED_FAULT, "The service failed; the id tells where it is logged."), id);
    }
}
