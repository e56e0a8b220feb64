package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.HeadGasket;
import org.borewright.catalog.Offers;
import org.borewright.fit.Certainty;
import org.borewright.fit.shape.GasketShape;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which kit the twin is offered at +0.50 where several would do, and what of it is bought. */
class PreferredKitTest {

    private final TwinShop shop = new TwinShop();

    /** GK-1 for 30 is sold loose, GK-2 for 99 in a box of one or a pack of two; what is not on the shelf comes in ten days. */
    @ParameterizedTest(name = "{0} GK-1, {3} of a {1} of {2} GK-2: {4}, {5} left over, {6} days")
    @CsvSource({
        // complete now beats the least left over
        "0, PACK, 2, 1, GK-2, 1, 0",
        // both now, both later: the least left over
        "1, PACK, 2, 1, GK-1, 0, 0",
        "0, PACK, 2, 0, GK-1, 0, 10",
        // as much left over: box order beats the price
        "1, ENGINE_BOX, 1, 1, GK-2, 0, 0",
        "1, ENGINE_BOX, 1, 0, GK-1, 0, 0",
    })
    void completeNowThenTheLeastLeftOverThenBoxOrder(
            int onHand, Box.Kind kind, int holds, int boxes, String taken, int leftOver, int leadDays) {
        shop.gaskets.add(TwinShop.gasket("GK-2", "73"));
        shop.offer("GK-1", "30", onHand);
        shop.box("GB-2", kind, "GK-2 " + holds, "99", boxes);

        Kit kit = finder().best(choice(), holes(), choice().gaskets(), Length.ZERO)
                .orElseThrow();

        assertThat(kit.gaskets().kit().number()).isEqualTo(TwinShop.no(taken));
        assertThat(kit.leftOver()).isEqualTo(leftOver);
        assertThat(kit.leadDays()).isEqualTo(leadDays);
    }

    /** Six bolts are needed. GK-1 as it comes is waited for, GK-2 with a loose head gasket lies on the shelf. */
    @ParameterizedTest(name = "{0} bolts to be had: {1}")
    @CsvSource({"6, GK-1", "5, GK-1"})
    void nobodyTakesALooseGasketToSaveAWaitThoughTheKitBeShort(int bolts, String taken) {
        GasketShape own = shop.gaskets.get(0).shape();
        shop.gaskets.add(TwinShop.gasket("GK-2", "73"));
        shop.headGaskets.add(new HeadGasket(TwinShop.no("HG-1"), own.opening(), own.headThickness(), own.margin(), 2));
        shop.offer("GK-1", "30", 0);
        shop.offer("GK-2", "30", 1);
        shop.offer("HG-1", "10", 1);
        shop.lastOf("BOLT-1", bolts);
        List<GasketFit> ranked = Stream.of("GK-1", "GK-2 with HG-1")
                .map(words -> choice().gaskets().stream()
                        .filter(fit -> fit.gaskets().words().equals(words))
                        .findFirst()
                        .orElseThrow())
                .toList();

        assertThat(finder().best(choice(), holes(), ranked, Length.ZERO)
                        .map(Kit::gaskets)
                        .map(Gaskets::words))
                .contains(taken);
    }

    /** An owner brings pistons of +0.50: for that size no piston is bought, for every other it is. */
    @Test
    void whoBringsPistonsBuysAllButThem() {
        KitFinder kits = finder().withOwn(choice());
        Choice other = FitTable.of(shop.shelf()).at(shop.sizes.get(3)).get(0);
        List<HoleAtSize> larger = holes(3);

        assertThat(words(kits.best(choice(), holes(), choice().gaskets(), Length.ZERO)))
                .isEqualTo("2 R-050 + 2 PIN-1 + 4 CLIP-1 + 1 GK-1 + 6 BOLT-1");
        assertThat(words(kits.best(other, larger, other.gaskets(), Length.ZERO)))
                .isEqualTo("2 P-075 + 2 R-075 + 2 PIN-1 + 4 CLIP-1 + 1 GK-1 + 6 BOLT-1");
    }

    @Test
    void ringsAloneAreBoughtWithClipsGasketsAndBolts() {
        assertThat(words(finder().ofRings(choice().outfits().get(0), holes(), choice().gaskets(), Length.ZERO)))
                .isEqualTo("2 R-050 + 4 CLIP-1 + 1 GK-1 + 6 BOLT-1");
    }

    @Test
    void noRingsAreSoldWhereNoGasketFits() {
        assertThat(finder().ofRings(choice().outfits().get(0), holes(), List.of(), Length.ZERO))
                .isEmpty();
    }

    private static String words(Optional<Kit> kit) {
        return kit.stream()
                .flatMap(found -> found.lines().stream())
                .map(line -> line.quantity() + " " + line.box().number())
                .collect(Collectors.joining(" + "));
    }

    private KitFinder finder() {
        return new KitFinder(shop.shelf(), new Offers(shop.offers));
    }

    private Choice choice() {
        return FitTable.of(shop.shelf()).at(shop.sizes.get(2)).get(0);
    }

    private List<HoleAtSize> holes() {
        return holes(2);
    }

    private List<HoleAtSize> holes(int size) {
        return Stream.of("1", "2")
                .map(cylinder -> new HoleAtSize(
                        cylinder, Work.REBORE, Certainty.CERTAIN, shop.pistons.get(size), Optional.empty()))
                .toList();
    }
}
