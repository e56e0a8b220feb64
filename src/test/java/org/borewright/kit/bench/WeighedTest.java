package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.MassRange;
import org.borewright.kit.bench.BenchHold.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The numbers allow 200 to 201 g bare; the set may differ by 2 g. */
class WeighedTest {

    private final TwinBench bench = new TwinBench();

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            WEIGHED,            FIRST,  SECOND, OUTCOME, READINESS, HOLD
            BARE,               200000, 202000, IN,      READY,
            BARE,               200000, 202001, OUT,     HOLD,      MASSES_APART
            BARE,               200000, ,       IN,      READY,
            WITH_PIN_AND_CLIPS, 260000, 262000, IN,      READY,
            WITH_PIN_AND_CLIPS, 260000, 262001, OUT,     HOLD,      MASSES_APART
            WITH_PIN_AND_CLIPS, 260000, ,       UNKNOWN, HOLD,      CHECK_UNKNOWN
            WITH_PIN_AND_CLIPS, ,       260000, UNKNOWN, HOLD,      CHECK_UNKNOWN
            WITH_PIN_AND_CLIPS, ,       ,       UNKNOWN, HOLD,      CHECK_UNKNOWN
            """)
    void bareAndCompleteAreNeverSetAgainstEachOther(
            Weighed weighed, Long first, Long second, Outcome outcome, Readiness readiness, Reason reason) {
        bench.weighed = weighed;

        BenchPlan plan = bench.plan(List.of(piston("A", first), piston("B", second)), "-", "-");

        assertThat(plan.checks().get(0))
                .extracting(Check::rule, Check::outcome)
                .containsExactly(Rule.MASS_SPREAD, outcome);
        assertThat(plan.readiness()).isEqualTo(readiness);
        assertThat(plan.holds()).extracting(BenchHold::reason).isEqualTo(reason == null ? List.of() : List.of(reason));
    }

    /** The second piston has not come yet. */
    @ParameterizedTest
    @CsvSource({"BARE, IN", "WITH_PIN_AND_CLIPS, UNKNOWN"})
    void whatIsNotInHandYetHoldsNothing(Weighed weighed, Outcome outcome) {
        bench.weighed = weighed;

        BenchPlan plan = bench.plan(List.of(piston("A", 200_000L)), "-", "-");

        assertThat(plan.checks().get(0))
                .extracting(Check::rule, Check::outcome)
                .containsExactly(Rule.MASS_SPREAD, outcome);
        assertThat(plan.readiness()).isEqualTo(Readiness.PROVISIONAL);
    }

    /** It is not that the others were not weighed. */
    @ParameterizedTest
    @EnumSource(Weighed.class)
    void oneAloneHasNothingToBeSetAgainst(Weighed weighed) {
        assertThat(weighed.spread(List.of(Optional.empty()), List.of(new MassRange(200_000, 201_000)), 2_000)
                        .outcome())
                .isEqualTo(Outcome.NOT_CHECKED);
    }

    @Test
    void theWordsAreTyped() {
        assertThat(Weighed.values()).extracting(Weighed::label).containsExactly("bare", "with pin and clips");
    }

    private PistonReading piston(String tag, Long milligrams) {
        return bench.piston(tag, "P-050", mm("70.445"), Optional.ofNullable(milligrams));
    }
}
