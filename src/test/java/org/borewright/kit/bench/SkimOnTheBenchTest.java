package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Strokes;
import org.borewright.fit.Check;
import org.borewright.fit.DeckFlatness;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SkimOnTheBenchTest {

    private final TwinBench bench = new TwinBench();

    /** All skims together may take 0.3 mm. */
    @ParameterizedTest
    @CsvSource({
        "0, , false",
        "0.1, , false",
        "0.1, 0.2, false",
        "0.3, 0, false",
        "0.3, 0.000001, true",
        "0, 0.300001, true"
    })
    void aSkimThatNoGasketBearsHoldsTheSize(String skim, Length before, boolean held) {
        bench.deck = TwinBench.skimmed(skim, Optional.ofNullable(before));

        assertThat(plan().holds())
                .extracting(BenchHold::reason)
                .isEqualTo(held ? List.of(Reason.SIZE_BLOCKED) : List.of());
    }

    /** 1.9 mm between piston and head as made. */
    @Test
    void aSkimThatBringsThePistonTooNearTheHeadIsShownWithItsChecks() {
        bench.deck = TwinBench.skimmed("0.1", Optional.of(Length.ZERO));
        bench.shop.pistonToHead = new Limits(mm("1.9"), mm("2.4"));

        assertThat(plan().holds())
                .filteredOn(hold -> hold.reason() == Reason.SIZE_BLOCKED)
                .flatExtracting(BenchHold::checks)
                .extracting(Check::rule)
                .contains(Rule.PISTON_TO_HEAD_LEAST);
    }

    /** 0.05 mm at the most, U 0.010: proven flat to 0.040, proven not from 0.060 on; then a skim of what was found and U makes it flat. */
    @ParameterizedTest
    @CsvSource({
        "0.040, 0, IN,",
        "0.040001, 0, TOO_CLOSE, CHECK_OPEN",
        "0.060, 0, OUT, CHECK_OUT",
        "0.060, 0.069999, OUT, CHECK_OUT",
        "0.060, 0.070, IN,"
    })
    void aDeckThatIsNotFlatHoldsUnlessTheSkimMakesItSo(String found, String skim, Outcome outcome, Reason reason) {
        bench.deck = found(found, skim);

        BenchPlan plan = plan();

        assertThat(plan.checks()).extracting(Check::outcome).contains(outcome);
        assertThat(plan.holds()).extracting(BenchHold::reason).isEqualTo(reason == null ? List.of() : List.of(reason));
    }

    @ParameterizedTest
    @CsvSource({"0.020, 0.1, true", "0.020, 0, false", "0.080, 0.1, false"})
    void aFlatDeckNeedsNoSkim(String found, String skim, boolean told) {
        bench.deck = found(found, skim);

        assertThat(plan().cautions().contains(Caution.SKIM_NOT_NEEDED)).isEqualTo(told);
    }

    @Test
    void aDeckThatNobodyMeasuredIsSaidToBeUnchecked() {
        assertThat(plan().checks()).contains(DeckFlatness.NOT_MEASURED);
    }

    private static Deck found(String flatness, String skim) {
        return new Deck(
                Optional.of(new DeckFlatness(mm(flatness), Optional.empty())), mm(skim), Optional.of(Length.ZERO));
    }

    @ParameterizedTest
    @CsvSource({"FOUR, VALVE_ROOM", "TWO, CUT_BASE"})
    void aSkimmedDeckIsACaution(Strokes strokes, Caution ofStrokes) {
        bench.shop.strokes = strokes;
        bench.deck = TwinBench.skimmed("0.1", Optional.empty());

        assertThat(plan().cautions()).contains(Caution.SKIMMED_DECK, ofStrokes, Caution.EARLIER_SKIMS_NOT_STATED);
    }

    @Test
    void aDeckThatIsLeftNeedsNoWord() {
        assertThat(plan().cautions())
                .doesNotContain(Caution.SKIMMED_DECK, Caution.VALVE_ROOM, Caution.EARLIER_SKIMS_NOT_STATED);
    }

    private BenchPlan plan() {
        return bench.plan(List.of(bench.piston("A", "P-050", mm("70.445"), Optional.empty())), "-", "-");
    }
}
