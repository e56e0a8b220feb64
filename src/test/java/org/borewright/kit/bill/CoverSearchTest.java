package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Part;
import org.borewright.kit.TwinShop;
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

        assertThat(search.isPossible()).isTrue();
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

    /** The most a catalogue may hold for a six: 7 · 7 · 7 · 7 · 7 · 2 = 33 614 of {@link Box#mostWays()}, and all of it late, each box in its own time. */
    @ParameterizedTest(name = "{0} of each box, loose parts {1}")
    @CsvSource({"0, true", "1, true", "1, false", "0, false"})
    void theFullestShelfIsGoneThroughInBounds(int onHand, boolean loose) {
        boxes(5, onHand);
        shop.box("EB-6", Box.Kind.ENGINE_BOX, "P-050 6 R-050 6 PIN-1 6", "300", onHand);
        shop.boxes.forEach(box -> shop.offers.computeIfPresent(
                box.number(),
                (number, offer) ->
                        new Offer(number, offer.price(), offer.onHand(), OptionalInt.of(3 + shop.boxes.indexOf(box)))));
        if (!loose) {
            Stream.of("P-050", "R-050", "PIN-1", "CLIP-1").map(TwinShop::no).forEach(shop.offers::remove);
        }
        CoverSearch search = search(6);

        search.best();

        // six lead times of boxes and that of the loose parts are halved three times, after the longest
        assertThat(search.states()).isBetween(1, 4 * 2 * Box.mostWays());
    }

    private void boxes(int count, int onHand) {
        for (int box = 0; box < count; box++) {
            shop.box("CB-" + box, Box.Kind.CYLINDER_BOX, FILLINGS.get(box % FILLINGS.size()), "60", onHand);
        }
    }

    private CoverSearch search(int holes) {
        Part piston = shop.pistons.get(2);
        Part rings = shop.rings.get(2);
        List<Need> needs = Stream.of(piston, rings, shop.pins.get(0), shop.clips.get(0))
                .map(part -> new Need(
                        part,
                        IntStream.range(0, part.kind() == Part.Kind.CLIP ? 2 * holes : holes)
                                .mapToObj(String::valueOf)
                                .toList()))
                .toList();
        return CoverSearch.of(needs, shop.shelf(), new Offers(shop.offers));
    }
}
