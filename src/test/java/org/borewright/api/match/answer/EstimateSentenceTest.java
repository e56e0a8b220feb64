package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Shelf;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.ladder.Branch;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.ladder.LargestHole;
import org.borewright.kit.ladder.Way;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;
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

    /** Whoever reads 70.074 is within 70.074 7 and whoever reads 70.075 is not; a hole that may be no smaller is no smaller than told either. */
    @ParameterizedTest(name = "{0}, {1}, {2} mm in {3}")
    @CsvSource(
            nullValues = "-",
            value = {
                "-, 70.074699, 70.144698, MILLIMETRE, 'certain if no hole reads more than 70.074 mm, possible up to 70.144 mm'",
                "-, 70.074699, 70.144698, INCH, 'certain if no hole reads more than 2.7588 in, possible up to 2.7616 in'",
                "-, 70.074, -, MILLIMETRE, certain if no hole reads more than 70.074 mm",
                "-, -, 70.144, MILLIMETRE, possible up to 70.144 mm",
                "70.000001, 70.074, -, MILLIMETRE, certain if no hole reads less than 70.001 or more than 70.074 mm",
                "70.000, 70.074, -, MILLIMETRE, certain if no hole reads less than 70.000 or more than 70.074 mm",
            })
    void theReadingThatDecidesIsToldAsAGaugeShowsItAndOnTheSafeSide(
            String from, String certain, String possible, LengthUnit unit, String when) {
        TwinShop shop = new TwinShop();
        Shelf shelf = shop.shelf();
        Branch rebore = Estimate.of(
                        FitTable.of(shelf),
                        new KitFinder(shelf, new Offers(shop.offers)),
                        shop.request(Condition.WORN, "standard", TwinShop.surveys("-", "-")))
                .branches()
                .stream()
                .filter(branch -> branch.rung().way() == Way.REBORE)
                .findFirst()
                .orElseThrow();
        LargestHole largest = new LargestHole(length(from), length(certain), length(possible));

        assertThat(EstimateSentence.of(
                        new Branch(rebore.rung(), rebore.job(), rebore.left(), Optional.of(largest)), unit))
                .isEqualTo("Rebore to +0.25 is " + when + ".");
    }

    private static Optional<Length> length(@Nullable String millimetres) {
        return Optional.ofNullable(millimetres).map(TwinShop::mm);
    }
}
