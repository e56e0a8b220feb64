package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.borewright.catalog.Strokes;
import org.borewright.kit.TwinShop;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of the two gauges of the bench: whose it is must be told. */
class BenchCautionsTest {

    private static final Set<Caution> OF_GAUGES = EnumSet.of(
            Caution.GAUGE_NOT_STATED,
            Caution.PISTON_GAUGE_NOT_STATED,
            Caution.CALIBRATION_OVERDUE,
            Caution.PISTON_CALIBRATION_OVERDUE);

    private final TwinBench bench = new TwinBench();

    @ParameterizedTest(name = "holes {0}, {1}; pistons {2}, {3}: {4}")
    @CsvSource({
        "0.005, 0,  0.003, 0,  ''",
        "     , 0,  0.003, 0,  GAUGE_NOT_STATED",
        "0.005, 0,       , 0,  PISTON_GAUGE_NOT_STATED",
        "0.005, -1, 0.003, 0,  CALIBRATION_OVERDUE",
        "0.005, 0,  0.003, -1, PISTON_CALIBRATION_OVERDUE"
    })
    void eachGaugeIsCautionedOfByWhatItMeasured(Length ofHoles, int daysLeft, Length ofPistons, int left, String told) {
        bench.gauge = gauge(Gauge.Kind.BORE_GAUGE, ofHoles, daysLeft);
        Measuring pistons =
                new Measuring(gauge(Gauge.Kind.MICROMETER, ofPistons, left), Climate.at(Temperature.REFERENCE));

        assertThat(of(bench.pistons("P-050", "70.445"), pistons))
                .extracting(Caution::name)
                .isEqualTo(told.isEmpty() ? List.of() : List.of(told));
    }

    @Test
    void whereNoPistonWasMeasuredNothingIsSaidOfItsGauge() {
        bench.gauge = gauge(Gauge.Kind.BORE_GAUGE, mm("0.005"), 0);

        assertThat(of(List.of(), TwinBench.ofPistons())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"-, false", "70.470, true"})
    void oneDiameterOfAHoleIsCautionedOf(String diameter, boolean told) {
        assertThat(bench.plan(List.of(), "-", diameter).cautions().contains(Caution.SINGLE_DIAMETER))
                .isEqualTo(told);
    }

    /** Finished for 70.445: 70.505 runs as it is, 70.430 is too tight. */
    @ParameterizedTest
    @CsvSource({"WORN, -, true", "FINISHED, 70.505, false", "FINISHED, 70.430, true"})
    void portsAreCautionedOfWhereAHoleIsCut(Condition condition, String diameter, boolean told) {
        bench.condition = condition;
        bench.shop.strokes = Strokes.TWO;

        assertThat(bench.plan(bench.pistons("P-050", "70.445", "70.445"), diameter, "70.506")
                        .cautions()
                        .contains(Caution.PORTS))
                .isEqualTo(told);
    }

    private List<Caution> of(List<PistonReading> pistons, Measuring with) {
        BenchRequest request = bench.request(pistons, TwinShop.surveys("-", "-"), with);
        return BenchPlan.of(bench.fits(), request).cautions().stream()
                .filter(OF_GAUGES::contains)
                .toList();
    }

    private static Gauge gauge(Gauge.Kind kind, Length stated, int daysLeft) {
        LocalDate due = TwinShop.DAY.plusDays(daysLeft);
        return new Gauge(
                kind,
                Optional.empty(),
                new Gauge.Calibration(Optional.ofNullable(stated), Optional.empty(), Optional.of(due)),
                Optional.of(mm("0.001")),
                Length.ZERO,
                Optional.empty(),
                Gauge.Source.REQUEST);
    }
}
