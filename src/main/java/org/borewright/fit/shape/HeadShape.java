package org.borewright.fit.shape;

import java.util.Optional;
import org.borewright.measure.Length;

/**
 * The head above one cylinder.
 *
 * @param chamberVolume in cm³
 * @param flat whether it is flat over the crown, so that a dome comes nearer by its height
 * @param mouth the diameter of the chamber mouth or of the register the crown must clear; empty where the crown cannot reach it
 * @param gasketLand the largest opening for which the gasket still sits on its land
 * @param ratioGreatest the highest compression ratio allowed, in millionths
 */
public record HeadShape(
        double chamberVolume, boolean flat, Optional<Length> mouth, Length gasketLand, long ratioGreatest) {}
