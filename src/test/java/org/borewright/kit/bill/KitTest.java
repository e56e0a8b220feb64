package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.borewright.catalog.Bolt;
import org.borewright.catalog.Box;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.PartNumber;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Outfit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a bill says of itself: whether all of it is there, how far from one engine box it is, how much is left over. */
class KitTest {

    private static final TwinShop SHOP = new TwinShop();

    @ParameterizedTest(name = "boxes in {0} days, {1} bolts short: {2}")
    @CsvSource({
        "0 0 0, 0, true",
        "0 0 10, 0, false",
        "10 0 0, 0, false",
        "0 0 0, 1, false",
        "0 0 10, 1, false",
        "'', 1, false",
    })
    void aKitIsCompleteNowWhenNothingIsMissingAndNothingIsWaitedFor(String days, int bolts, boolean now) {
        List<Kit.Line> lines = words(days)
                .map(each -> line(Box.Kind.LOOSE, 1, Integer.parseInt(each)))
                .toList();
        List<Kit.Missing> missing = bolts == 0
                ? List.of()
                : List.of(new Kit.Missing(new Bolt(TwinShop.no("BOLT-1")), bolts, 0, Optional.empty()));

        assertThat(kit(lines, List.of(), missing).isCompleteNow()).isEqualTo(now);
    }

    /** An engine box counts nothing, a cylinder box 1, a pack 2, a loose part 3. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "1 ENGINE_BOX, 0",
        "2 CYLINDER_BOX, 2",
        "1 CYLINDER_BOX 4 LOOSE, 13",
        "1 ENGINE_BOX 3 PACK, 6",
        "1 ENGINE_BOX 2 CYLINDER_BOX 1 PACK 6 LOOSE, 22",
    })
    void everyBoxCountsByItsPlaceInBoxOrder(String boxes, int boxOrder) {
        List<String> words = Arrays.asList(boxes.split(" ", -1));
        List<Kit.Line> lines = Stream.iterate(0, i -> i < words.size(), i -> i + 2)
                .map(i -> line(Box.Kind.valueOf(words.get(i + 1)), Integer.parseInt(words.get(i)), 0))
                .toList();

        assertThat(kit(lines, List.of(), List.of()).boxOrder()).isEqualTo(boxOrder);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"'', 0", "2, 2", "1 6, 7", "2 3 4, 9"})
    void whatIsLeftOverIsCountedInParts(String counts, int leftOver) {
        List<Kit.Surplus> surplus = words(counts)
                .map(count -> new Kit.Surplus(TwinShop.no("N-" + count), Integer.parseInt(count)))
                .toList();

        assertThat(kit(List.of(), surplus, List.of()).leftOver()).isEqualTo(leftOver);
    }

    private static Stream<String> words(String text) {
        return Stream.of(text.split(" ", -1)).filter(word -> !word.isEmpty());
    }

    private static Kit.Line line(Box.Kind kind, int quantity, int leadDays) {
        TreeMap<PartNumber, Integer> contents = new TreeMap<>();
        contents.put(TwinShop.no("PIN-1"), 1);
        return new Kit.Line(
                new Box(TwinShop.no("BOX-1"), kind, contents), quantity, List.of(), TwinShop.money("9"), leadDays);
    }

    private static Kit kit(List<Kit.Line> lines, List<Kit.Surplus> surplus, List<Kit.Missing> missing) {
        Outfit outfit = new Outfit(SHOP.rings.get(2), SHOP.pins.get(0), Optional.empty(), Optional.empty(), List.of());
        return new Kit(outfit, Gaskets.of(SHOP.gaskets.get(0)), List.of(), lines, surplus, missing, Optional.empty());
    }
}
