package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Strokes;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.caution.Caution;
import org.borewright.measure.Length;
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
