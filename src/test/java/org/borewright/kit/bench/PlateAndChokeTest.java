package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.Choke;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Piston 70.445, target 0.060: honed to a mean of 70.505. */
class PlateAndChokeTest {

    private final TwinBench bench = new TwinBench();

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void thePlateIsNamedWhereTheEngineHasOne(boolean plate) {
        bench.shop.torquePlate = plate;

        BenchPlan plan = plan("-");

        assertThat(plan.cautions().contains(Caution.TORQUE_PLATE)).isEqualTo(plate);
        assertThat(Step.of(bench.fits().shelf().engine()).contains(Step.TORQUE_PLATE))
                .isEqualTo(plate);
    }

    /** The bar leaves 0.05 at the narrower end. */
    @ParameterizedTest
    @CsvSource({"0.008, 0.012, 70.500, 70.510", "-0.012, -0.008, 70.510, 70.500"})
    void eachEndOfAChokeIsHonedToItsOwnSize(Length least, Length greatest, Length top, Length bottom) {
        bench.shop.choke = Optional.of(new Choke(new Limits(least, greatest)));

        HolePlan hole = plan("-").holes().get(0);

        assertThat(hole.honeTo()).contains(mm("70.505"));
        assertThat(hole.honeTopTo()).contains(top);
        assertThat(hole.honeBottomTo()).contains(bottom);
        assertThat(hole.boreTo()).contains(mm("70.450"));
        assertThat(Step.of(bench.fits().shelf().engine())).contains(Step.CHOKE);
    }

    @Test
    void aStraightHoleHasNoSizesOfItsEnds() {
        HolePlan hole = plan("-").holes().get(0);

        assertThat(hole.honeTopTo()).isEmpty();
        assertThat(hole.honeBottomTo()).isEmpty();
        assertThat(Step.of(bench.fits().shelf().engine())).doesNotContain(Step.CHOKE);
    }

    /** Least 0.040: target 0.060 less half of the choke must stay above it by the uncertainty of both gauges. */
    @ParameterizedTest
    @CsvSource({"0.020, READY", "0.040, HOLD"})
    void aChokeMayTakeTheTargetTooNearTheLeast(Length choke, Readiness readiness) {
        bench.shop.choke = Optional.of(new Choke(Limits.exactly(choke)));

        BenchPlan plan = plan("-");

        assertThat(plan.readiness()).isEqualTo(readiness);
        assertThat(plan.holds())
                .extracting(BenchHold::reason)
                .isEqualTo(readiness == Readiness.HOLD ? List.of(Reason.TARGET_NOT_PROVEN) : List.of());
    }

    /** Clean at 0.005 over the largest reading, at the narrower end too: the mean lies half the choke of 0.010 above that. */
    @Test
    void aHolePastItsTargetComesCleanAtBothEnds() {
        bench.shop.choke = Optional.of(new Choke(Limits.exactly(mm("0.010"))));

        HolePlan hole = plan("70.510").holes().get(0);

        assertThat(hole.work()).isEqualTo(Work.HONE_ONLY);
        assertThat(hole.honeTopTo()).contains(mm("70.515"));
        assertThat(hole.honeBottomTo()).contains(mm("70.525"));
    }

    private BenchPlan plan(String largest) {
        return bench.plan(bench.pistons("P-050", "70.445", "70.445"), largest, "-");
    }
}
