package org.borewright.fit;

import java.util.List;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Survey;

/**
 * Whether readings tell the taper and out-of-round of a hole: three depths that span half the stroke at the least, along two axes that
 * stand 45° apart at the least (common practice). Readings of one spot prove nothing of the rest, however many they are.
 */
public final class ShapeShown {

    /** What to do where they do not. */
    public static final String TOO_LITTLE_READ =
            "measure the hole at three depths at the least, over half the stroke or more, along two axes 45° apart or more";

    private static final int LEAST_DEPTHS = 3;
    private static final int LEAST_DEGREES = 45;

    private ShapeShown() {}

    /** Whether a survey of a hole with so much stroke does; a place over a port, or passed over, counts for nothing. */
    public static boolean by(Survey survey, Length stroke) {
        if (!(survey instanceof Grid grid)) {
            return false;
        }
        List<Length> depths = grid.depthsReadAcross(LEAST_DEGREES);
        return depths.size() >= LEAST_DEPTHS
                && !depths.get(depths.size() - 1).minus(depths.get(0)).doubled().isLessThan(stroke);
    }

    /** The check of a rule of the shape that is not made for want of readings. */
    public static Unchecked notShown(Rule rule) {
        return rule.notChecked("", TOO_LITTLE_READ);
    }
}
