package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.catalog.Offers;
import org.borewright.catalog.Shelf;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.request.Condition;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The twin of which nothing is measured: its ways begin with new rings, at 134.00 with their work, and end before the sleeve with +0.50. */
class EstimateSentenceTest {

    private static final EstimateAnswer.StampAnswer STAMP =
            new EstimateAnswer.StampAnswer("STD", "standard", "the size of this name");

    /** A sum that leaves out what is short would be too low. */
    @ParameterizedTest(name = "{0} ring sets left of two")
    @CsvSource({
        "2, 'Rings only would come to 134.00 EUR, out on 2026-03-03.'",
        "1, 'Rings only is short of parts that cannot be had, and has no total.'"
    })
    void aWayThatIsShortHasNoTotal(int rings, String says) {
        TwinShop shop = new TwinShop();
        shop.lastOf("R-STD", rings);
        Shelf shelf = shop.shelf();
        Estimate estimate = Estimate.of(
                FitTable.of(shelf),
                new KitFinder(shelf, new Offers(shop.offers)),
                shop.request(Condition.WORN, "standard", TwinShop.surveys("-", "-")));

        assertThat(EstimateSentence.of(STAMP, estimate, TwinShop.DAY, LengthUnit.MILLIMETRE))
                .endsWith(
                        "what the holes read decides. " + says
                                + " Rebore to +0.50 would come to 326.00 EUR, out on 2026-03-05. What lies between them stands in the list of ways.");
    }
}
