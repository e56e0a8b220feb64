package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.borewright.fit.Rule;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.SettingRing;
import org.borewright.measure.Temperature;
import org.borewright.measure.Temperature.Scale;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of the gauge, and what its ring does to a reading. */
class GaugeCautionsTest {

    private static final Set<Caution> OF_INSTRUMENTS = EnumSet.of(
            Caution.GAUGE_NOT_STATED,
            Caution.CALIBRATION_OVERDUE,
            Caution.PISTON_GAUGE_NOT_STATED,
            Caution.PISTON_CALIBRATION_OVERDUE,
            Caution.TEMPERATURE_FAR,
            Caution.TEMPERATURE_NOT_STATED,
            Caution.MEASURED_WARM_APART);

    @ParameterizedTest
    @CsvSource({
        "70.110, , true",
        "70.110, 0.005, false",
        // a gauge that measured nothing needs no caution
        "-, , false"
    })
    void aGaugeOfWhichNothingIsStatedIsACaution(String diameter, Length stated, boolean caution) {
        Match match = ask(diameter, gauge(stated, null, Optional.empty()));

        assertThat(match.cautions().contains(Caution.GAUGE_NOT_STATED)).isEqualTo(caution);
    }

    @ParameterizedTest
    @CsvSource({"70.110, -1, true", "70.110, 0, false", "70.110, 1, false", "70.110, , false", "-, -1, false"})
    void aCalibrationPastItsLastDayIsACaution(String diameter, Integer daysLeft, boolean caution) {
        LocalDate due = daysLeft == null ? null : request(diameter).on().plusDays(daysLeft);
        Match match = ask(diameter, gauge(mm("0.005"), due, Optional.empty()));

        assertThat(match.cautions().contains(Caution.CALIBRATION_OVERDUE)).isEqualTo(caution);
    }

    /** Beside a hole of 20 °C read with a gauge that is good for years; nothing rests on the piston of a finished hole. */
    @ParameterizedTest(name = "{0}, U {1}, {2} days left, {3} °C: {4}")
    @CsvSource({
        "WORN, 0.003, 0, 20, ''",
        "WORN, 0.003, -1, 20, PISTON_CALIBRATION_OVERDUE",
        "WORN, , 0, 20, PISTON_GAUGE_NOT_STATED",
        "WORN, 0.003, 0, 25, ''",
        "WORN, 0.003, 0, 25.001, TEMPERATURE_FAR MEASURED_WARM_APART",
        "FINISHED, , -1, 40, ''",
    })
    void thePresentPistonAndItsGaugeAreCautionedOfAsTheHolesAre(
            Condition condition, Length stated, int daysLeft, BigDecimal celsius, String cautions) {
        MatchRequest plain = request("70.110");
        Gauge ofPiston = gauge(stated, plain.on().plusDays(daysLeft), Optional.empty());
        PresentPiston piston = new PresentPiston(
                Optional.empty(),
                Optional.empty(),
                Optional.of(mm("69.930")),
                new Measuring(ofPiston, Climate.at(Temperature.parse(celsius, Scale.CELSIUS))));
        AsFound found = new AsFound(piston, Optional.empty(), Optional.empty(), Optional.empty());

        List<Caution> told = new TwinShop()
                .ask(new MatchRequest(
                        condition,
                        plain.present(),
                        plain.cylinders(),
                        gauge(mm("0.005"), plain.on(), Optional.empty()),
                        plain.climate(),
                        plain.deck(),
                        plain.asked(),
                        List.of(found, AsFound.NOT_TOLD),
                        plain.rings(),
                        plain.on()))
                .cautions();

        assertThat(told)
                .filteredOn(OF_INSTRUMENTS::contains)
                .extracting(Caution::name)
                .containsExactlyInAnyOrder(cautions.isEmpty() ? new String[0] : cautions.split(" ", -1));
    }

    @ParameterizedTest
    @CsvSource({"20, false", "25, false", "25.001, true", "14.999, true"})
    void aRingFarFromTwentyDegreesIsACautionAsABlockIs(BigDecimal celsius, boolean caution) {
        Match match = ask("70.110", gauge(mm("0.005"), null, Optional.of(ring(celsius))));

        assertThat(match.cautions().contains(Caution.TEMPERATURE_FAR)).isEqualTo(caution);
    }

    /** 70.000 mm of steel, 11.5 × 10⁻⁶ /K, grow 0.805 µm in 1 K; the block is at 20 °C. */
    @ParameterizedTest
    @CsvSource({"22, 70.111610", "20, 70.110000", "18, 70.108390"})
    void whatTheRingHadGrownGoesOnToEveryDiameter(BigDecimal celsius, Length at20) {
        Match match = ask("70.110", gauge(mm("0.005"), null, Optional.of(ring(celsius))));

        assertThat(match.holes().get(0).hole().diameters().orElseThrow().greatest())
                .isEqualTo(at20);
        assertThat(match.holes().get(0).hole().survey().asRead().largest()).contains(mm("70.110"));
    }

    /** In 30 K the ring grows 24.150 µm, so that 35.055 mm is less than half of 70.134 mm, though no less than half of what was read. */
    @ParameterizedTest
    @CsvSource({"20, true", "50, false"})
    void aProbeIsHeldAgainstTheDiameterWithWhatTheRingHadGrown(BigDecimal celsius, boolean believed) {
        MatchRequest asked = request("70.110");
        Wall.Reach reach = new Wall.Reach(mm("35.055"), false);
        Wall wall = TwinShop.probed(reach);
        CylinderSurvey probed = new CylinderSurvey("1", asked.cylinders().get(0).asRead(), wall, List.of());

        HoleReport first = ask(
                        new TwinShop()
                                .request(
                                        Condition.WORN,
                                        "standard",
                                        List.of(probed, asked.cylinders().get(1))),
                        gauge(mm("0.005"), null, Optional.of(ring(celsius))))
                .holes()
                .get(0);

        assertThat(first.hole().isProbed()).isEqualTo(believed);
        assertThat(first.checks().stream().anyMatch(check -> check.rule() == Rule.PROBED_WALL))
                .isNotEqualTo(believed);
        assertThat(first.cleanUp().orElseThrow().worst()).contains(believed ? mm("70.150") : mm("70.308300"));
    }

    @Test
    void aRingMakesAReadingWorthLessAndIsLeftOutWhereItIsNotStated() {
        Gauge without = gauge(mm("0.005"), null, Optional.empty());
        Gauge with = gauge(mm("0.005"), null, Optional.of(ring(BigDecimal.valueOf(20))));

        assertThat(uncertainty(with).isMoreThan(uncertainty(without))).isTrue();
        assertThat(uncertainty(without)).isEqualTo(uncertainty(Gauge.Kind.BORE_GAUGE.usual()));
    }

    private static Length uncertainty(Gauge gauge) {
        return ask("70.110", gauge).holes().get(0).hole().uncertainty();
    }

    private static SettingRing ring(BigDecimal celsius) {
        return new SettingRing(mm("70.000"), Temperature.parse(celsius, Scale.CELSIUS), SettingRing.STEEL);
    }

    private static Gauge gauge(Length stated, LocalDate due, Optional<SettingRing> ring) {
        Gauge usual = Gauge.Kind.BORE_GAUGE.usual();
        return new Gauge(
                usual.kind(),
                Optional.of("bench 2"),
                new Gauge.Calibration(Optional.ofNullable(stated), Optional.empty(), Optional.ofNullable(due)),
                usual.statedResolution(),
                usual.repeatability(),
                ring,
                Gauge.Source.REQUEST);
    }

    private static MatchRequest request(String diameter) {
        return new TwinShop().request(Condition.WORN, "standard", TwinShop.surveys(diameter, diameter));
    }

    private static Match ask(String diameter, Gauge gauge) {
        return ask(request(diameter), gauge);
    }

    private static Match ask(MatchRequest asked, Gauge gauge) {
        return new TwinShop().ask(Requests.measured(asked, gauge));
    }
}
