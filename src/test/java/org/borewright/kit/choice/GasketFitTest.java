package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Piston;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The gasket kit of the twin over its standard pistons: 199.4 to 199.5 + 0.5 − (80/2 + 125 + 34) leaves a deck of 0.9 to 1.0 mm, and 1.0 to
 * 1.1 of gasket make 1.9 to 2.1 from piston to head. All skims may take 0.3 mm.
 */
class GasketFitTest {

    private final TwinShop shop = new TwinShop();

    /**
     * π/4 · 70² · 80 = 307.876 cm³ over 42 of chamber: with 3.848 of deck and 4.629 of gasket no more than 7.099, and the piston at the upper end
     * of its tolerance π/4 · 70.01² · 80 = 307.964 with 3.465 and 4.185 as much as 7.202.
     */
    @Test
    void theFiguresAreTheLeastAndTheGreatestThatTheTolerancesAllow() {
        GasketFit fit = GasketFit.of(shop.shelf().engine(), kit(), pistons(), Length.ZERO);

        assertThat(fit.deckHeight()).isEqualTo(new Limits(mm("0.9"), mm("1.0")));
        assertThat(fit.pistonToHead()).isEqualTo(new Limits(mm("1.9"), mm("2.1")));
        assertThat(fit.lowestRatio().units() / 1000).isEqualTo(7_099);
        assertThat(fit.highestRatio().units() / 1000).isEqualTo(7_202);
        assertThat(fit.fits()).isTrue();
    }

    @ParameterizedTest(name = "{0} to {1} asked, {2} skimmed: {3}, {4} at the most")
    @CsvSource({
        "1.8, 2.1, 0.1, IN, 0.3",
        // 1.9 − 1.8, and a nanometre more
        "1.8, 2.1, 0.100001, OUT, 0.1",
        // 2.1 − 2.05 must come off before it fits, and 1.9 − 1.8 may
        "1.8, 2.05, 0.3, OUT, 0.1",
        "1.888, 2.09, 0.3, OUT, 0.012",
        "1.8, 2.05, 0.05, IN, 0.3",
        // too far off as it is: less skim mends nothing
        "1.8, 2.05, 0.049999, , ",
        // what the engine bears, though the piston would bear more
        "1.5, 2.1, 0.3, IN, 0.3",
        "1.5, 2.1, 0.300001, OUT, 0.3",
        "1.9, 2.1, 0.3, OUT, 0",
        // too near without any skim
        "1.900001, 2.1, 0.3, , ",
    })
    void aSkimIsHeldAgainstTheMostThatTheSetBears(
            Length least, Length greatest, Length skims, Outcome outcome, Length most) {
        shop.pistonToHead = new Limits(least, greatest);

        Optional<Comparison> skim = GasketFit.skimmed(shop.shelf().engine(), kit(), pistons(), skims).checks().stream()
                .filter(check -> check.rule() == Rule.DECK_SKIM)
                .map(Comparison.class::cast)
                .findFirst();

        assertThat(skim.map(Comparison::outcome)).isEqualTo(Optional.ofNullable(outcome));
        assertThat(skim.map(check -> Length.ofNanometres(check.limit().units())))
                .isEqualTo(Optional.ofNullable(most));
    }

    /** The set bears 0.1 mm of skims; what earlier ones took is put back by none, and the engine bears 0.3 mm with any gasket. */
    @ParameterizedTest(name = "{0} skimmed, {1} of it before: {2}, {3}")
    @CsvSource({
        "0.2, 0, SKIM, PISTON_TO_HEAD_LEAST DECK_SKIM",
        "0.2, 0.1, SKIM, PISTON_TO_HEAD_LEAST DECK_SKIM",
        "0.2, 0.100001, SKIMMED_BEFORE, PISTON_TO_HEAD_LEAST DECK_SKIM",
        "0.300001, 0.1, SKIM, PISTON_TO_HEAD_LEAST DECK_SKIM ENGINE_SKIM",
        "0.300001, 0.3, SKIMMED_BEFORE, PISTON_TO_HEAD_LEAST DECK_SKIM",
        "0.4, 0.300001, SKIMMED_BEFORE, PISTON_TO_HEAD_LEAST DECK_SKIM ENGINE_SKIM",
    })
    void theEngineSpeaksWhereAThickerGasketWouldSeemToHelp(
            Length skims, Length before, Block.Reason reason, String rules) {
        shop.pistonToHead = new Limits(mm("1.8"), mm("2.1"));
        Engine engine = shop.shelf().engine();
        GasketFit fit = GasketFit.skimmed(engine, kit(), pistons(), skims);

        Block block = GasketFit.block(engine, List.of(fit), before);

        assertThat(block.reason()).isEqualTo(reason);
        assertThat(block.checks()).extracting(check -> check.rule().name()).containsExactly(rules.split(" "));
    }

    private Gaskets kit() {
        return Gaskets.of(shop.gaskets.get(0));
    }

    private List<Piston> pistons() {
        return List.of(shop.pistons.get(0));
    }
}
