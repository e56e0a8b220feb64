package org.borewright.measure.survey;

import java.util.List;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The shape of one hole as a grid shows it. Two axes miss an oval at 45° and two-point gauges miss lobes.
 *
 * @param taper the greatest difference along one axis between depths, not negative
 * @param bottomMinusTop the signed difference along the axis with the greatest taper: positive where the bottom is wider
 * @param outOfRound the greatest difference between axes at one depth: of diameters, about twice the roundness of ISO 1101
 * @param form the name of the profile
 */
public record BoreShape(Length taper, Length bottomMinusTop, Length outOfRound, Form form) {

    /** The name the trade gives to a profile over depth. */
    public enum Form {
        /** No place differs from another. */
        STRAIGHT("straight"),
        /** Wider toward the top. */
        TAPERED_TO_BOTTOM("narrows downward"),
        /** Wider toward the bottom. */
        BELL_MOUTH("bell-mouth"),
        /** Widest between the ends. */
        BARREL("barrel"),
        /** Narrowest between the ends. */
        WAIST("waist");

        private final String label;

        Form(String label) {
            this.label = label;
        }

        /** The name as shown. */
        public String label() {
            return label;
        }
    }

    /** The shape of a grid; an axis or a depth with a single reading adds nothing. Source: NAVEDTRA 14076, 3-5. */
    public static BoreShape of(Grid grid) {
        List<Length> steepest = List.of();
        for (int axis = 0; axis < grid.axes().size(); axis++) {
            List<Length> profile = grid.profile(axis);
            steepest = spread(profile).isMoreThan(spread(steepest)) ? profile : steepest;
        }
        Length outOfRound = Length.ZERO;
        for (int depth = 0; depth < grid.depths().size(); depth++) {
            outOfRound = outOfRound.max(spread(grid.section(depth)));
        }
        return new BoreShape(spread(steepest), bottomMinusTop(steepest), outOfRound, form(steepest));
    }

    private static Length spread(List<Length> readings) {
        return readings.isEmpty() ? Length.ZERO : Limits.around(readings).width();
    }

    private static Length bottomMinusTop(List<Length> profile) {
        return profile.isEmpty() ? Length.ZERO : profile.get(profile.size() - 1).minus(profile.get(0));
    }

    private static Form form(List<Length> profile) {
        if (spread(profile).equals(Length.ZERO)) {
            return Form.STRAIGHT;
        }
        Length top = profile.get(0);
        Length bottom = profile.get(profile.size() - 1);
        Limits all = Limits.around(profile);
        if (all.greatest().isMoreThan(top.max(bottom))) {
            return Form.BARREL;
        }
        if (all.least().isLessThan(top.min(bottom))) {
            return Form.WAIST;
        }
        return bottom.isMoreThan(top) ? Form.BELL_MOUTH : Form.TAPERED_TO_BOTTOM;
    }
}
