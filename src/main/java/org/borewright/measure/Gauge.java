package org.borewright.measure;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/**
 * What an instrument is worth.
 *
 * @param kind what sort of instrument it is
 * @param name what the shop calls it; empty when it was not named
 * @param calibration what its last calibration said
 * @param resolution its smallest step; not negative
 * @param repeatability the standard deviation of one reading among many of the same place (JCGM 100, 4.2); zero when not stated
 * @param ring what it was zeroed on; empty when the ring was at 20 °C or the instrument corrects by itself
 */
public record Gauge(
        Kind kind,
        Optional<String> name,
        Calibration calibration,
        Length resolution,
        Length repeatability,
        Optional<SettingRing> ring) {

    /** A sort of instrument. */
    public enum Kind {
        /** A dial bore gauge zeroed on a master: U 0.005 mm where none is stated (common practice). */
        BORE_GAUGE("bore gauge", 5),
        /** A micrometer: U 0.003 mm where none is stated (common practice). */
        MICROMETER("micrometer", 3);

        /** The step of either where none is stated: 0.001 mm (common practice). */
        public static final Length USUAL_RESOLUTION = Length.ofMicrometres(1);

        private final String label;
        private final int usualMicrometres;

        Kind(String label, int usualMicrometres) {
            this.label = label;
            this.usualMicrometres = usualMicrometres;
        }

        /** The words as typed and shown. */
        public String label() {
            return label;
        }

        /** One of this kind of which nothing else is known. */
        public Gauge usual() {
            return new Gauge(
                    this, Optional.empty(), Calibration.NOT_STATED, USUAL_RESOLUTION, Length.ZERO, Optional.empty());
        }
    }

    /**
     * What a calibration said.
     *
     * @param expandedUncertainty U with k = 2, not negative; empty when not stated
     * @param on the day it was made; empty when not stated
     * @param due the last day it holds, not before that; empty when not stated
     */
    public record Calibration(Optional<Length> expandedUncertainty, Optional<LocalDate> on, Optional<LocalDate> due) {

        /** Nothing stated. */
        public static final Calibration NOT_STATED =
                new Calibration(Optional.empty(), Optional.empty(), Optional.empty());

        /** @throws IllegalArgumentException if U is negative, or it falls due before it was made */
        public Calibration {
            if (expandedUncertainty.filter(Length::isNegative).isPresent()) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "a gauge of uncertainty %s", expandedUncertainty.get()));
            }
            if (on.isPresent() && due.filter(last -> last.isBefore(on.get())).isPresent()) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "a calibration of %s falls due %s", on.get(), due.get()));
            }
        }

        /** Whether its last day lies before a day; without a last day it never does. */
        public boolean isOverdue(LocalDate day) {
            return due.filter(day::isAfter).isPresent();
        }
    }

    /** A dial bore gauge zeroed on a master, where no gauge is named: U 0.005 mm, step 0.001 mm (common practice). */
    public static final Gauge USUAL_BORE_GAUGE = Kind.BORE_GAUGE.usual();

    /** A micrometer for pistons, where none is named: U 0.003 mm, step 0.001 mm (common practice). */
    public static final Gauge USUAL_MICROMETER = Kind.MICROMETER.usual();

    /** @throws IllegalArgumentException if a length is negative */
    public Gauge {
        if (resolution.isNegative() || repeatability.isNegative()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "a gauge of resolution %s and repeatability %s", resolution, repeatability));
        }
    }

    /** U of its calibration with k = 2; the usual one of its kind where none is stated. */
    public Length expandedUncertainty() {
        return calibration.expandedUncertainty().orElseGet(() -> Length.ofMicrometres(kind.usualMicrometres));
    }

    /** How much the ring it was zeroed on had grown, in nanometres, and so how much more a hole measures than it shows. */
    public double ringGrowth() {
        return ring.isPresent() ? ring.get().growth() : 0;
    }
}
