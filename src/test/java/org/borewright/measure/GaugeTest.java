package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.Optional;
import org.borewright.measure.Gauge.Calibration;
import org.borewright.measure.Gauge.Kind;
import org.borewright.measure.Gauge.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeTest {

    /** Common practice: a mastered dial bore gauge, an outside micrometer. */
    @ParameterizedTest
    @CsvSource({"REGISTER, register", "REQUEST, request", "COMMON_PRACTICE, common practice"})
    void whoSaysWhatItIsWorthIsNamed(Source source, String label) {
        assertThat(source.label()).isEqualTo(label);
    }

    @ParameterizedTest
    @CsvSource({"bore gauge, BORE_GAUGE, 0.005, 0.001", "micrometer, MICROMETER, 0.003, 0.001"})
    void whereNothingIsStatedTheUsualOneOfItsKindIsTaken(
            String label, Kind kind, Length uncertainty, Length resolution) {
        Gauge usual = kind.usual();
        assertThat(kind.label()).isEqualTo(label);
        assertThat(usual.expandedUncertainty()).isEqualTo(uncertainty);
        assertThat(usual.resolution()).isEqualTo(resolution);
        assertThat(usual.repeatability()).isEqualTo(Length.ZERO);
        assertThat(usual.ringGrowth()).isZero();
        assertThat(usual.uncertaintySource()).isEqualTo(Source.COMMON_PRACTICE);
        assertThat(usual.resolutionSource()).isEqualTo(Source.COMMON_PRACTICE);
    }

    @ParameterizedTest
    @CsvSource({"0.003", "0", "0.000001"})
    void whatItsCalibrationStatesStandsInPlaceOfTheUsual(Length stated) {
        for (Kind kind : Kind.values()) {
            assertThat(gauge(kind, stated, Length.ZERO, Length.ZERO).expandedUncertainty())
                    .isEqualTo(stated);
        }
    }

    @ParameterizedTest
    @CsvSource({"-0.000001, 0.001, 0", "0.005, -0.000001, 0", "0.005, 0.001, -0.000001"})
    void aGaugeBetterThanExactIsRefused(Length uncertainty, Length resolution, Length repeatability) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> gauge(Kind.BORE_GAUGE, uncertainty, resolution, repeatability))
                .withMessageContaining("-0.000001 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-03, 2026-03-02, false",
        "2026-03-02, 2026-03-02, false",
        "2026-03-01, 2026-03-02, true",
        ", 2026-03-02, false"
    })
    void aCalibrationHoldsToItsLastDay(LocalDate due, LocalDate day, boolean overdue) {
        assertThat(new Calibration(Optional.empty(), Optional.empty(), Optional.ofNullable(due)).isOverdue(day))
                .isEqualTo(overdue);
    }

    @ParameterizedTest
    @CsvSource({"2026-03-02, 2026-03-01"})
    void aCalibrationThatFallsDueBeforeItWasMadeIsRefused(LocalDate on, LocalDate due) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Calibration(Optional.empty(), Optional.of(on), Optional.of(due)))
                .withMessageContaining("2026-03-02")
                .withMessageContaining("2026-03-01");
        assertThat(new Calibration(Optional.empty(), Optional.of(on), Optional.of(on)).isOverdue(on))
                .isFalse();
    }

    /** What is not stated is common practice, whoever describes the rest. */
    @ParameterizedTest
    @CsvSource({
        "REGISTER, 0.004, 0.010, REGISTER, REGISTER",
        "REGISTER, , 0.010, COMMON_PRACTICE, REGISTER",
        "REQUEST, 0.004, , REQUEST, COMMON_PRACTICE",
        "REQUEST, , , COMMON_PRACTICE, COMMON_PRACTICE",
    })
    void eachFigureSaysWhereItComesFrom(
            Source statedBy, Length uncertainty, Length resolution, Source ofUncertainty, Source ofResolution) {
        Gauge gauge = new Gauge(
                Kind.MICROMETER,
                Optional.of("MIC-1"),
                new Calibration(Optional.ofNullable(uncertainty), Optional.empty(), Optional.empty()),
                Optional.ofNullable(resolution),
                Length.ZERO,
                Optional.empty(),
                statedBy);

        assertThat(gauge.uncertaintySource()).isEqualTo(ofUncertainty);
        assertThat(gauge.resolutionSource()).isEqualTo(ofResolution);
        assertThat(gauge.resolution()).isEqualTo(resolution == null ? Length.ofMicrometres(1) : resolution);
    }

    @Test
    void aRingBelongsToTheReadingsAndChangesNothingElse() {
        Gauge without = gauge(Kind.BORE_GAUGE, Length.ofMicrometres(4), Length.ZERO, Length.ofMicrometres(2));
        SettingRing ring = new SettingRing(Length.ofMicrometres(70_000), Temperature.REFERENCE, SettingRing.STEEL);

        assertThat(without.zeroedOn(Optional.of(ring)).ring()).contains(ring);
        assertThat(without.zeroedOn(Optional.of(ring)).zeroedOn(Optional.empty()))
                .isEqualTo(without);
    }

    private static Gauge gauge(Kind kind, Length uncertainty, Length resolution, Length repeatability) {
        Calibration calibration = new Calibration(Optional.of(uncertainty), Optional.empty(), Optional.empty());
        return new Gauge(
                kind,
                Optional.empty(),
                calibration,
                Optional.of(resolution),
                repeatability,
                Optional.empty(),
                Source.REQUEST);
    }
}
