package org.borewright.api.bench.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.TwinBench;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;

/** Pistons of 70.440 to 70.450 mm, each nearer to a limit than a micrometer tells. */
class BenchHoldAnswerTest {

    private final TwinBench bench = new TwinBench();

    /** A piston on its limit cannot be moved off it: another is taken. A tag stands as it is marked, for a and A are two. */
    @Test
    void eachOpenPistonIsToldWithItsOwnWayOut() {
        List<PistonReading> pistons = List.of(
                bench.piston("a", "P-050", mm("70.4435"), Optional.empty()),
                bench.piston("B", "P-050", mm("70.440"), Optional.empty()));
        BenchHold open = bench.plan(pistons, "70.500", "70.500").holds().stream()
                .filter(hold -> hold.reason() == Reason.PISTON_OPEN)
                .findFirst()
                .orElseThrow();

        assertThat(BenchHoldAnswer.next(open, LengthUnit.MILLIMETRE))
                .startsWith("Settle it before it is fitted, or take another piston; ")
                .contains(
                        " a: measure again with a gauge whose expanded uncertainty is at most 0.002108 mm, all else as it was.")
                .contains(" B: the value lies on the limit and no gauge settles it: take another piston.")
                .doesNotContain("move off");
    }
}
