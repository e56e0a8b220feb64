package org.borewright.measure;

import java.util.List;

/**
 * The uncertainty of a diameter, as standard uncertainties in nanometres that add in squares (JCGM 100, 5.1.2).
 *
 * @param gauge from the gauge's calibration, U/2
 * @param resolution from the smallest step, resolution/√12
 * @param repeatability from the scatter of one reading, its standard deviation
 * @param temperature from the temperature, D·α·u(t)
 * @param expansion from the material, D·|t − 20|·u(α)
 * @param ring from the growth of the setting ring
 * @param stated from the temperature if it is stated, D·α·1 K: the same as {@code temperature} where it was
 */
public record Uncertainty(
        double gauge,
        double resolution,
        double repeatability,
        double temperature,
        double expansion,
        double ring,
        double stated) {

    /** Of what is known exactly, such as a part as made. */
    public static final Uncertainty NONE = new Uncertainty(0, 0, 0, 0, 0, 0, 0);

    /** Where a share of the uncertainty comes from, and what makes it smaller in a workshop. */
    public enum Term {
        /** The gauge's calibration. */
        GAUGE("gauge", "use a gauge with a smaller calibration uncertainty"),
        /** Its smallest step. */
        RESOLUTION("resolution", "use a gauge that shows a finer step"),
        /** How readings of one place scatter. */
        REPEATABILITY("repeatability", "clean gauge and wall, and take the mean of several readings of each place"),
        /** How well the temperature is known. */
        TEMPERATURE("temperature", "let the part and its gauge come to one temperature, and state it"),
        /** How well the growth of the wall is known. */
        EXPANSION("expansion", "measure nearer to 20 °C: how the wall grows is only roughly known"),
        /** How well the growth of the setting ring is known. */
        RING("ring", "let the setting ring come to 20 °C before the gauge is zeroed on it");

        private final String label;
        private final String wayOut;

        Term(String label, String wayOut) {
            this.label = label;
            this.wayOut = wayOut;
        }

        /** The word as shown. */
        public String label() {
            return label;
        }

        /** What to do about it. */
        public String wayOut() {
            return wayOut;
        }
    }

    private static final List<Term> TERMS = List.of(Term.values());

    /** The terms for a diameter taken with a gauge in a climate, of a material. Source: JCGM 100, 4.3.7 and 5.1.2. */
    public static Uncertainty of(Length diameter, Gauge gauge, Climate climate, Expansion material) {
        double size = diameter.nanometres();
        return new Uncertainty(
                gauge.expandedUncertainty().nanometres() / 2.0,
                gauge.resolution().nanometres() / Math.sqrt(12),
                gauge.repeatability().nanometres(),
                size * material.perKelvin() * climate.standardUncertainty(),
                size * Math.abs(climate.temperature().kelvinsAboveReference()) * material.standardUncertainty(),
                gauge.ring().isPresent() ? gauge.ring().get().standardUncertainty() : 0,
                size * material.perKelvin() * Climate.at(Temperature.REFERENCE).standardUncertainty());
    }

    /** Of a length of which only the expanded uncertainty is told, whole. */
    public static Uncertainty ofCalibration(Length expanded) {
        return new Uncertainty(expanded.nanometres() / 2.0, 0, 0, 0, 0, 0, 0);
    }

    /** The same length taken with a gauge of another calibration, of this expanded uncertainty; all else as it was. */
    public Uncertainty withCalibration(Length expanded) {
        return new Uncertainty(
                expanded.nanometres() / 2.0, resolution, repeatability, temperature, expansion, ring, stated);
    }

    /** The same length taken with a gauge whose calibration is worth no more than this expanded uncertainty; all else as it was. */
    public Uncertainty withCalibrationNoBetterThan(Length expanded) {
        return gauge < expanded.nanometres() / 2.0 ? withCalibration(expanded) : this;
    }

    /**
     * The same length taken with another gauge, all else as it was.
     *
     * @param standard √((U/2)² + resolution²/12 + repeatability²) of that gauge; how it is shared among the three makes no difference
     */
    public Uncertainty withGaugeWorth(Length standard) {
        return new Uncertainty(0, 0, standard.nanometres(), temperature, expansion, ring, stated);
    }

    /** The same length taken with part and setting ring at 20 °C, and so stated: only 1 K of the temperature is left. */
    public Uncertainty atReference() {
        return new Uncertainty(gauge, resolution, repeatability, stated, 0, 0, stated);
    }

    /** The standard uncertainty from one source in nanometres; zero where it adds nothing. */
    public double from(Term term) {
        return switch (term) {
            case GAUGE -> gauge;
            case RESOLUTION -> resolution;
            case REPEATABILITY -> repeatability;
            case TEMPERATURE -> temperature;
            case EXPANSION -> expansion;
            case RING -> ring;
        };
    }

    /** The same for a diameter so many times as large, taken with the same gauge in the same climate: what is a share of it grows with it. */
    public Uncertainty scaled(double times) {
        return new Uncertainty(
                gauge, resolution, repeatability, temperature * times, expansion * times, ring, stated * times);
    }

    /** The largest term; of equal ones the first. */
    public Term mattersMost() {
        Term most = Term.GAUGE;
        for (Term term : TERMS) {
            most = from(term) > from(most) ? term : most;
        }
        return most;
    }

    /** The combined standard uncertainty in nanometres. */
    public double combined() {
        return Math.sqrt(gauge * gauge
                + resolution * resolution
                + repeatability * repeatability
                + temperature * temperature
                + expansion * expansion
                + ring * ring);
    }

    /** The expanded uncertainty U = 2u, rounded up to a whole nanometre. */
    public Length expanded() {
        return Length.ofNanometres((long) Math.ceil(2 * combined()));
    }

    /**
     * The expanded uncertainty of a difference of two lengths measured apart, each with an instrument and a thermometer of its own: the
     * root of the sum of squares, rounded up. Where one thermometer served both, the difference is known better than this.
     * Source: JCGM 100, 5.1.2.
     */
    public static Length ofApart(Length one, Length other) {
        double first = one.nanometres();
        double second = other.nanometres();
        return Length.ofNanometres((long) Math.ceil(Math.sqrt(first * first + second * second)));
    }

    /**
     * The expanded uncertainty of a difference of two such readings of one gauge: all but resolution and repeatability falls out of a
     * difference, and these count twice (JCGM 100, 5.2), rounded up.
     */
    public Length expandedOfDifference() {
        return Length.ofNanometres((long) Math.ceil(2 * Math.sqrt(2) * Math.hypot(resolution, repeatability)));
    }
}
