package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

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

    private Size size() {
        return shop.shelf().size("+0.75").orElseThrow();
    }
}
