package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Certainty;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holes too large for +0.50; at target +0.75 has 70.750 to 70.760, and +1.00 has 71.000 to 71.010. */
class NextSizeTest {

    private final TwinBench bench = new TwinBench();

    /** Worn, a hole may be worn on one wall alone, so that only a match can be certain; the largest hole decides for all. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            CONDITION, WITHOUT,     FIRST,  SECOND, SIZE,  CERTAINTY
            WORN,      '',          70.560, 70.505, +0.75, POSSIBLE
            FINISHED,  '',          70.560, 70.505, +0.75, CERTAIN
            FINISHED,  '',          70.900, 70.505, +1.00, CERTAIN
            FINISHED,  '',          70.505, 70.900, +1.00, CERTAIN
            FINISHED,  R-075,       70.560, 70.505, +1.00, CERTAIN
            FINISHED,  R-075 R-100, 70.560, 70.505, -,
            FINISHED,  '',          71.200, 70.505, -,
            FINISHED,  '',          70.510, 70.505, -,
            """)
    void theSmallestLargerSizeThatIsOfferedAndHoldsEveryHoleWouldSaveThem(
            Condition condition, String without, String first, String second, String size, Certainty certainty) {
        bench.condition = condition;
        if (!without.isEmpty()) {
            List.of(without.split(" ", -1)).forEach(rings -> bench.shop.withdraw(rings, Withdrawal.State.NEVER_MADE));
        }

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), first, second);
        Optional<NextSize> next = plan.next();

        assertThat(next.map(larger -> larger.size().label()).orElse("-")).isEqualTo(size);
        assertThat(next.map(NextSize::certainty)).isEqualTo(Optional.ofNullable(certainty));
        assertThat(plan.holds().stream()
                        .map(BenchHold::reason)
                        .filter(EnumSet.of(Reason.PAST_WINDOW, Reason.PAST_LAST_SIZE)::contains))
                .containsExactlyElementsOf(
                        first.equals("70.510")
                                ? List.of()
                                : List.of(next.isPresent() ? Reason.PAST_WINDOW : Reason.PAST_LAST_SIZE));
    }

    /** 70.545 is proven too large for a piston of 70.438, and not for one of 70.440: what is next is a larger size all the same. */
    @Test
    void theSizeInHandIsNoNextSize() {
        bench.condition = Condition.FINISHED;

        assertThat(bench.plan(bench.pistons("P-050", "70.438", "70.438"), "70.545", "70.505")
                        .next()
                        .map(larger -> larger.size().label()))
                .contains("+0.75");
    }

    /** All skims together may take 0.3 mm: beyond them no gasket serves any larger size either. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.2, +0.75", "0.1, 0.200001, -"})
    void aSizeThatTheSkimmedDeckDoesNotBearSavesNothing(String skim, Length before, String size) {
        bench.condition = Condition.FINISHED;
        bench.deck = TwinBench.skimmed(skim, Optional.of(before));

        assertThat(bench.plan(bench.pistons("P-050", "70.445", "70.445"), "70.560", "70.505")
                        .next()
                        .map(larger -> larger.size().label())
                        .orElse("-"))
                .isEqualTo(size);
    }
}
