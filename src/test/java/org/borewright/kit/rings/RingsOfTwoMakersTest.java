package org.borewright.kit.rings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.shape.Crown;
import org.borewright.kit.Pistons;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A twin of +0.25 for which two makers have pistons and rings, R-025 for 20 and R2-025 for as much. */
class RingsOfTwoMakersTest {

    private final TwinShop shop = new TwinShop();
    private final TwoMakers makers = new TwoMakers(shop, "0.250", "40");

    @ParameterizedTest(name = "pistons of {0}: {1}")
    @CsvSource({"DESIGN-1, R-025", "DESIGN-2, R2-025"})
    void theRingsAreThoseOfThePistonsThatAreIn(String code, String rings) {
        Optional<PistonDesign> known = makers.shelf().parts().designs().stream()
                .filter(made -> made.code().equals(code))
                .findFirst();

        assertThat(number(makers.ask(request(known)).ringsOnly())).isEqualTo(rings);
    }

    /** Where nobody knows the pistons: what can be had complete, then at once, then for the better price; else the first. */
    @ParameterizedTest(name = "the second''s for {0}, {1} on hand, more to be had {2}; never made {3}: {4}")
    @CsvSource({
        "20, 10, true, '', R-025",
        "19, 10, true, '', R2-025",
        "19, 0, true, '', R-025",
        "19, 0, false, '', R-025",
        "21, 10, true, R-025, R2-025",
        "19, 10, true, R2-025, R-025",
        "20, 10, true, R-025 R2-025, -",
    })
    void thoseBestToBeHadAreSupposed(String price, int onHand, boolean more, String gone, String rings) {
        shop.offer("R2-025", price, onHand);
        if (!more) {
            shop.lastOf("R2-025", onHand);
        }
        if (!gone.isEmpty()) {
            List.of(gone.split(" ")).forEach(number -> shop.withdraw(number, Withdrawal.State.NEVER_MADE));
        }
        Shelf shelf = makers.shelf();
        MatchRequest request = request(Optional.empty());

        assertThat(number(RingsOnly.supposing(
                        FitTable.of(shelf),
                        new KitFinder(shelf, new Offers(shop.offers)),
                        request,
                        makers.ask(request).surveyed())))
                .isEqualTo(rings);
    }

    /** The second maker's crown stands 2 mm higher, so that no gasket leaves it room: rings that would cost less are of no use. */
    @Test
    void ringsOfPistonsThatNoGasketLeavesRoomAreSupposedLast() {
        shop.offer("R2-025", "5", 10);
        shop.pistons.set(5, Pistons.crowned(shop.pistons.get(5), new Crown(mm("36"), Length.ZERO, 0)));
        Shelf shelf = makers.shelf();
        MatchRequest request = request(Optional.empty());
        KitFinder kits = new KitFinder(shelf, new Offers(shop.offers));
        List<Hole> holes = makers.ask(request).surveyed();

        assertThat(number(RingsOnly.supposing(FitTable.of(shelf), kits, request, holes)))
                .isEqualTo("R-025");
    }

    private static String number(Optional<RingsOnly> rings) {
        return rings.map(found -> found.rings().map(set -> set.number().text()).orElse("no set"))
                .orElse("-");
    }

    private MatchRequest request(Optional<PistonDesign> design) {
        MatchRequest plain = shop.request(Condition.WORN, "+0.25", TwinShop.surveys("70.260", "70.260"));
        AsFound found = Requests.pistonOf(design);
        return Requests.seen(plain, Collections.nCopies(2, found));
    }
}
