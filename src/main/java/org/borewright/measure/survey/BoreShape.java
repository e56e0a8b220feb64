package org.borewright.measure.survey;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.IntStream;
import org.borewright.measure.Length;

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
        List<List<Length>> columns = columns(grid);
        List<Length> steepest =
                columns.stream().max(Comparator.comparing(BoreShape::spread)).orElse(List.of());
        Length outOfRound = grid.rows().stream()
                .map(row -> spread(row.stream().flatMap(Optional::stream).toList()))
                .reduce(Length.ZERO, Length::max);
        return new BoreShape(spread(steepest), bottomMinusTop(steepest), outOfRound, form(steepest));
    }

    private static List<List<Length>> columns(Grid grid) {
        return IntStream.range(0, grid.axes().size())
                .mapToObj(axis -> grid.rows().stream()
                        .map(row -> row.get(axis))
                        .flatMap(Optional::stream)
                        .toList())
                .toList();
    }

    private static Length spread(List<Length> readings) {
        return extreme(readings, Length::max).minus(extreme(readings, Length::min));
    }

    private static Length extreme(List<Length> readings, BinaryOperator<Length> pick) {
        return readings.stream().reduce(pick).orElse(Length.ZERO);
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
        if (extreme(profile, Length::max).isMoreThan(top.max(bottom))) {
            return Form.BARREL;
        }
        if (extreme(profile, Length::min).isLessThan(top.min(bottom))) {
            return Form.WAIST;
        }
        return bottom.isMoreThan(top) ? Form.BELL_MOUTH : Form.TAPERED_TO_BOTTOM;
    }
}
