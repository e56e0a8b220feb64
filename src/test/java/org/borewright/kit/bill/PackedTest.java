package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offer;
import org.borewright.kit.TwinShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a box is good for where pistons, rings and pins at +0.50 are needed, and when its turn comes. */
class PackedTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "{0}: of use {1}, for several {2}")
    @CsvSource({
        "P-050 1 R-050 1 PIN-1 1, true, true",
        "P-050 2 R-050 2, true, true",
        "R-050 1 CLIP-1 2 PIN-1 1, true, true",
        "P-050 4, true, false",
        "PIN-1 1 CLIP-1 2, true, false",
        "CLIP-1 10, false, false",
        "P-025 1 R-025 1, false, false",
    })
    void aBoxServesTheNeedsThatItHoldsPartsOf(String contents, boolean ofUse, boolean several) {
        Packed packed = packed("BOX-1", Box.Kind.CYLINDER_BOX, contents);

        assertThat(packed.isOfUse()).isEqualTo(ofUse);
        assertThat(packed.servesSeveral()).isEqualTo(several);
    }

    @Test
    void whatServesSeveralIsTriedFirstThenInBoxOrderThenByNumber() {
        List<Packed> inOrder = List.of(
                packed("EB-2", Box.Kind.ENGINE_BOX, "P-050 2 R-050 2"),
                packed("CB-1", Box.Kind.CYLINDER_BOX, "P-050 1 R-050 1"),
                packed("CB-2", Box.Kind.CYLINDER_BOX, "P-050 1 PIN-1 1"),
                packed("EB-1", Box.Kind.ENGINE_BOX, "P-050 2"),
                packed("A-PACK", Box.Kind.PACK, "PIN-1 4"),
                packed("B-PACK", Box.Kind.PACK, "P-050 4"));

        assertThat(Stream.of(5, 3, 1, 4, 0, 2).map(inOrder::get).sorted(Packed.ORDER))
                .containsExactlyElementsOf(inOrder);
    }

    private Packed packed(String number, Box.Kind kind, String contents) {
        shop.box(number, kind, contents, "9", 1);
        return Packed.of(
                shop.boxes.get(shop.boxes.size() - 1),
                new Offer(TwinShop.no(number), TwinShop.money("9"), 1, OptionalInt.empty()),
                Stream.of(shop.pistons.get(2), shop.rings.get(2), shop.pins.get(0))
                        .map(part -> new Need(part, List.of("1", "2")))
                        .toList());
    }
}
