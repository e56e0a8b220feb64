package org.borewright.fit;

import java.util.List;
import java.util.Optional;
import java.util.function.LongPredicate;
import org.borewright.measure.Length;

/**
 * What would settle a close call: the same value, read so, is either in or out. A gauge's own figure is what is left of the margin once
 * all else that makes the reading uncertain is taken off. Source: JCGM 100, 5.1.2; ISO 14253-1.
 */
public sealed interface CloserReading {

    /** No gauge does, and why. */
    enum NoGauge implements CloserReading {
        /** The value lies on the limit, or within a nanometre or so of it. */
        ON_THE_LIMIT,
        /** The temperature alone, stated and at 20 °C, is worth more than the margin. */
        TEMPERATURE,
        /** The uncertainty of such a reading is taken for given, whatever it was read with. */
        GIVEN
    }

    /** What is to be better. */
    enum What {
        /** U of the gauge's calibration. */
        CALIBRATION,
        /** √(U² + U²) of the gauges of two lengths. */
        BOTH_CALIBRATIONS,
        /** √((U/2)² + resolution²/12 + repeatability²) of the gauge. */
        WHOLE_GAUGE,
        /** √((U/2)² + resolution²/12 + repeatability² + the same of the other) of the gauges of two lengths. */
        BOTH_WHOLE_GAUGES,
        /** √(resolution²/12 + repeatability²) of the one gauge that took a difference. */
        STEP_AND_SCATTER;

        /** In the order of what is easier to come by: another gauge, two of them, a finer step. */
        private static final List<What> OF_ONE = List.of(CALIBRATION, WHOLE_GAUGE);

        private static final List<What> OF_TWO =
                List.of(CALIBRATION, BOTH_CALIBRATIONS, WHOLE_GAUGE, BOTH_WHOLE_GAUGES);
        private static final List<What> OF_DIFFERENCE = List.of(STEP_AND_SCATTER);

        private Readings better(Readings as, Length figure) {
            return switch (this) {
                case CALIBRATION -> as.with(as.reading().withCalibration(figure));
                case BOTH_CALIBRATIONS ->
                    CALIBRATION.better(as, figure).beside(as.beside().withCalibration(Length.ZERO));
                case WHOLE_GAUGE, STEP_AND_SCATTER -> as.with(as.reading().withGaugeWorth(figure));
                case BOTH_WHOLE_GAUGES ->
                    WHOLE_GAUGE.better(as, figure).beside(as.beside().withGaugeWorth(Length.ZERO));
            };
        }

        /** Whether two lengths are to be measured again. */
        public boolean isOfTwo() {
            return this == BOTH_CALIBRATIONS || this == BOTH_WHOLE_GAUGES;
        }

        private Readings atReference(Readings as) {
            return isOfTwo() ? as.atReference() : as.with(as.reading().atReference());
        }

        private static List<What> of(Readings readings) {
            if (readings.carried() == Carried.DIFFERENCE) {
                return OF_DIFFERENCE;
            }
            return readings.areTwo() ? OF_TWO : OF_ONE;
        }
    }

    /**
     * A better gauge does.
     *
     * @param what is to be better
     * @param allAt20 whether part and setting ring are to be at 20 °C besides, and so stated
     * @param atMost how much that may be, rounded down to a whole nanometre; above zero
     */
    record Better(What what, boolean allAt20, Length atMost) implements CloserReading {}

    /** For a comparison that is too close to call. */
    static CloserReading of(Comparison close) {
        Readings readings = close.readings();
        if (readings.equals(Readings.NONE)) {
            return NoGauge.GIVEN;
        }
        long margin = Math.abs(close.margin());
        for (What what : What.of(readings)) {
            Optional<CloserReading> better = better(what, readings, margin, false)
                    .or(() -> better(what, what.atReference(readings), margin, true));
            if (better.isPresent()) {
                return better.get();
            }
        }
        Readings perfect = What.BOTH_WHOLE_GAUGES.better(readings.atReference(), Length.ZERO);
        return margin > 0 && perfect.expanded().isMoreThan(Length.ZERO) ? NoGauge.TEMPERATURE : NoGauge.ON_THE_LIMIT;
    }

    /** Of two lengths, each and both together are rounded up: that is no more than 2 nm, whichever gauge is how good. */
    private static Optional<CloserReading> better(What what, Readings readings, long margin, boolean allAt20) {
        long bearable = what.isOfTwo() ? margin - 2 : margin;
        long most = greatest(
                margin,
                figure -> what.better(readings, Length.ofNanometres(figure))
                                .expanded()
                                .nanometres()
                        <= bearable);
        return most == 0 ? Optional.empty() : Optional.of(new Better(what, allAt20, Length.ofNanometres(most)));
    }

    /** The greatest figure up to a bound that settles it; zero where none does. */
    private static long greatest(long bound, LongPredicate settles) {
        long least = 0;
        long most = bound;
        while (least < most) {
            long middle = least + (most - least + 1) / 2;
            if (settles.test(middle)) {
                least = middle;
            } else {
                most = middle - 1;
            }
        }
        return least;
    }
}
