package org.borewright.fit;

import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
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

    private static final int LEAST_DEGREES = 45;
    private static final int TURN = 180;

    private ShapeShown() {}

    /** Whether a survey of a hole with so much stroke does. */
    public static boolean by(Survey survey, Length stroke) {
        return survey instanceof Grid grid && grid.showsShape() && spans(grid, stroke) && isRead45Apart(grid);
    }

    /** The check of a rule of the shape that is not made for want of readings. */
    public static Unchecked notShown(Rule rule) {
        return rule.notChecked("", TOO_LITTLE_READ);
    }

    private static boolean spans(Grid grid, Length stroke) {
        Length first = grid.depths().get(0);
        Length last = grid.depths().get(grid.depths().size() - 1);
        return !last.minus(first).doubled().isLessThan(stroke);
    }

    private static boolean isRead45Apart(Grid grid) {
        for (Axis one : grid.axes()) {
            for (Axis other : grid.axes()) {
                int apart = Math.abs(one.degrees() - other.degrees());
                if (Math.min(apart, TURN - apart) >= LEAST_DEGREES) {
                    return true;
                }
            }
        }
        return false;
    }
}
