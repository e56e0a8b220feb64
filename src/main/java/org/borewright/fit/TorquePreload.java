package org.borewright.fit;

import org.borewright.fit.shape.BoltShape;
import org.borewright.fit.shape.MetricThread;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.measure.Torque;

/**
 * What a torque pulls a bolt with, F = T/(K·d) at the lowest plausible K, against the proof load of its thread (ISO 898-1:2013). Over
 * 100 % the torque is refused, over 90 % a caution is due. Angle stages, unknown classes and other threads are not reckoned.
 */
public final class TorquePreload {

    private static final Amount PROOF_LOAD = new Amount(1_000_000, Quantity.PER_CENT);
    private static final Amount CAUTION = new Amount(900_000, Quantity.PER_CENT);

    private TorquePreload() {}

    /** The pull in newtons of a torque at a nut factor. */
    public static double pull(Torque torque, double factor, MetricThread thread) {
        return torque.newtonMetres() / (factor * thread.diameter().toMillimetres() / 1000);
    }

    /** A torque against the proof load, as a share of it. */
    public static Check check(String fastener, Torque torque, BoltShape bolt) {
        if (bolt.thread().isEmpty()) {
            return Rule.PRELOAD.notChecked(fastener, "not an ISO metric thread");
        }
        if (bolt.strength().isEmpty()) {
            return Rule.PRELOAD.notChecked(fastener, "property class not known");
        }
        return check(
                fastener,
                torque,
                bolt.condition().lowestFactor(),
                bolt.thread().get(),
                bolt.strength().get());
    }

    /** Whether a torque within the proof load still deserves a caution: over 90 % of it. */
    public static boolean isNearProofLoad(Comparison check) {
        return check.value().units() > CAUTION.units();
    }

    private static Comparison check(
            String fastener, Torque torque, double factor, MetricThread thread, PropertyClass strength) {
        double share = pull(torque, factor, thread) / strength.proofLoad(thread);
        return Rule.PRELOAD.atMost(fastener, Amount.perCentRoundedUp(share), PROOF_LOAD);
    }
}
