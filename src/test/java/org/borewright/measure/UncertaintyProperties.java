package org.borewright.measure;

import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/**
 * The closed form against distributions thrown (JCGM 101:2008, clause 7): what is read, the step, the scatter, both temperatures and both
 * materials, each in its own distribution, through the whole correction to 20 °C.
 */
class UncertaintyProperties {

    private static final int THROWN = 20_000;

    /**
     * With so many thrown, a standard deviation scatters by 0.5 % (1/√2n): four of these are allowed. A temperature not stated and a
     * sleeve in aluminium leave out a product of both errors (JCGM 100, 5.1.2, note), at most D·u(t)·u(α).
     */
    @Property(tries = 60, seed = "20260302")
    boolean whatIsThrownScattersAsTheClosedFormSays(
            @ForAll @LongRange(min = 40_000_000, max = 110_000_000) long read,
            @ForAll @IntRange(min = 0, max = 10_000) int expanded,
            @ForAll @IntRange(min = 1, max = 10_000) int resolution,
            @ForAll @IntRange(min = 0, max = 3_000) int repeatability,
            @ForAll @IntRange(min = 0, max = 40) int celsius,
            @ForAll @IntRange(min = 5, max = 25) int millionths,
            @ForAll boolean stated,
            @ForAll boolean onARing) {
        Climate climate = stated ? Climate.at(new Temperature(celsius * 9_000L)) : Climate.NOT_STATED;
        Expansion wall = new Expansion(millionths / 1e6, Expansion.SLEEVE_IN_ALUMINIUM_UNCERTAINTY);
        SettingRing ring =
                new SettingRing(Length.ofNanometres(read), new Temperature((40 - celsius) * 9_000L), SettingRing.STEEL);
        Gauge gauge = new Gauge(
                Gauge.Kind.BORE_GAUGE,
                Optional.empty(),
                new Gauge.Calibration(Optional.of(Length.ofNanometres(expanded)), Optional.empty(), Optional.empty()),
                Optional.of(Length.ofNanometres(resolution)),
                Length.ofNanometres(repeatability),
                onARing ? Optional.of(ring) : Optional.empty(),
                Gauge.Source.REQUEST);
        Uncertainty budget = Uncertainty.of(Length.ofNanometres(read), gauge, climate, wall);

        double thrown = new Throws(read, gauge, climate, wall).standardDeviation();

        double product = read * climate.standardUncertainty() * wall.standardUncertainty();
        double most = Math.hypot(budget.combined(), product);
        return thrown > budget.combined() * 0.98 && thrown < most * 1.02;
    }

    /**
     * Sums of four equal inputs: four normal ones of standard deviation 1 give 2.0 and ±3.92 at 95 %, four rectangular ones of the
     * same ±3.88 (JCGM 101:2008, tables 2 and 3), and U = 2u covers both.
     */
    @Property(tries = 2, seed = "20260302")
    boolean twiceTheStandardUncertaintyCoversTheSumsOfTheSupplement(@ForAll boolean normal) {
        double expanded = 2 * new Uncertainty(1, 1, 1, 1, 0, 0, 0).combined();
        Random dice = new Random(20260302);
        int within = 0;
        for (int i = 0; i < THROWN; i++) {
            double sum = 0;
            for (int input = 0; input < 4; input++) {
                sum += normal ? dice.nextGaussian() : Math.sqrt(3) * (2 * dice.nextDouble() - 1);
            }
            within += Math.abs(sum) <= expanded ? 1 : 0;
        }
        return within > 0.95 * THROWN && within < 0.97 * THROWN;
    }

    /** A hole read over and over, each time with other errors. */
    private record Throws(long read, Gauge gauge, Climate climate, Expansion wall) {

        double standardDeviation() {
            Random dice = new Random(20260302);
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < THROWN; i++) {
                double off = at20(dice) - read;
                sum += off;
                squares += off * off;
            }
            double mean = sum / THROWN;
            return Math.sqrt(squares / THROWN - mean * mean);
        }

        private double at20(Random dice) {
            double shown = read
                    + dice.nextGaussian() * gauge.expandedUncertainty().nanometres() / 2.0
                    + dice.nextGaussian() * gauge.repeatability().nanometres()
                    + (dice.nextDouble() - 0.5) * gauge.resolution().nanometres();
            double kelvins = climate.temperature().kelvinsAboveReference()
                    + (climate.stated().isPresent() ? dice.nextGaussian() : 10 * dice.nextDouble() - 5);
            double alpha = wall.perKelvin() + dice.nextGaussian() * wall.standardUncertainty();
            return (shown + growth(dice)) / (1 + alpha * kelvins);
        }

        private double growth(Random dice) {
            if (gauge.ring().isEmpty()) {
                return 0;
            }
            SettingRing ring = gauge.ring().get();
            double kelvins = ring.temperature().kelvinsAboveReference() + dice.nextGaussian();
            double alpha = ring.expansion().perKelvin()
                    + dice.nextGaussian() * ring.expansion().standardUncertainty();
            return ring.size().nanometres() * alpha * kelvins;
        }
    }
}
