package org.borewright.fit;

import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/** The clean-up of a hole against the size it is to go to, as a check that shows value, limit and margin. */
public final class CleanUpCheck {

    private CleanUpCheck() {}

    /** By the bar: the worst clean-up against the finish less hone stock, guarded by 2U for it counts the reading twice. */
    public static Comparison byBar(Length worst, Length barSize, Uncertainty uncertainty) {
        return Rule.CLEAN_UP.atMost("by the bar", worst, barSize).within(uncertainty, Carried.TWICE);
    }

    /** By the bar in a finished hole, which is true: its largest reading against the finish less hone stock. */
    public static Comparison byBarInFinished(Length largest, Length barSize, Uncertainty uncertainty) {
        return Rule.CLEAN_UP.atMost("by the bar", largest, barSize).within(uncertainty);
    }

    /** By the hone alone: the largest reading and a little more against the finish. */
    public static Comparison byHone(Length cleanUp, Length finish, Uncertainty uncertainty) {
        return Rule.CLEAN_UP.atMost("by the hone", cleanUp, finish).within(uncertainty);
    }
}
