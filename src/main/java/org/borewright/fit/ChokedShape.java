package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.Choke;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.Grid;

/**
 * Taper of a hole that is to be wider at one end. Every axis is asked, for one may have the choke and another not. Source: the window is
 * the engine maker's (ISO 14253-1); between its ends the hole may stand off by no more than a freshly honed one may (common practice).
 */
final class ChokedShape {

    private ChokedShape() {}

    /**
     * Bottom minus top against both ends of the window, and what lies between the ends.
     *
     * @param uncertainty of one reading; all of them were taken with one gauge
     * @param uneven the most that an axis may be out of it between its ends
     */
    static List<? extends Check> check(Grid grid, Uncertainty uncertainty, Choke choke, Length uneven) {
        List<List<Length>> profiles = grid.profiles();
        if (profiles.isEmpty()) {
            return List.of(
                    Rule.CHOKE_LEAST.unknown("", "measure the hole near the top and near the bottom along each axis"));
        }
        Limits found = endToEnd(profiles);
        return List.of(
                Rule.CHOKE_LEAST
                        .atLeast("", found.least(), choke.bottomMinusTop().least())
                        .within(uncertainty, Carried.DIFFERENCE),
                Rule.CHOKE_GREATEST
                        .atMost("", found.greatest(), choke.bottomMinusTop().greatest())
                        .within(uncertainty, Carried.DIFFERENCE),
                Rule.CHOKE_EVEN.atMost("", unevenness(profiles), uneven).within(uncertainty, Carried.DIFFERENCE));
    }

    /** How far a hole is beyond its choke on any axis, or uneven between its ends, whichever is more; zero where it has it. */
    static Length beyond(Grid grid, Choke choke) {
        List<List<Length>> profiles = grid.profiles();
        if (profiles.isEmpty()) {
            return Length.ZERO;
        }
        Limits found = endToEnd(profiles);
        Limits window = choke.bottomMinusTop();
        return unevenness(profiles)
                .max(window.least().minus(found.least()))
                .max(found.greatest().minus(window.greatest()));
    }

    private static Limits endToEnd(List<List<Length>> profiles) {
        return Limits.around(profiles.stream()
                .map(profile -> last(profile).minus(profile.get(0)))
                .toList());
    }

    /** The most that any place is wider or narrower than both ends of its axis, not negative. */
    private static Length unevenness(List<List<Length>> profiles) {
        Length most = Length.ZERO;
        for (List<Length> profile : profiles) {
            Limits all = Limits.around(profile);
            Limits ends = Limits.around(List.of(profile.get(0), last(profile)));
            most = most.max(all.greatest().minus(ends.greatest()))
                    .max(ends.least().minus(all.least()));
        }
        return most;
    }

    private static Length last(List<Length> profile) {
        return profile.get(profile.size() - 1);
    }
}
