package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One hole of the twin for a piston of +0.50: 70.440 to 70.450, clearance 0.040, 0.060, 0.100. */
class HolePlannerTest {

    private final TwinBench bench = new TwinBench();

    /** A hole that is to be cut need not be measured before; one that runs as it is or not at all must be. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({"WORN, IRON_BARREL, false", "FINISHED, IRON_BARREL, true", "WORN, PLATED, true"})
    void aHoleThatIsLeftAsItIsMustBeMeasured(Condition condition, Construction construction, boolean held) {
        bench.condition = condition;
        bench.shop.construction = construction;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "-", "-");

        assertThat(plan.holds().stream().anyMatch(hold -> hold.reason() == Reason.CHECK_UNKNOWN))
                .isEqualTo(held);
        assertThat(plan.readiness() == Readiness.READY).isNotEqualTo(held);
    }

    /** The target lies 0.020 above the least: a hole known to 0.020 can be proven there with whatever piston comes, and to no more. */
    @ParameterizedTest(name = "gauge of {0}: {1}")
    @CsvSource({"0.019, PROVISIONAL, ''", "0.020, HOLD, TARGET_NOT_PROVEN", "0.050, HOLD, TARGET_NOT_PROVEN"})
    void aGaugeTooCoarseForAnyPistonStopsTheWorkBeforeOneIsMeasured(
            Length uncertainty, Readiness readiness, String reason) {
        bench.gauge = new Gauge(
                Gauge.Kind.BORE_GAUGE,
                Optional.empty(),
                new Gauge.Calibration(Optional.of(uncertainty), Optional.empty(), Optional.empty()),
                Optional.of(Length.ZERO),
                Length.ZERO,
                Optional.empty(),
                Gauge.Source.REQUEST);

        BenchPlan plan = bench.plan(List.of(), "-", "-");

        assertThat(plan.readiness()).isEqualTo(readiness);
        assertThat(plan.holds())
                .extracting(hold -> hold.reason().name())
                .isEqualTo(reason.isEmpty() ? List.of() : List.of(reason));
    }

    /** The bar may go first; what to hone to only the measured piston tells. */
    @Test
    void whatToHoneToWaitsForThePiston() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445"), "-", "-");

        assertThat(plan.holes())
                .extracting(HolePlan::boreTo)
                .containsExactly(Optional.of(mm("70.455")), Optional.of(mm("70.450")));
        assertThat(plan.holes())
                .extracting(HolePlan::honeTo)
                .containsExactly(Optional.of(mm("70.505")), Optional.empty());
    }

    /** The bar goes to 70.455 where U more is left; the hone alone follows the hole and takes out what it must. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({"WORN, 70.110, true", "WORN, 70.470, false", "FINISHED, 70.110, false"})
    void thatWornHolesComeCleanUnderTheBarIsForAMatchToProve(Condition condition, String diameter, boolean told) {
        bench.condition = condition;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), diameter, diameter);

        assertThat(plan.cautions().contains(Caution.CLEAN_UP_NOT_ASKED)).isEqualTo(told);
    }
}
