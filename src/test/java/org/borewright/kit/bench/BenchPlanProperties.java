package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.borewright.fit.Check;
import org.borewright.fit.Clearance;
import org.borewright.fit.Outcome;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

class BenchPlanProperties {

    private final TwinBench bench = new TwinBench();

    @Property(tries = 50)
    void theOrderInWhichPistonsAreSentDoesNotMatter(
            @ForAll @Size(3) List<@LongRange(min = 70_438_000, max = 70_452_000) Long> diameters) {
        List<PistonReading> pistons = pistons(diameters);
        List<PistonReading> reversed = new ArrayList<>(pistons);
        Collections.reverse(reversed);

        assertThat(bench.plan(reversed, "70.500", "70.480")).isEqualTo(bench.plan(pistons, "70.500", "70.480"));
    }

    /** A hole that is honed to where the window begins or ends is proven good when it is measured; one nanometre beyond it is not. */
    @Property(tries = 50)
    void theWindowEndsWhereTheProofDoes(@ForAll @LongRange(min = 70_440_000, max = 70_450_000) long piston) {
        HolePlan hole =
                bench.plan(pistons(List.of(piston, piston)), "-", "-").holes().get(0);
        Limits window = hole.window().orElseThrow();
        Length step = Length.ofNanometres(1);

        assertThat(isProven(hole, window.least())).isTrue();
        assertThat(isProven(hole, window.greatest())).isTrue();
        assertThat(isProven(hole, window.least().minus(step))).isFalse();
        assertThat(isProven(hole, window.greatest().plus(step))).isFalse();
        assertThat(window.hold(hole.honeTo().orElseThrow())).isTrue();
    }

    private static boolean isProven(HolePlan hole, Length diameter) {
        List<? extends Check> both = Clearance.check(
                Limits.exactly(diameter),
                Uncertainty.ofCalibration(hole.uncertainty()),
                hole.diameter(),
                Uncertainty.NONE,
                hole.part().shape().clearance());
        return both.stream().allMatch(check -> check.outcome() == Outcome.IN);
    }

    private List<PistonReading> pistons(List<Long> diameters) {
        List<PistonReading> pistons = new ArrayList<>();
        for (Long diameter : diameters) {
            pistons.add(bench.piston("P" + pistons.size(), "P-050", Length.ofNanometres(diameter), Optional.empty()));
        }
        return pistons;
    }
}
