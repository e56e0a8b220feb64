package org.borewright.kit.bench.finish;

import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * A finished hole and the piston that goes in, as it is built.
 *
 * @param survey of the finished hole
 * @param part the piston's number
 * @param tag of the piston, where it was measured; empty where its tolerance is reckoned with
 */
public record FittedHole(CylinderSurvey survey, Piston part, Optional<String> tag) {}
