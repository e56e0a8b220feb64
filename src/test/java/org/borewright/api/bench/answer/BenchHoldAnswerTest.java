package org.borewright.api.bench.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.bench.TwinBench;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;

/** Pistons of 70.440 to 70.450 mm, each nearer to a limit than a micrometer tells. */
class BenchHoldAnswerTest {

    private final TwinBench bench = new TwinBench();

    /** A piston on its limit cannot be moved off it: another is taken. */
    @Test
    void eachOpenPistonIsToldWithItsOwnWayOut() {
        BenchHold open = bench.plan(bench.pistons("P-050", "70.4435", "70.440"), "70.500", "70.500").holds().stream()
                .filter(hold -> hold.reason() == Reason.PISTON_OPEN)
                .findFirst()
                .orElseThrow();

        assertThat(BenchHoldAnswer.next(open, LengthUnit.MILLIMETRE))
                .startsWith("Settle it before it is fitted, or take another piston; ")
                .contains(" A: measure again with a gauge whose expanded uncertainty is at most ")
                .endsWith(" B: the value lies on the limit and no gauge settles it: take another piston.")
                .doesNotContain("move off");
    }
}
