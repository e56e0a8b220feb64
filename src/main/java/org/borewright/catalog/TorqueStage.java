package org.borewright.catalog;

import org.borewright.measure.Torque;

/** One step of tightening. */
public sealed interface TorqueStage {

    /**
     * Tighten to a torque.
     *
     * @param torque to reach
     */
    record ToTorque(Torque torque) implements TorqueStage {}

    /**
     * Turn on by an angle.
     *
     * @param degrees above zero
     */
    record ByAngle(int degrees) implements TorqueStage {}
}
