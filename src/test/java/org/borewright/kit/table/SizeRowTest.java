package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.borewright.catalog.Withdrawal;
import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.kit.request.Condition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which row of a table is taken. */
class SizeRowTest {

    private final TwinShop shop = new TwinShop();

    /**
     * A hole of 70.050 in a twin of 70.000 mm; the first maker's pistons of +0.25 finish at 70.250 and cost 40, the second's finish and cost
     * as told. By the bar a hole is certain up to (finish + 69.910)/2 − 0.005 28.
     */
    @ParameterizedTest(name = "the second''s at {0} for {1}, {2} on hand, more to be had {3}; hole {4}: {5}")
    @CsvSource({
        // less metal before a better price and an earlier day
        "0.240, 90, 10, true, 70.050, P2-025",
        "0.240, 90, 0, true, 70.050, P2-025",
        "0.260, 10, 10, true, 70.050, P-025",
        // what cannot be had is no choice, nor what does not clean up: 70.069 719 is the last for 70.240
        "0.240, 10, 1, false, 70.050, P-025",
        "0.240, 10, 10, true, 70.069719, P2-025",
        "0.240, 10, 10, true, 70.069720, P-025",
        // the same metal: the sooner, then the cheaper
        "0.250, 10, 0, true, 70.050, P-025",
        "0.250, 39, 10, true, 70.050, P2-025",
        "0.250, 41, 10, true, 70.050, P-025",
        // neither cleans up
        "0.240, 10, 10, true, 70.080, -",
    })
    void ofTwoMakersTheOneWhoseKitIsCompleteAndThatTakesLessMetal(
            String oversize, String price, int onHand, boolean more, String diameter, String piston) {
        TwoMakers makers = new TwoMakers(shop, oversize, price);
        if (more) {
            shop.offer("P2-025", price, onHand);
        } else {
            shop.lastOf("P2-025", onHand);
        }

        Match match = makers.ask(shop.request(Condition.WORN, "standard", TwinShop.surveys(diameter, "70.010")));

        assertThat(SizeRow.bestAt(shop.sizes.get(1), match.table())
                        .map(row -> row.holes().get(0).piston().number().text())
                        .orElse("-"))
                .isEqualTo(piston);
    }

    /** Holes that may clean up at +0.75 or at +1.00 and are certain at neither. */
    @ParameterizedTest(name = "{0}, withdrawn {1}: {2}")
    @CsvSource({
        "70.480, '', +0.75",
        // nothing but the wear against it comes before want of a part
        "70.480, R-075, +1.00",
        "70.480, R-075 R-100, +0.75",
        "70.480, R-100, +0.75",
        // a hole that is certain, or excluded, is not possible
        "70.710, '', +1.00",
        "71.000, '', -",
        "70.440, R-075, +0.50",
    })
    void theSmallestPossibleSizeIsOneThatIsOpenFirst(String diameter, String withdrawn, String size) {
        Arrays.stream(withdrawn.split(" "))
                .filter(number -> !number.isEmpty())
                .forEach(number -> shop.withdraw(number, Withdrawal.State.NEVER_MADE));

        assertThat(SizeRow.smallestPossible(
                                shop.worn("standard", diameter, "70.010").table())
                        .map(row -> row.size().label())
                        .orElse("-"))
                .isEqualTo(size);
    }
}
