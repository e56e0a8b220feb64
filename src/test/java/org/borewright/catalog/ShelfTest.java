package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.kit.TwinShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest
    @CsvSource({"NEVER_MADE, false", "DISCONTINUED, true"})
    void aSizeWasMadeUnlessNoneOfItsPistonsEverWas(Withdrawal.State state, boolean made) {
        assertThat(shop.shelf().wasMade(size())).isTrue();

        shop.withdraw("P-075", state);

        assertThat(shop.shelf().wasMade(size())).isEqualTo(made);
    }

    @Test
    void aSizeWithoutAnyPistonWasNeverMade() {
        shop.pistons.removeIf(piston -> piston.size().equals("+0.75"));

        assertThat(shop.shelf().wasMade(size())).isFalse();
    }

    /** What took the place of a number is made otherwise: whoever has the former does not have it, unless he has both. */
    @ParameterizedTest(name = "{0}: withdrawn are {1}")
    @CsvSource({
        "'',            P-025 P-050 P-100",
        "P-050,         P-025 P-075 P-100",
        "P-050 P-075,   P-025 P-100",
        "P-025,         P-050 P-075 P-100",
        "P-025 P-050,   P-075 P-100",
        "P-100,         P-025 P-050",
        "P-STD,         P-025 P-050 P-100",
    })
    void whatIsThereIsThereAndNotWhatTookItsPlace(String had, String withdrawn) {
        shop.replace("P-025", "P-050");
        shop.replace("P-050", "P-075");
        shop.withdraw("P-100", Withdrawal.State.NEVER_MADE);

        Shelf theirs = shop.shelf()
                .having(Stream.of(had.split(" "))
                        .filter(number -> !number.isEmpty())
                        .map(TwinShop::no)
                        .collect(Collectors.toSet()));

        assertThat(theirs.withdrawals().keySet()).extracting(PartNumber::text).containsExactly(withdrawn.split(" "));
    }

    private Size size() {
        return shop.shelf().size("+0.75").orElseThrow();
    }
}
