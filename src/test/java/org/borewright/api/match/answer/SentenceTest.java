package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.surveys;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.borewright.catalog.BaseGasket;
import org.borewright.catalog.Strokes;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The twin of 70.110 and 70.020 mm: possible at +0.25, certain from +0.50 on. Its work takes three days, what is ordered ten. */
class SentenceTest {

    private static final String SERVES =
            "Every cylinder goes to %s: every check is in, and the kit is complete from the shelf.";

    private static Match asking(TwinShop shop, String label, String... diameters) {
        MatchRequest plain = shop.request(Condition.WORN, "standard", surveys(diameters));
        return shop.ask(Requests.asking(
                plain,
                shop.sizes.stream().filter(size -> size.label().equals(label)).findFirst()));
    }

    private static String says(Match match) {
        return Sentence.of(match, LengthUnit.MILLIMETRE);
    }

    @ParameterizedTest(name = "{0} asked for")
    @CsvSource(delimiter = '|', textBlock = """
            +0.50 | +0.50 |
            +0.75 | +0.75 | +0.75 was asked for; +0.50 would serve. That costs 0.250 mm more metal, 1 rebuild.
            +1.00 | +1.00 | +1.00 was asked for; +0.50 would serve. That costs 0.500 mm more metal, 2 rebuilds.
            """)
    void aLargerSizeAskedForSaysWhatItCosts(String asked, String size, String cost) {
        assertThat(says(asking(new TwinShop(), asked, "70.110", "70.020")))
                .isEqualTo(SERVES.formatted(size) + (cost == null ? "" : " " + cost));
    }

    @Test
    void aLargerSizeThatMustBeOrderedCostsDaysAsWell() {
        TwinShop shop = new TwinShop();
        shop.offer("P-075", "40", 1);

        Match match = asking(shop, "+0.75", "70.110", "70.020");

        assertThat(says(match)).endsWith("That costs 0.250 mm more metal, 1 rebuild, 10 days.");
        assertThat(match.job().days()).isEqualTo(OptionalInt.of(13));
    }

    @Test
    void aSizeWithoutPistonsIsNamedWhereItIsPassedOver() {
        TwinShop shop = new TwinShop();
        shop.pistons.removeIf(piston -> piston.size().equals("+0.50"));

        assertThat(says(shop.worn("standard", "70.110", "70.020")))
                .isEqualTo(SERVES.formatted("+0.75")
                        + " +0.50, certain, is passed over: no piston was ever made in this size.");
    }

    @ParameterizedTest(name = "without pistons of {0}")
    @CsvSource(delimiter = '|', textBlock = """
            +0.75       | No size is certain; +1.00 is the smallest possible. The wear may be all on one wall, and then no size is certain: cylinder 1. Without cylinder 1 the others could go to +0.25. +0.75, possible, is passed over: no piston was ever made in this size.
            +0.75 +1.00 | No size is certain. Only a size for which no piston was ever made might bring every cylinder clean. Without cylinder 1 the others could go to +0.25. +0.75, possible, is passed over: no piston was ever made in this size. +1.00, possible, is passed over: no piston was ever made in this size.
            """)
    void soIsOneThatIsOnlyPossible(String wanting, String says) {
        TwinShop shop = new TwinShop();
        shop.pistons.removeIf(piston -> wanting.contains(piston.size()));

        assertThat(says(shop.worn("standard", "70.480", "70.020"))).isEqualTo(says);
    }

    /** +0.50 is excluded by the wear of 70.480 mm: that no piston was made for it then is not the reason. */
    @Test
    void aSizeThatDoesNotComeCleanIsNotPassedOver() {
        TwinShop shop = new TwinShop();
        shop.pistons.removeIf(
                piston -> piston.size().equals("+0.25") || piston.size().equals("+0.50"));

        assertThat(says(shop.worn("standard", "70.300", "70.020")))
                .isEqualTo(SERVES.formatted("+0.75")
                        + " +0.50, possible, is passed over: no piston was ever made in this size.");
    }

    @Test
    void ringsNeverMadeAreNamedWithTheirNumber() {
        TwinShop shop = new TwinShop();
        shop.withdraw("R-050", Withdrawal.State.NEVER_MADE);

        assertThat(says(shop.worn("standard", "70.110", "70.020")))
                .isEqualTo(
                        SERVES.formatted("+0.75")
                                + " +0.50, certain, is passed over: a part that goes with this piston is not supplied (R-050, never made).");
    }

    @Test
    void checksThatCouldNotBeMadeAreCountedAndNoneOfThemIsIn() {
        TwinShop shop = new TwinShop();
        shop.headBoltsOfInchThread();

        assertThat(says(shop.worn("standard", "70.110", "70.020")))
                .isEqualTo("Every cylinder goes to +0.50: every check that could be made is in, 1 could not"
                        + " (pull of the torque against the proof load: not an ISO metric thread),"
                        + " and the kit is complete from the shelf.");
    }

    /** 0.7 mm under each barrel in place of 0.5: 2.1 to 2.3 mm from piston to head. */
    @ParameterizedTest(name = "of {0} in {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            0.7 | MILLIMETRE | The base gasket BG-1 goes on, and that of GK-1 is left over. The ports stand 0.200 mm higher than as made.
            0.7 | INCH       | The base gasket BG-1 goes on, and that of GK-1 is left over. The ports stand 0.007874 in higher than as made.
            0.4 | MILLIMETRE | The base gasket BG-1 goes on, and that of GK-1 is left over. The ports stand 0.100 mm lower than as made.
            """)
    void aLooseGasketSaysWhatIsLeftOverAndWhereThePortsComeToStand(String thickness, LengthUnit unit, String says) {
        TwinShop shop = new TwinShop();
        shop.strokes = Strokes.TWO;
        Limits base = Limits.exactly(mm(thickness));
        shop.baseGaskets.add(new BaseGasket(TwinShop.no("BG-1"), base, 1));
        shop.offer("BG-1", "3", 5);
        Length least = mm("1.4").plus(base.least());
        shop.pistonToHead = new Limits(least, least.plus(mm("0.2")));

        assertThat(Sentence.of(shop.worn("standard", "70.110", "70.020"), unit)).endsWith(says);
    }

    @Test
    void theJobGoesOutWhenKitAndWorkAreDone() {
        assertThat(new TwinShop().worn("standard", "70.110", "70.020").job().days())
                .isEqualTo(OptionalInt.of(3));
        assertThat(new TwinShop().worn("standard", "71.000", "70.020").job().days())
                .isEmpty();
    }

    @Test
    void aKitThatIsNeverCompleteHasNoDay() {
        TwinShop shop = new TwinShop();
        shop.lastOf("P-050", 1);

        assertThat(shop.worn("standard", "70.110", "70.020").job().days()).isEmpty();
    }

    /** Pitch 76 mm − 70.550 mm, the largest finish at +0.50; the wall of hole 2 was not surveyed and may be the least. */
    @Test
    void theRowOfASizeShowsItsBridgeAndNoWallThatMayNotBeTheLeast() {
        TwinShop shop = new TwinShop();
        shop.pitch = Optional.of(mm("76"));
        shop.wall = new WallShape(
                Optional.of(mm("78")),
                Optional.of(mm("2.5")),
                Optional.empty(),
                Optional.empty(),
                Optional.of(mm("5")));
        Match match = shop.worn("standard", "70.110", "70.020");
        shop.wall = new WallShape(
                Optional.empty(), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());
        Match blind = shop.worn("standard", "70.110", "70.020");

        assertThat(row(shop, match).leastBridge().nm()).isEqualTo(5_450_000);
        // (78 − 70.550)/2 − 0.02
        assertThat(row(shop, match).leastWall().nm()).isEqualTo(3_705_000);
        assertThat(List.of(
                        Optional.ofNullable(row(shop, blind).leastWall()),
                        Optional.ofNullable(row(shop, blind).leastBridge())))
                .allMatch(Optional::isEmpty);
    }

    private static SizeRowAnswer row(TwinShop shop, Match match) {
        return SizeRowAnswer.of(
                shop.shelf().engine(),
                match.table().get(2),
                TwinShop.DAY,
                new Stencils(StencilsTest.JSON, FitTable.of(shop.shelf()), LengthUnit.MILLIMETRE));
    }
}
