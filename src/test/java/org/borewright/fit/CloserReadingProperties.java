package org.borewright.fit;

import static org.borewright.fit.Shapes.groove;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.ring;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.CloserReading.Better;
import org.borewright.fit.CloserReading.NoGauge;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Gauge.Calibration;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.measure.SettingRing;
import org.borewright.measure.Temperature;
import org.borewright.measure.Temperature.Scale;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;

/** What a close call says would settle it is done, and the same thing read again: it is settled, and with a little less it is not. */
class CloserReadingProperties {

    private static final Expansion WALL = new Expansion(15e-6, 3e-6);
    private static final Expansion ALLOY = new Expansion(21e-6, 1e-6);
    private static final Length PISTON = mm("69.850");

    /** Every kind of check that names a gauge, of a reading that lies so far inside its limit. */
    private enum Asked {
        WEAR {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                return ServiceWear.check(hole.at20(), hole.budget(), hole.at20(), margin);
            }
        },
        PISTON_AS_MADE {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                return Clearance.check(
                                Limits.exactly(hole.at20()),
                                hole.budget(),
                                Limits.exactly(PISTON),
                                Uncertainty.NONE,
                                upTo(hole.at20().minus(PISTON).plus(margin)))
                        .get(1);
            }
        },
        PISTON_MEASURED {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                return Clearance.check(
                                Limits.exactly(hole.at20()),
                                hole.budget(),
                                Limits.exactly(piston.at20()),
                                piston.budget(),
                                upTo(hole.at20().minus(piston.at20()).plus(margin)))
                        .get(1);
            }
        },
        PRESENT_PISTON {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                Length limit = hole.at20().minus(piston.at20()).plus(margin);
                return ServiceClearance.check(hole.at20(), hole.budget(), piston.at20(), piston.budget(), limit);
            }
        },
        TARGET {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                ClearanceWindow window =
                        new ClearanceWindow(mm("0.040").minus(margin.absolute()), mm("0.040"), mm("0.140"));
                return HoneWindow.checkTarget(window, Length.ZERO, hole.budget(), piston.budget())
                        .get(0);
            }
        },
        PISTON_IN_TOLERANCE {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                Length least = piston.at20().minus(margin);
                return MeasuredPiston.check("A", piston.at20(), piston.budget(), new Limits(least, mm("71")))
                        .get(0);
            }
        },
        BY_BAR {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                return CleanUpCheck.byBar(hole.at20(), hole.at20().plus(margin), hole.budget());
            }
        },
        BY_HONE {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                return CleanUpCheck.byHone(hole.at20(), hole.at20().plus(margin), hole.budget());
            }
        },
        RING_GAP {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                Limits as = Limits.exactly(hole.at20());
                Limits made = new Limits(mm("0.400"), mm("0.550"));
                Length least = RingGap.in(as, ring(made, Length.ZERO)).least().minus(margin);
                return RingGap.check(
                                as,
                                hole.budget(),
                                ring(made, Length.ZERO),
                                groove(new Limits(least, least.plus(mm("1")))))
                        .get(0);
            }
        },
        TAPER {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                Length taper = mm("0.010").minus(margin);
                return FinishedShape.check(
                                new BoreShape(taper, taper, Length.ZERO, BoreShape.Form.BELL_MOUTH),
                                hole.budget(),
                                CommonPractice.finishedShape())
                        .get(0);
            }
        },
        DECK {
            @Override
            Comparison of(Reading hole, Reading piston, Length margin) {
                return new DeckFlatness(
                                mm("0.050"), Optional.of(hole.with.gauge().expandedUncertainty()))
                        .check(mm("0.050").plus(margin));
            }
        };

        abstract Comparison of(Reading hole, Reading piston, Length margin);

        private static ClearanceWindow upTo(Length greatest) {
            return new ClearanceWindow(nm(1), nm(2), greatest);
        }
    }

    /** A length as it was read. */
    private record Reading(Length read, Measuring with, Expansion material) {

        Length at20() {
            return with.atReference(read, material);
        }

        Uncertainty budget() {
            return with.budget(at20(), material);
        }

        Reading calibrated(Length expanded) {
            return by(gauge(
                    expanded,
                    with.gauge().resolution(),
                    with.gauge().repeatability(),
                    with.gauge().ring()));
        }

        /** A share of it by the calibration and the rest by the scatter, in squares. */
        Reading worth(double standard, double share) {
            long half = (long) (standard * share);
            long rest = (long) Math.sqrt(standard * standard - (double) half * half);
            return by(gauge(nm(2 * half), Length.ZERO, nm(rest), with.gauge().ring()));
        }

        Reading scattering(long standard) {
            return by(gauge(mm("0.005"), Length.ZERO, nm(standard), with.gauge().ring()));
        }

        Reading allAt20() {
            Gauge gauge = with.gauge().zeroedOn(Optional.empty());
            return new Reading(at20(), new Measuring(gauge, Climate.at(Temperature.REFERENCE)), material);
        }

        private Reading by(Gauge gauge) {
            return new Reading(read, new Measuring(gauge, with.climate()), material);
        }
    }

    @Property(tries = 4000)
    boolean whatIsNamedSettlesItAndALittleLessDoesNot(
            @ForAll Asked asked,
            @ForAll("readings") Measuring ofHole,
            @ForAll("readings") Measuring ofPiston,
            @ForAll @LongRange(min = 69_970_000, max = 70_030_000) long hole,
            @ForAll @LongRange(min = -9_999, max = 9_999) long margin,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double share) {
        Reading read = new Reading(nm(hole), ofHole, WALL);
        Reading piston = new Reading(PISTON, ofPiston, ALLOY);
        Comparison close = asked.of(read, piston, nm(margin));
        Reading again = asked == Asked.PISTON_IN_TOLERANCE ? piston : read;
        if (close.closer().isEmpty()) {
            return close.outcome() != Outcome.TOO_CLOSE;
        }
        if (close.closer().get() instanceof Better better) {
            long more = better.what().isOfTwo()
                    ? 3 + 6 * Math.abs(margin) / better.atMost().nanometres()
                    : 1;
            return isSettled(asked, again, piston, better, 0, share, margin)
                    && !isSettled(asked, again, piston, better, more, share, margin);
        }
        return close.closer().get() == NoGauge.ON_THE_LIMIT
                ? Math.abs(margin) < 3
                : !settles(asked, again.allAt20().worth(0, 0), piston.allAt20().worth(0, 0), nearer(margin));
    }

    /** By the two nanometres that two lengths are rounded up by, and the one that a gauge is worth at the least. */
    private static long nearer(long margin) {
        return Long.signum(margin) * Math.max(0, Math.abs(margin) - 3);
    }

    private static boolean isSettled(
            Asked asked, Reading again, Reading piston, Better better, long more, double share, long margin) {
        Reading one = better.allAt20() ? again.allAt20() : again;
        Reading other = better.allAt20() && better.what().isOfTwo() ? piston.allAt20() : piston;
        long figure = better.atMost().nanometres() + more;
        double mine = better.what().isOfTwo() ? figure * share : figure;
        double rest = Math.sqrt((double) figure * figure - mine * mine);
        return switch (better.what()) {
            case CALIBRATION -> settles(asked, one.calibrated(nm(figure)), other, margin);
            case BOTH_CALIBRATIONS ->
                settles(asked, one.calibrated(nm((long) mine)), other.calibrated(nm((long) rest)), margin);
            case WHOLE_GAUGE -> settles(asked, one.worth((double) figure, more == 0 ? share : 0), other, margin);
            case BOTH_WHOLE_GAUGES -> settles(asked, one.worth(mine, share), other.worth(rest, share), margin);
            case STEP_AND_SCATTER -> settles(asked, one.scattering(figure), other, margin);
        };
    }

    private static boolean settles(Asked asked, Reading one, Reading piston, long margin) {
        Reading second = asked == Asked.PISTON_IN_TOLERANCE ? one : piston;
        return asked.of(one, second, nm(margin)).outcome() != Outcome.TOO_CLOSE;
    }

    @Provide
    Arbitrary<Measuring> readings() {
        Arbitrary<Optional<SettingRing>> ring = Arbitraries.integers()
                .between(15, 30)
                .map(celsius -> new SettingRing(mm("70"), celsius(celsius), SettingRing.STEEL))
                .optional(0.3);
        Arbitrary<Gauge> gauges = Combinators.combine(
                        Arbitraries.longs().between(0, 12_000),
                        Arbitraries.longs().between(0, 2_000),
                        Arbitraries.longs().between(0, 1_000),
                        ring)
                .as((u, step, scatter, on) -> gauge(nm(u), nm(step), nm(scatter), on));
        Arbitrary<Climate> climates = Arbitraries.integers()
                .between(10, 30)
                .map(CloserReadingProperties::celsius)
                .optional(0.7)
                .map(stated -> stated.map(Climate::at).orElse(Climate.NOT_STATED));
        return Combinators.combine(gauges, climates).as(Measuring::new);
    }

    private static Temperature celsius(int degrees) {
        return Temperature.parse(BigDecimal.valueOf(degrees), Scale.CELSIUS);
    }

    private static Gauge gauge(Length expanded, Length step, Length scatter, Optional<SettingRing> ring) {
        return new Gauge(
                Gauge.Kind.BORE_GAUGE,
                Optional.empty(),
                new Calibration(Optional.of(expanded), Optional.empty(), Optional.empty()),
                Optional.of(step),
                scatter,
                ring,
                Gauge.Source.REQUEST);
    }
}
