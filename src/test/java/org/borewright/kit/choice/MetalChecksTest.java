package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The metal of the twin at the largest finish of its +0.50 pistons, 70.550 mm; the bar may stand off its axis by 0.02 mm. */
class MetalChecksTest {

    private static final Optional<Length> NONE = Optional.empty();

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "spigot {0}, at least {1}: {2}")
    @CsvSource({
        // (75.590 − 70.550)/2 − 0.02 = 2.5
        "75.590, 2.5, IN",
        "75.589999, 2.5, OUT",
        "75.590, 2.500001, OUT",
    })
    void theSpigotKeepsItsLeastWall(String outside, String least, Outcome outcome) {
        shop.wall = new WallShape(NONE, NONE, Optional.of(mm(outside)), Optional.of(mm(least)), NONE);

        Choice choice = half();

        assertThat(choice.metalChecks())
                .extracting(Check::rule, Check::outcome)
                .contains(tuple(Rule.SPIGOT_WALL, outcome));
        assertThat(choice.blocks())
                .extracting(Block::reason)
                .isEqualTo(outcome == Outcome.IN ? List.of() : List.of(Block.Reason.WALL));
    }

    @ParameterizedTest(name = "pitch {0}, at least {1}: {2}")
    @CsvSource({
        // 75.550 − 70.550 = 5
        "75.550, 5, IN",
        "75.549999, 5, OUT",
        "75.550, 5.000001, OUT",
    })
    void theBridgeBetweenTwoHolesIsNamedByBoth(String pitch, String least, Outcome outcome) {
        shop.pitch = Optional.of(mm(pitch));
        shop.wall = new WallShape(NONE, NONE, NONE, NONE, Optional.of(mm(least)));

        Choice choice = half();

        assertThat(choice.metalChecks())
                .extracting(Check::rule, Check::place, Check::outcome)
                .contains(tuple(Rule.BRIDGE, "1–2", outcome));
        assertThat(choice.blocks())
                .extracting(Block::reason)
                .isEqualTo(outcome == Outcome.IN ? List.of() : List.of(Block.Reason.BRIDGE));
    }

    @Test
    void whatTheEngineDoesNotStateIsNotAsked() {
        shop.wall = new WallShape(NONE, NONE, NONE, NONE, NONE);

        assertThat(half().metalChecks()).extracting(Check::rule).doesNotContain(Rule.SPIGOT_WALL, Rule.BRIDGE);
        assertThat(half().wallAsMade()).isEmpty();
    }

    /** A sleeve as made: the wall is told before a hole is measured, and stands beside the blocks of the parts. */
    @ParameterizedTest
    @CsvSource({"75.590, IN", "75.589999, OUT"})
    void theWallOfTheSleeveAsMadeIsTold(String outside, Outcome outcome) {
        shop.wall = new WallShape(Optional.of(mm(outside)), Optional.of(mm("2.5")), NONE, NONE, NONE);

        assertThat(half().wallAsMade().orElseThrow().outcome()).isEqualTo(outcome);
        assertThat(half().blocks()).isEmpty();
        assertThat(half().blocksAsMade(shop.shelf().engine()))
                .extracting(Block::reason)
                .isEqualTo(outcome == Outcome.IN ? List.of() : List.of(Block.Reason.WALL));
    }

    private Choice half() {
        FitTable fits = FitTable.of(shop.shelf());
        return fits.at(fits.shelf().size("+0.50").orElseThrow()).get(0);
    }
}
