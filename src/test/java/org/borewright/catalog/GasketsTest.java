package org.borewright.catalog;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.GasketShape;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A kit of 1.0 to 1.1 mm under the head and 0.5 mm under the barrel, and loose gaskets beside it. */
class GasketsTest {

    private final TwinShop shop = new TwinShop();

    @BeforeEach
    void putLooseGasketsOnTheShelf() {
        shop.headGaskets.add(new HeadGasket(no("HG-1"), limits("74.0", "74.2"), limits("1.3", "1.4"), mm("0.6"), 2));
        shop.baseGaskets.add(new BaseGasket(no("BG-1"), limits("0.8", "0.9"), 1));
        shop.baseGaskets.add(new BaseGasket(no("BG-2"), limits("0.3", "0.4"), 1));
    }

    @Test
    void everyKitGoesAsItComesAndWithEachLooseGasketInPlaceOfItsOwn() {
        assertThat(sets())
                .isEqualTo("GK-1; GK-1 with BG-1; GK-1 with BG-2; "
                        + "GK-1 with HG-1; GK-1 with HG-1 with BG-1; GK-1 with HG-1 with BG-2");
    }

    @Test
    void whereAKitHoldsNoBaseGasketThereIsNoJointForOne() {
        GasketKit kit = shop.gaskets.get(0);
        shop.gaskets.set(0, new GasketKit(kit.number(), over(kit.shape(), Limits.exactly(Length.ZERO)), 2));

        assertThat(sets()).isEqualTo("GK-1; GK-1 with HG-1");
    }

    @Test
    void whatIsLooseStandsInThePlaceOfItsOwnAlone() {
        GasketShape own = shop.gaskets.get(0).shape();

        assertThat(Gaskets.of(shop.shelf().parts()))
                .extracting(Gaskets::shape)
                .contains(
                        own,
                        over(own, limits("0.8", "0.9")),
                        new GasketShape(limits("74.0", "74.2"), limits("1.3", "1.4"), own.baseThickness(), mm("0.6")));
    }

    /** What another needs and more: never with another kit, or with another gasket in the same place. */
    @Test
    void oneSetNeedsMoreThanAnotherWhereItHasAllThatAndMore() {
        shop.gaskets.add(TwinShop.gasket("GK-2", "73"));
        List<Gaskets> sets = Gaskets.of(shop.shelf().parts());

        assertThat(sets.stream()
                        .filter(set -> set.kit().number().equals(no("GK-1")))
                        .flatMap(set -> sets.stream()
                                .filter(set::needMoreThan)
                                .map(less -> set.words() + " > " + less.words())))
                .containsExactlyInAnyOrder(
                        "GK-1 with BG-1 > GK-1",
                        "GK-1 with BG-2 > GK-1",
                        "GK-1 with HG-1 > GK-1",
                        "GK-1 with HG-1 with BG-1 > GK-1",
                        "GK-1 with HG-1 with BG-1 > GK-1 with HG-1",
                        "GK-1 with HG-1 with BG-1 > GK-1 with BG-1",
                        "GK-1 with HG-1 with BG-2 > GK-1",
                        "GK-1 with HG-1 with BG-2 > GK-1 with HG-1",
                        "GK-1 with HG-1 with BG-2 > GK-1 with BG-2");
    }

    /** Middle against middle: 0.85 and 0.35 against 0.50 mm; half a nanometre goes up. */
    @ParameterizedTest
    @CsvSource({"0.8, 0.9, 0.350", "0.3, 0.4, -0.150", "0.5, 0.5, 0", "0.5, 0.500001, 0.000001"})
    void aBaseGasketIsThickerByTheDifferenceOfTheMiddles(String least, String greatest, Length thicker) {
        GasketKit kit = shop.gaskets.get(0);
        shop.baseGaskets.set(0, new BaseGasket(no("BG-1"), limits(least, greatest), 1));

        assertThat(Gaskets.of(shop.shelf().parts()).get(1).baseThickerThan(kit)).isEqualTo(thicker);
    }

    @ParameterizedTest
    @CsvSource({"TWO, BG-1, 0.350", "TWO, BG-2, -0.150", "TWO, , ", "FOUR, BG-1, "})
    void thePortsOfATwoStrokeStandOnTheBaseGasket(Strokes strokes, String base, Length higher) {
        shop.strokes = strokes;
        Shelf shelf = shop.shelf();
        Gaskets set = Gaskets.of(shelf.parts()).stream()
                .filter(each -> each.head().isEmpty())
                .filter(each ->
                        each.base().map(gasket -> gasket.number().text()).equals(Optional.ofNullable(base)))
                .findFirst()
                .orElseThrow();

        assertThat(shelf.portsHigher(set)).isEqualTo(Optional.ofNullable(higher));
    }

    private String sets() {
        return Gaskets.of(shop.shelf().parts()).stream().map(Gaskets::words).collect(joining("; "));
    }

    private static GasketShape over(GasketShape shape, Limits base) {
        return new GasketShape(shape.opening(), shape.headThickness(), base, shape.margin());
    }

    private static Limits limits(String least, String greatest) {
        return new Limits(mm(least), mm(greatest));
    }
}
