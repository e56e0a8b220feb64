package org.borewright.fit;

import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/** The largest diameter of a hole that is to run on with new rings. Source: the engine's wear allowance, over the present size. */
public final class ServiceWear {

    private ServiceWear() {}

    /**
     * The largest diameter against the present size and its allowance.
     *
     * @param present the smallest hole the present size can have had
     */
    public static Comparison check(Length largest, Uncertainty uncertainty, Length present, Length allowance) {
        return Rule.SERVICE_WEAR.atMost("", largest, present.plus(allowance)).within(uncertainty);
    }
}
