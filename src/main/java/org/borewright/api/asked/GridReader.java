package org.borewright.api.asked;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.ProblemType;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.Survey;

/**
 * Reads a grid of diameters.
 *
 * @param ruler for its lengths
 */
public record GridReader(Ruler ruler) {

    private static final int MOST_DEPTHS = 20;
    private static final int MOST_AXES = 12;

    /** The grid; nothing measured where it does not hold together, which is noted. */
    public Survey read(Place place) {
        if (!place.isObject("depths", "axes", "readings")) {
            return new NotMeasured();
        }
        List<Place> depths = members(place.at("depths"), MOST_DEPTHS, "depths");
        List<Place> axes = members(place.at("axes"), MOST_AXES, "axes");
        List<Place> rows = members(place.at("readings"), MOST_DEPTHS, "rows of readings");
        List<List<Place>> cells = new ArrayList<>(rows.size());
        rows.forEach(row -> cells.add(cells(row, axes.size())));
        checkRows(place.at("readings"), cells, depths.size());
        List<Length> depthsRead = depths(depths);
        List<Axis> axesRead = axes(axes);
        List<List<Optional<Length>>> readings = new ArrayList<>(cells.size());
        cells.forEach(row -> readings.add(readings(row)));
        boolean whole = depthsRead.size() == readings.size()
                && readings.stream().allMatch(row -> row.size() == axesRead.size())
                && readings.stream().anyMatch(row -> row.stream().anyMatch(Optional::isPresent));
        return whole ? new Grid(depthsRead, axesRead, readings) : new NotMeasured();
    }

    private List<Optional<Length>> readings(List<Place> row) {
        List<Optional<Length>> readings = new ArrayList<>(row.size());
        row.forEach(cell -> readings.add(ruler.diameter(cell)));
        return readings;
    }

    private static List<Place> members(Place place, int most, String what) {
        place.need("A grid needs its " + what + ".");
        List<Place> members = place.items(most, what);
        if (place.isList() && members.isEmpty()) {
            place.add(Fault.of(ProblemType.BAD_GRID, place.pointer(), "A grid needs " + what + "; the list is empty."));
        }
        return members;
    }

    private List<Length> depths(List<Place> places) {
        List<Length> depths = new ArrayList<>();
        for (Place place : places) {
            place.need("A depth is missing.");
            ruler.belowDeck(place)
                    .filter(depth -> liesBelow(place, depth, depths))
                    .ifPresent(depths::add);
        }
        return depths;
    }

    private static boolean liesBelow(Place place, Length depth, List<Length> above) {
        boolean below = above.isEmpty() || above.get(above.size() - 1).isLessThan(depth);
        if (!below) {
            place.fault(ProblemType.BAD_GRID, "The depth does not lie below the one before.", "rising from the deck");
        }
        return below;
    }

    private static List<Axis> axes(List<Place> places) {
        Set<Axis> axes = new LinkedHashSet<>();
        places.forEach(
                place -> axis(place).filter(axis -> isNew(place, axis, axes)).ifPresent(axes::add));
        return List.copyOf(axes);
    }

    private static boolean isNew(Place place, Axis axis, Set<Axis> before) {
        boolean isNew = !before.contains(axis);
        if (!isNew) {
            place.fault(ProblemType.BAD_GRID, "The axis is named twice.", "each axis once");
        }
        return isNew;
    }

    /** {@code thrust}, {@code pin}, or whole degrees from the thrust axis. */
    private static Optional<Axis> axis(Place place) {
        place.need("An axis is missing.");
        return place.isText()
                ? place.word(List.of(Axis.THRUST, Axis.PIN), Axis::label)
                : place.number().flatMap(degrees -> axis(place, degrees));
    }

    private static Optional<Axis> axis(Place place, BigDecimal degrees) {
        boolean whole = degrees.stripTrailingZeros().scale() <= 0;
        if (!whole || degrees.signum() < 0 || degrees.compareTo(BigDecimal.valueOf(179)) > 0) {
            place.fault(
                    ProblemType.BAD_FIGURE,
                    "The axis is not a whole angle from the thrust axis.",
                    "thrust, pin, or 0 to 179 whole degrees");
            return Optional.empty();
        }
        return Optional.of(new Axis(degrees.intValueExact()));
    }

    private static List<Place> cells(Place row, int axes) {
        if (!row.isGiven()) {
            row.wrongForm("a list of readings");
        }
        List<Place> cells = row.items(MOST_AXES, "readings");
        if (row.isList() && cells.size() != axes && axes > 0) {
            String reason = String.format(Locale.ROOT, "The row has %d readings for %d axes.", cells.size(), axes);
            row.add(Fault.of(ProblemType.BAD_GRID, row.pointer(), reason).against("one reading, or null, per axis"));
        }
        return cells;
    }

    private static void checkRows(Place place, List<List<Place>> rows, int depths) {
        if (rows.isEmpty() || depths == 0) {
            return;
        }
        if (rows.size() != depths) {
            String reason =
                    String.format(Locale.ROOT, "There are %d rows of readings for %d depths.", rows.size(), depths);
            place.add(Fault.of(ProblemType.BAD_GRID, place.pointer(), reason).against("one row per depth"));
        }
        if (rows.stream().allMatch(row -> row.stream().noneMatch(Place::isGiven))) {
            place.add(Fault.of(ProblemType.BAD_GRID, place.pointer(), "No place of the grid holds a reading.")
                    .wayOut("Leave the grid out when nothing was measured."));
        }
    }
}
