package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.gasket;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.fit.Amount;
import org.borewright.fit.shape.Crown;
import org.borewright.kit.Pistons;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;

/** The engine as its maker meant it to run. */
class GasketRankingTest {

    private final TwinShop shop = new TwinShop();

    private Amount ratio(List<Piston> pistons) {
        Shelf shelf = shop.shelf();
        return GasketFit.of(shelf.engine(), Gaskets.of(gasket("GK-1", "73")), pistons, Length.ZERO)
                .highestRatio();
    }

    /** Larger pistons of the same crown squeeze more: they are not those the maker reckoned with. */
    @Test
    void theRatioAsMadeIsThatOfTheStandardPistons() {
        Amount standard = ratio(List.of(shop.pistons.get(0)));

        assertThat(GasketRanking.of(shop.shelf()).ratioAsMade()).contains(standard);
        assertThat(ratio(shop.pistons).units()).isGreaterThan(standard.units());
    }

    /** 26 mm more from pin to crown than 34 mm, which left half a millimetre to the deck: more than the chamber takes. */
    @Test
    void standardPistonsThatLeaveNoRoomTellNoRatio() {
        shop.pistons.set(0, Pistons.crowned(shop.pistons.get(0), new Crown(mm("60"), Length.ZERO, 0)));

        assertThat(GasketRanking.of(shop.shelf()).ratioAsMade()).isEmpty();
    }

    @Test
    void theFirstDesignThatHasPistonsAtStandardTells() {
        TwoMakers makers = new TwoMakers(shop, "0.25", "40");

        assertThat(GasketRanking.of(makers.shelf()).ratioAsMade()).contains(ratio(List.of(shop.pistons.get(0))));
    }

    @Test
    void whereNoStandardPistonWasEverListedTheMiddleOfTheDistanceDecides() {
        shop.pistons.remove(0);

        assertThat(GasketRanking.of(shop.shelf()).ratioAsMade()).isEqualTo(Optional.empty());
    }

    @Test
    void soItDoesWithoutAnyGasketKit() {
        shop.gaskets.clear();

        assertThat(GasketRanking.of(shop.shelf()).ratioAsMade()).isEmpty();
    }
}
