package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Size;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The twin has sizes to +1.00, whose new hole is at most 71.020 mm; the bar may stand off its axis by 0.02 mm. */
class RebuildsLeftTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "after {0}: {1}")
    @CsvSource({"standard, 4", "+0.25, 3", "+0.50, 2", "+0.75, 1", "+1.00, 0"})
    void everyLargerSizeIsARebuild(String size, int left) {
        assertThat(leftAfter(size)).isEqualTo(new RebuildsLeft(left, left));
    }

    @Test
    void aSizeCostsAsManyRebuildsAsItIsFartherOn() {
        assertThat(new RebuildsLeft(5, 3).less(new RebuildsLeft(2, 1))).isEqualTo(new RebuildsLeft(3, 2));
    }

    /** A limit that +1.00 just bears, and the same a nanometre tighter. */
    @ParameterizedTest(name = "{0} {1} with at least {2}: {3}")
    @CsvSource({
        // (76.090 − 71.050)/2 − 0.02 = 2.5
        "sleeve, 76.090, 2.5, 4",
        "sleeve, 76.089999, 2.5, 3",
        "sleeve, 76.090, 2.500001, 3",
        "spigot, 76.090, 2.5, 4",
        "spigot, 76.089999, 2.5, 3",
        // 76.050 − 71.050 = 5
        "pitch, 76.050, 5, 4",
        "pitch, 76.049999, 5, 3",
        // three sizes fewer
        "pitch, 75.300, 5, 1",
    })
    void aSizeThatTheMetalDoesNotBearIsNone(String what, String length, String least, int left) {
        Optional<Length> none = Optional.empty();
        var stated = Optional.of(mm(length));
        var limit = Optional.of(mm(least));
        switch (what) {
            case "sleeve" -> shop.wall = new WallShape(stated, limit, none, none, none);
            case "spigot" -> shop.wall = new WallShape(none, none, stated, limit, none);
            default -> {
                shop.pitch = stated;
                shop.wall = new WallShape(none, none, none, none, limit);
            }
        }

        assertThat(leftAfter("standard")).isEqualTo(new RebuildsLeft(left, left));
    }

    @ParameterizedTest(name = "largest oversize {0}: {1}")
    @CsvSource({"1, 4", "0.999999, 3", "0.25, 1", "0, 0"})
    void aSizeBeyondTheLargestOversizeIsNone(String largest, int left) {
        shop.largestOversize = mm(largest);

        assertThat(leftAfter("standard")).isEqualTo(new RebuildsLeft(left, left));
    }

    @ParameterizedTest
    @EnumSource
    void aWallThatIsNeverBoredHasNoRebuild(Construction construction) {
        shop.construction = construction;

        assertThat(leftAfter("standard").byMetal()).isEqualTo(construction.mayBeBored() ? 4 : 0);
    }

    @Test
    void aSizeThatNeedsFurtherWorkIsNone() {
        shop.sizes.set(4, new Size("+1.00", mm("1.00"), true));

        assertThat(leftAfter("standard")).isEqualTo(new RebuildsLeft(3, 3));
    }

    @Test
    void aSizeNeverMadeIsLeftByMetalAndNotByPistons() {
        shop.pistons.removeIf(piston -> piston.size().equals("+0.50"));

        assertThat(leftAfter("+0.25")).isEqualTo(new RebuildsLeft(3, 2));
        assertThat(leftAfter("+0.50")).isEqualTo(new RebuildsLeft(2, 2));
    }

    /** A discontinued piston still is a rebuild, for it may be had while it lasts. */
    @ParameterizedTest
    @CsvSource({"NEVER_MADE, 3", "DISCONTINUED, 4"})
    void aWithdrawnPistonCountsWhileItLasts(Withdrawal.State state, int byPistons) {
        shop.withdraw("P-050", state);

        assertThat(leftAfter("standard")).isEqualTo(new RebuildsLeft(4, byPistons));
    }

    /** The rings of +0.50 were never made, and a piston without rings rebuilds nothing; while they last it does. */
    @ParameterizedTest
    @CsvSource({"NEVER_MADE, 3", "DISCONTINUED, 4"})
    void aPistonWithoutRingsIsNoRebuild(Withdrawal.State state, int byPistons) {
        shop.withdraw("R-050", state);

        assertThat(leftAfter("standard")).isEqualTo(new RebuildsLeft(4, byPistons));
    }

    private RebuildsLeft leftAfter(String size) {
        FitTable fits = FitTable.of(shop.shelf());
        return fits.leftAfter(fits.shelf().size(size).orElseThrow()).orElseThrow();
    }
}
