package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.Check;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Standard pistons of the twin, 69.940 to 69.950 mm with 0.040 to 0.100: by exact readings any of them runs in 69.990 to 70.040. */
class PistonInHoleTest {

    private final TwinShop shop = new TwinShop();

    /** U = 2·√((U of the gauge/2)² + 0.289² + 0.799²) µm: 0.005 281 and 0.024 061 mm; of 0.025 mm more than half of 0.050. */
    @ParameterizedTest(name = "gauge {0}, {1}: {2}, proven from {3} to {4}")
    @CsvSource({
        "0.005, 69.995280, CLEARANCE_LEAST, 69.995281, 70.034719",
        "0.005, 69.995281, '', 69.995281, 70.034719",
        "0.005, 70.034719, '', 69.995281, 70.034719",
        "0.005, 70.034720, CLEARANCE_GREATEST, 69.995281, 70.034719",
        "0.024, 70.014, CLEARANCE_LEAST, 70.014061, 70.015939",
        "0.025, 70.015, CLEARANCE_LEAST CLEARANCE_GREATEST, , ",
    })
    void aHoleIsProvenWithAnyPistonOfANumberOnlySoFarInsideItsWindow(
            Length ofGauge, Length diameter, String tooClose, Length least, Length greatest) {
        PistonInHole running = running(ofGauge, Climate.at(Temperature.REFERENCE), diameter);

        assertThat(running.tooClose())
                .extracting(check -> check.rule().name())
                .isEqualTo(Arrays.stream(tooClose.split(" "))
                        .filter(rule -> !rule.isEmpty())
                        .toList());
        assertThat(running.tooClose()).extracting(Check::place).allMatch("cylinder 1"::equals);
        assertThat(running.proven())
                .isEqualTo(Optional.ofNullable(least).map(smallest -> new Limits(smallest, greatest)));
    }

    /** Whatever the hole that was too close, a hole at either end is proven, and one just beyond is not. */
    @Property(tries = 100)
    void bothEndsAreProvenAndLittleBeyondIs(
            @ForAll @IntRange(min = 1, max = 20) int gaugeMicrometres,
            @ForAll @LongRange(min = 69_980_000, max = 70_050_000) long diameter,
            @ForAll boolean stated) {
        Length ofGauge = Length.ofMicrometres(gaugeMicrometres);
        Climate climate = stated ? Climate.at(Temperature.REFERENCE) : Climate.NOT_STATED;
        Limits proven = running(ofGauge, climate, Length.ofNanometres(diameter))
                .proven()
                .orElseThrow();
        Length little = Length.ofNanometres(10);

        for (Length inside : List.of(proven.least(), proven.greatest())) {
            assertThat(running(ofGauge, climate, inside).tooClose()).isEmpty();
        }
        for (Length beyond :
                List.of(proven.least().minus(little), proven.greatest().plus(little))) {
            assertThat(running(ofGauge, climate, beyond).tooClose()).hasSize(1);
        }
    }

    private PistonInHole running(Length ofGauge, Climate climate, Length diameter) {
        Gauge usual = Gauge.Kind.BORE_GAUGE.usual();
        MatchRequest plain = shop.request(
                Condition.FINISHED,
                "",
                List.of(
                        new CylinderSurvey("1", new SingleDiameter(diameter), Wall.UNKNOWN, List.of()),
                        TwinShop.survey("2", "70.010")));
        Hole hole = shop.ask(Requests.measured(
                        plain,
                        new Gauge(
                                usual.kind(),
                                usual.name(),
                                new Gauge.Calibration(Optional.of(ofGauge), Optional.empty(), Optional.empty()),
                                usual.statedResolution(),
                                usual.repeatability(),
                                usual.ring(),
                                Gauge.Source.REQUEST),
                        climate))
                .holes()
                .get(0)
                .hole();
        return new PistonInHole(hole, shop.pistons.get(0));
    }
}
