package org.borewright.fit;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Reading;

/**
 * A row of a grid where thrust and pin were perhaps exchanged: it is the only one wider along the one, and all others are wider along the
 * other. A hole wears oval to the same side over the whole stroke, for the piston presses on the same walls.
 *
 * <p>Only rows count whose two readings differ by more than 0.02 mm, for a sound hole may be out of round to either side by less; at that
 * limit a row does not count. At least two rows must stand against the one: of two alone nobody can tell which is the odd one. Source:
 * common practice.
 */
public final class OpposedRow {

    private static final int ROWS_THAT_TELL = 2;

    private OpposedRow() {}

    /** The query of the one row that opposes all others; empty where there is none, or thrust or pin was not measured. */
    public static Optional<Query> in(Grid grid) {
        int thrust = grid.axes().indexOf(Axis.THRUST);
        int pin = grid.axes().indexOf(Axis.PIN);
        if (thrust < 0 || pin < 0) {
            return Optional.empty();
        }
        int alongThrust = 0;
        int alongPin = 0;
        for (int depth = 0; depth < grid.depths().size(); depth++) {
            int wider = wider(grid, depth, thrust, pin);
            alongThrust += wider > 0 ? 1 : 0;
            alongPin += wider < 0 ? 1 : 0;
        }
        boolean oneIsOpposed =
                Math.min(alongThrust, alongPin) == 1 && Math.max(alongThrust, alongPin) >= ROWS_THAT_TELL;
        return oneIsOpposed ? Optional.of(query(grid, alongThrust == 1 ? 1 : -1, thrust, pin)) : Optional.empty();
    }

    private static Query query(Grid grid, int opposed, int thrust, int pin) {
        return Query.of(
                Query.Kind.OPPOSED, readings(grid, opposed, thrust, pin), readings(grid, -opposed, thrust, pin));
    }

    private static List<Reading> readings(Grid grid, int side, int thrust, int pin) {
        return IntStream.range(0, grid.depths().size())
                .filter(depth -> wider(grid, depth, thrust, pin) == side)
                .boxed()
                .flatMap(depth -> Stream.of(grid.reading(depth, thrust), grid.reading(depth, pin)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** 1 where a row is clearly wider along thrust, −1 along pin, 0 where it does not tell. */
    private static int wider(Grid grid, int depth, int thrust, int pin) {
        Optional<Length> alongThrust = grid.rows().get(depth).get(thrust);
        Optional<Length> alongPin = grid.rows().get(depth).get(pin);
        if (alongThrust.isEmpty() || alongPin.isEmpty()) {
            return 0;
        }
        Length difference = alongThrust.get().minus(alongPin.get());
        boolean tells = difference.absolute().isMoreThan(CommonPractice.clearlyOval());
        return tells ? difference.compareTo(Length.ZERO) : 0;
    }
}
