package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Withdrawal;
import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which boxes a shop would take for the twin at +0.50: two pistons, ring sets and pins, four clips, a gasket kit and six bolts. */
class KitCoverTest {

    @ParameterizedTest(name = "engine boxes {0}, cylinder boxes {1}, loose pistons {2}: {3}")
    @CsvSource({
        // all there: the engine box before two cylinder boxes before loose parts
        "1, 2, 2, 1 EB-050 + 1 GK-1 + 6 BOLT-1, 0",
        // complete now beats box order: no engine box on the shelf
        "0, 2, 2, 2 CB-050 + 1 GK-1 + 6 BOLT-1, 0",
        // one cylinder box and loose parts for the other hole
        "0, 1, 2, 1 CB-050 + 1 P-050 + 1 R-050 + 1 PIN-1 + 2 CLIP-1 + 1 GK-1 + 6 BOLT-1, 0",
        "0, 0, 2, 2 P-050 + 2 R-050 + 2 PIN-1 + 4 CLIP-1 + 1 GK-1 + 6 BOLT-1, 0",
        // nothing on the shelf: later, in box order again
        "0, 0, 1, 1 EB-050 + 1 GK-1 + 6 BOLT-1, 10",
    })
    void completeNowBeatsBoxOrderAndBoxOrderBeatsPrice(
            int engineBoxes, int cylinderBoxes, int pistons, String lines, int leadDays) {
        TwinShop shop = new TwinShop();
        shop.box("EB-050", Box.Kind.ENGINE_BOX, "P-050 2 R-050 2 PIN-1 2 CLIP-1 4", "500", engineBoxes);
        shop.box("CB-050", Box.Kind.CYLINDER_BOX, "P-050 1 R-050 1 PIN-1 1 CLIP-1 2", "62", cylinderBoxes);
        shop.offer("P-050", "40", pistons);

        Kit kit = kit(shop);

        assertThat(lines(kit)).isEqualTo(lines);
        assertThat(kit.leadDays()).isEqualTo(leadDays);
        assertThat(kit.surplus()).isEmpty();
    }

    /** Three packs of two hold the six bolts; of packs that come to the same the first number is taken while it lasts. */
    @ParameterizedTest(name = "BA-2 at {0}, {2} there, BB-2 at {1}: {3}")
    @CsvSource({
        "9, 8, 3, 3 BB-2",
        "8, 9, 3, 3 BA-2",
        "8, 9, 1, 1 BA-2 + 2 BB-2",
        "9, 9, 3, 3 BA-2",
        "9, 9, 2, 2 BA-2 + 1 BB-2",
    })
    void ofLikePacksTheCheaperIsTakenAndWhereTheyCostTheSameTheFirst(
            String first, String second, int onHand, String packs) {
        TwinShop shop = new TwinShop();
        shop.box("BA-2", Box.Kind.PACK, "BOLT-1 2", first, onHand);
        shop.box("BB-2", Box.Kind.PACK, "BOLT-1 2", second, 5);

        assertThat(lines(kit(shop))).isEqualTo(packs + " + 2 P-050 + 2 R-050 + 2 PIN-1 + 4 CLIP-1 + 1 GK-1");
    }

    /** Pistons for 30 and rings for 40, each in a box for the engine, beside a box that holds both. */
    @ParameterizedTest(name = "both together for {0}: {1}")
    @CsvSource({"69, 1 EB-PR", "70, 1 EB-PR", "71, 1 EB-P + 1 EB-R"})
    void oneBoxIsTakenForTwoUnlessTheTwoCostLess(String both, String boxes) {
        TwinShop shop = new TwinShop();
        shop.box("EB-P", Box.Kind.ENGINE_BOX, "P-050 2", "30", 1);
        shop.box("EB-R", Box.Kind.ENGINE_BOX, "R-050 2", "40", 1);
        shop.box("EB-PR", Box.Kind.ENGINE_BOX, "P-050 2 R-050 2", both, 1);

        assertThat(lines(kit(shop))).isEqualTo(boxes + " + 2 PIN-1 + 4 CLIP-1 + 1 GK-1 + 6 BOLT-1");
    }

    /** No bolt lies on the shelf, and packs of so many come in so many days. */
    @ParameterizedTest(name = "{0}: {1} in {2} days")
    @CsvSource({
        "8:3 7:5 6:8 6:12, 1 B6-8, 8",
        "8:3 7:5, 1 B7-5, 5",
        "8:3 7:5 6:5, 1 B6-5, 5",
        "8:3 8:1, 1 B8-1, 1",
        "6:8 3:9, 1 B6-8, 8",
        "7:2 3:4 8:1, 2 B3-4, 4",
    })
    void whenAllIsLateTheLeastLeftOverComesBeforeTheEarliest(String packs, String line, int leadDays) {
        TwinShop shop = new TwinShop();
        shop.lastOf("BOLT-1", 0);
        for (String pack : packs.split(" ", -1)) {
            String[] sizeAndDays = pack.split(":", -1);
            String number = "B" + sizeAndDays[0] + "-" + sizeAndDays[1];
            shop.box(number, Box.Kind.PACK, "BOLT-1 " + sizeAndDays[0], "9", 0);
            shop.offers.computeIfPresent(
                    TwinShop.no(number),
                    (same, offer) ->
                            new Offer(same, offer.price(), 0, OptionalInt.of(Integer.parseInt(sizeAndDays[1]))));
        }

        Kit kit = kit(shop);

        assertThat(lines(kit)).startsWith(line + " + 2 P-050");
        assertThat(kit.leadDays()).isEqualTo(leadDays);
    }

    @ParameterizedTest(name = "packs of {0} for six bolts: {1}, {2} left over")
    @CsvSource({"3, 2, 0", "4, 2, 2", "5, 2, 4", "6, 1, 0", "7, 1, 1"})
    void whatSeveralPacksHoldTooManyOfIsListed(int holds, int packs, int leftOver) {
        TwinShop shop = new TwinShop();
        shop.lastOf("BOLT-1", 0);
        shop.box("BP-1", Box.Kind.PACK, "BOLT-1 " + holds, "9", 5);

        Kit kit = kit(shop);

        assertThat(lines(kit)).startsWith(packs + " BP-1");
        assertThat(kit.surplus())
                .isEqualTo(leftOver == 0 ? List.of() : List.of(new Kit.Surplus(TwinShop.no("BOLT-1"), leftOver)));
    }

    @Test
    void aPackWithClipsToSpareIsTakenWhenNoLooseClipCanBeHadAndTheSurplusIsListed() {
        TwinShop shop = new TwinShop();
        shop.lastOf("CLIP-1", 3);
        shop.box("CP-10", Box.Kind.PACK, "CLIP-1 10", "4", 5);

        Kit kit = kit(shop);

        assertThat(kit.surplus()).containsExactly(new Kit.Surplus(TwinShop.no("CLIP-1"), 6));
        assertThat(lines(kit)).contains("1 CP-10").doesNotContain("CLIP-1");
    }

    @Test
    void aBoxOfAnotherSizeIsNeverOpenedForItsPins() {
        TwinShop shop = new TwinShop();
        shop.lastOf("PIN-1", 0);
        shop.box("EB-025", Box.Kind.ENGINE_BOX, "P-025 2 R-025 2 PIN-1 2 CLIP-1 4", "120", 5);

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(kit(shop).missing()).extracting(lack -> lack.part().number()).containsExactly(TwinShop.no("PIN-1"));
    }

    @ParameterizedTest(name = "{0} with {1} on the shelf: missing {2}")
    @CsvSource({
        "DISCONTINUED, 2, ",
        "DISCONTINUED, 1, DISCONTINUED",
        "NEVER_MADE, 2, NEVER_MADE",
    })
    void withdrawnAndOutOfStockAreDifferentAnswers(Withdrawal.State state, int onHand, Withdrawal.State missing) {
        TwinShop shop = new TwinShop();
        shop.lastOf("BOLT-1", state == Withdrawal.State.NEVER_MADE ? 50 : onHand * 3);
        shop.withdraw("BOLT-1", state);

        assertThat(kit(shop).missing().stream()
                        .map(lack -> lack.withdrawn().orElseThrow())
                        .toList())
                .isEqualTo(missing == null ? List.of() : List.of(missing));
    }

    @Test
    void outOfStockForGoodIsMissingWithoutAWithdrawal() {
        TwinShop shop = new TwinShop();
        shop.lastOf("BOLT-1", 5);

        assertThat(kit(shop).missing())
                .hasSize(1)
                .allMatch(lack -> lack.withdrawn().isEmpty());
    }

    /** A bolt that is short takes nothing from the pistons and rings that lie there in one box. */
    @Test
    void whatIsShortOfOnePartIsNotShortOfThoseThatAreSoldTogether() {
        TwinShop shop = new TwinShop();
        shop.lastOf("P-050", 0);
        shop.lastOf("R-050", 0);
        shop.lastOf("BOLT-1", 5);
        shop.box("EB-PR", Box.Kind.ENGINE_BOX, "P-050 2 R-050 2", "120", 5);

        Kit kit = kit(shop);

        assertThat(kit.missing()).extracting(lack -> lack.part().number()).containsExactly(TwinShop.no("BOLT-1"));
        assertThat(lines(kit)).isEqualTo("1 EB-PR + 2 PIN-1 + 4 CLIP-1 + 1 GK-1");
    }

    /** Six bolts are needed. */
    @ParameterizedTest(name = "{0} loose and {1} packs of two")
    @CsvSource({"0, 0, 0", "1, 0, 1", "5, 0, 5", "0, 2, 4", "1, 2, 5"})
    void whatIsShortSaysWhatIsNeededAndWhatLiesOnTheShelf(int loose, int packs, int obtainable) {
        TwinShop shop = new TwinShop();
        shop.lastOf("BOLT-1", loose);
        shop.box("BOLT-2S", Box.Kind.PACK, "BOLT-1 2", "9", packs);
        shop.lastOf("BOLT-2S", packs);

        assertThat(kit(shop).missing())
                .extracting(Kit.Missing::needed, Kit.Missing::obtainable)
                .containsExactly(tuple(6, obtainable));
    }

    @Test
    void eachLineSaysForWhichHolesItIs() {
        TwinShop shop = new TwinShop();
        shop.box("CB-050", Box.Kind.CYLINDER_BOX, "P-050 1 R-050 1 PIN-1 1 CLIP-1 2", "62", 1);

        Kit kit = kit(shop);

        assertThat(kit.lines().get(0).covers())
                .extracting(Need::holes)
                .allMatch(holes -> holes.stream().allMatch("1"::equals));
        assertThat(kit.lines().stream()
                        .filter(line -> line.box().number().equals(TwinShop.no("P-050")))
                        .flatMap(line -> line.covers().stream())
                        .flatMap(need -> need.holes().stream()))
                .containsExactly("2");
    }

    @Test
    void theTotalIsEveryLineAndTheWork() {
        Match match = new TwinShop().worn("standard", "70.110", "70.020");

        // 2 × (40 + 20 + 6) + 4 × 0.50 + 30 + 6 × 2 = 176; strip 50 + bore 2 × 35 + hone 2 × 15 = 150
        assertThat(kit(new TwinShop()).total()).contains(TwinShop.money("176"));
        assertThat(match.job().total()).contains(TwinShop.money("326"));
    }

    /** A total that leaves out what is short would mislead, and so would the work alone: with the last piston of two there is none. */
    @ParameterizedTest
    @CsvSource({"2, 326", "1, "})
    void thereIsNoTotalOfAKitThatIsShort(int pistons, String total) {
        TwinShop shop = new TwinShop();
        shop.lastOf("P-050", pistons);

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.job().total()).isEqualTo(Optional.ofNullable(total).map(TwinShop::money));
        assertThat(match.job().kit().orElseThrow().total()).isPresent();
    }

    /** Strip, bore and hone take a day each, and a piston that is not on the shelf ten. */
    @ParameterizedTest(name = "{0} pistons on the shelf: {1} days")
    @CsvSource({"2, 3", "1, 13"})
    void itGoesOutWhenTheKitIsThereAndTheWorkIsDone(int pistons, int days) {
        TwinShop shop = new TwinShop();
        shop.offer("P-050", "40", pistons);

        assertThat(shop.worn("standard", "70.110", "70.020").job().days()).hasValue(days);
    }

    private static Kit kit(TwinShop shop) {
        return shop.worn("standard", "70.110", "70.020")
                .ruling()
                .row()
                .orElseThrow()
                .kit()
                .orElseThrow();
    }

    private static String lines(Kit kit) {
        return kit.lines().stream()
                .map(line -> line.quantity() + " " + line.box().number())
                .collect(Collectors.joining(" + "));
    }
}
