package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Bolt;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Part;
import org.borewright.kit.TwinShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How much is looked at: pistons, ring sets and pins for each hole at +0.50, and two clips. It is counted in states, which are the same on
 * every machine.
 */
class CoverSearchTest {

    /** Every choice of two and more of the four. */
    private static final List<String> FILLINGS = List.of(
            "P-050 1 R-050 1 PIN-1 1 CLIP-1 2",
            "P-050 1 R-050 1",
            "PIN-1 1 CLIP-1 2",
            "P-050 1 PIN-1 1",
            "P-050 1 CLIP-1 2",
            "R-050 1 PIN-1 1",
            "R-050 1 CLIP-1 2",
            "P-050 1 R-050 1 PIN-1 1",
            "P-050 1 R-050 1 CLIP-1 2",
            "P-050 1 PIN-1 1 CLIP-1 2",
            "R-050 1 PIN-1 1 CLIP-1 2");

    private final TwinShop shop = new TwinShop();

    /** Before each box no more numbers can be open than 1 + count of every part, and no more ways be taken than of the boxes before it. */
    @ParameterizedTest(name = "{0} holes, {1} boxes, {2} of each and of each loose part")
    @CsvSource({
        "4, 4, 20",
        "4, 11, 20",
        "4, 15, 20",
        "4, 15, 1",
        "4, 40, 20",
        "6, 4, 20",
        "6, 11, 20",
        "6, 15, 20",
        "6, 15, 1",
    })
    void thereAreNoMoreStatesThanNumbersThatCanBeOpenOrWaysToTakeTheBoxes(int holes, int boxes, int onHand) {
        boxes(boxes, onHand);
        Stream.of("P-050", "R-050", "PIN-1", "CLIP-1").forEach(number -> shop.offer(number, "20", onHand));
        CoverSearch search = search(holes);

        assertThat(IntStream.range(0, 4)).allMatch(search::isPossible);
        search.best();

        long open = (long) Math.pow(1 + holes, 3) * (1 + 2 * holes);
        long ways = 0;
        for (int box = 0; box < boxes; box++) {
            ways += Math.min(open, (long) Math.pow(1 + holes, box));
        }
        long alone = 3L * (1 + holes) + 1 + 2L * holes;
        assertThat(search.states()).isBetween(boxes, (int) (ways + alone) * runs(onHand));
    }

    /** From the shelf in one go; else once for each halving of the one lead time, and once more. */
    private static int runs(int onHand) {
        return onHand < 20 ? 2 : 1;
    }

    /** Four holes are open when the turn of the first comes, and one to four before every other; each loose part fills as many alone. */
    @ParameterizedTest(name = "{0} alike")
    @CsvSource({"1, 17", "2, 21", "40, 173"})
    void boxesOfTheSameContentsAddNoWays(int boxes, int states) {
        for (int box = 0; box < boxes; box++) {
            shop.box("CB-" + box, Box.Kind.CYLINDER_BOX, FILLINGS.get(0), "60", 10);
        }
        CoverSearch search = search(4);

        assertThat(search.best().picks()).hasSize(1);
        assertThat(search.states()).isEqualTo(states);
    }

    /** Pins and clips lie in no box with anything else: they are filled once, whatever is taken of the boxes. */
    @ParameterizedTest(name = "{0} alike")
    @CsvSource({"1, 11", "2, 15", "40, 167"})
    void whatNoBoxSharesIsFilledByItself(int boxes, int states) {
        for (int box = 0; box < boxes; box++) {
            shop.box("CB-" + box, Box.Kind.CYLINDER_BOX, FILLINGS.get(1), "60", 10);
        }
        CoverSearch search = search(4);

        assertThat(search.best().picks()).hasSize(3);
        assertThat(search.states()).isEqualTo(states);
    }

    /** All lies loose on the shelf, and each box holds a bolt too many: before every box all is still open, and each loose part fills all. */
    @ParameterizedTest(name = "{0} boxes")
    @CsvSource({"1, 5", "5, 9", "11, 15"})
    void whatLeavesMoreOverThanAKnownWayIsNotFollowed(int boxes, int states) {
        for (int box = 0; box < boxes; box++) {
            shop.box("CB-" + box, Box.Kind.CYLINDER_BOX, FILLINGS.get(box) + " BOLT-1 1", "1", 10);
        }
        CoverSearch search = search(4);

        assertThat(search.best().picks()).hasSize(4);
        assertThat(search.states()).isEqualTo(states);
    }

    /**
     * Of a great many shelves of a six that were drawn by lot, the one that asks for the most states: 7 · 13 · 15 · 4 · 8 = 43 680 ways of the
     * {@link Box#mostWays()} that a catalogue may have, each box late in its own time.
     */
    @Test
    void theHardestShelfKnownStaysFarWithinItsBound() {
        Stream.of("P-050", "R-050", "PIN-1", "CLIP-1", "GK-1", "BOLT-1")
                .map(TwinShop::no)
                .forEach(shop.offers::remove);
        late("CB-1", "P-050 1 PIN-1 1 CLIP-1 2", 3, 3);
        late("CB-2", "GK-1 1 CLIP-1 1", 3, 5);
        late("CB-3", "PIN-1 1 BOLT-1 1", 2, 0);
        late("CB-4", "P-050 2 R-050 2", 2, 5);
        late("CB-5", "PIN-1 2 R-050 1 BOLT-1 2 CLIP-1 3", 0, 5);
        late("GP-5", "GK-1 5", 3, 7);
        shop.offers.put(
                TwinShop.no("P-050"), new Offer(TwinShop.no("P-050"), TwinShop.money("5"), 8, OptionalInt.of(9)));
        List<Need> needs = new ArrayList<>(needs(6));
        needs.add(new Need(shop.gaskets.get(0), List.of(Need.ENGINE)));
        needs.add(new Need(new Bolt(TwinShop.no("BOLT-1")), Collections.nCopies(14, Need.ENGINE)));
        CoverSearch search = CoverSearch.of(needs, shop.shelf(), new Offers(shop.offers));

        search.best();

        assertThat(search.states()).isBetween(5_000, 10_000);
    }

    private void late(String number, String contents, int onHand, int leadDays) {
        shop.box(number, Box.Kind.CYLINDER_BOX, contents, "60", onHand);
        shop.offers.computeIfPresent(
                TwinShop.no(number), (same, offer) -> new Offer(same, offer.price(), onHand, OptionalInt.of(leadDays)));
    }

    private void boxes(int count, int onHand) {
        for (int box = 0; box < count; box++) {
            shop.box("CB-" + box, Box.Kind.CYLINDER_BOX, FILLINGS.get(box % FILLINGS.size()), "60", onHand);
        }
    }

    private CoverSearch search(int holes) {
        return CoverSearch.of(needs(holes), shop.shelf(), new Offers(shop.offers));
    }

    private List<Need> needs(int holes) {
        return Stream.of(shop.pistons.get(2), shop.rings.get(2), shop.pins.get(0), shop.clips.get(0))
                .map(part -> new Need(
                        part, Collections.nCopies(part.kind() == Part.Kind.CLIP ? 2 * holes : holes, Need.ENGINE)))
                .toList();
    }
}
