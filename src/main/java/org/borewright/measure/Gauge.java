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
 * @param statedResolution its smallest step, not negative; empty when not stated
 * @param repeatability the standard deviation of one reading among many of the same place (JCGM 100, 4.2); zero when not stated
 * @param ring what it was zeroed on; empty when the ring was at 20 °C or the instrument corrects by itself
 * @param statedBy who says all this of it; what is not stated is common practice all the same
 */
public record Gauge(
        Kind kind,
        Optional<String> name,
        Calibration calibration,
        Optional<Length> statedResolution,
        Length repeatability,
        Optional<SettingRing> ring,
        Source statedBy) {

    /** A sort of instrument. */
    public enum Kind {
        /** A dial bore gauge zeroed on a master: U 0.005 mm where none is stated (common practice). */
        BORE_GAUGE("bore gauge", 5),
        /** A micrometer: U 0.003 mm where none is stated (common practice). */
        MICROMETER("micrometer", 3);

        /** The step of either where none is stated: 0.001 mm (common practice). */
        private static final Length USUAL_RESOLUTION = Length.ofMicrometres(1);

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

        /** One of this kind of which nothing else is known, where none is named. */
        public Gauge usual() {
            return new Gauge(
                    this,
                    Optional.empty(),
                    Calibration.NOT_STATED,
                    Optional.empty(),
                    Length.ZERO,
                    Optional.empty(),
                    Source.COMMON_PRACTICE);
        }
    }

    /** Who says what an instrument is worth. */
    public enum Source {
        /** The shop's register of gauges. */
        REGISTER("register"),
        /** Whoever took the readings. */
        REQUEST("request"),
        /** Nobody: the usual figure of its kind. */
        COMMON_PRACTICE("common practice");

        private final String label;

        Source(String label) {
            this.label = label;
        }

        /** The words as shown. */
        public String label() {
            return label;
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

    /** @throws IllegalArgumentException if a length is negative */
    public Gauge {
        if (statedResolution.filter(Length::isNegative).isPresent()) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "a gauge of resolution %s", statedResolution.get()));
        }
        if (repeatability.isNegative()) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "a gauge of repeatability %s", repeatability));
        }
    }

    /** The same instrument, zeroed on this ring for the readings at hand, or on none that matters. */
    public Gauge zeroedOn(Optional<SettingRing> other) {
        return new Gauge(kind, name, calibration, statedResolution, repeatability, other, statedBy);
    }

    /** U of its calibration with k = 2; the usual one of its kind where none is stated. */
    public Length expandedUncertainty() {
        return calibration.expandedUncertainty().orElseGet(() -> Length.ofMicrometres(kind.usualMicrometres));
    }

    /** Where that comes from. */
    public Source uncertaintySource() {
        return calibration.expandedUncertainty().isPresent() ? statedBy : Source.COMMON_PRACTICE;
    }

    /** Its smallest step; the usual one where none is stated. */
    public Length resolution() {
        return statedResolution.orElse(Kind.USUAL_RESOLUTION);
    }

    /** Where that comes from. */
    public Source resolutionSource() {
        return statedResolution.isPresent() ? statedBy : Source.COMMON_PRACTICE;
    }

    /** How much the ring it was zeroed on had grown, in nanometres, and so how much more a hole measures than it shows. */
    public double ringGrowth() {
        return ring.isPresent() ? ring.get().growth() : 0;
    }
}
