package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which engines have barrels that go from one to the other. */
class EngineTest {

    @ParameterizedTest(name = "{0}, one casting {1}: {2}")
    @CsvSource({
        "BLOCK, false, false",
        "DRY_SLEEVE, false, false",
        "WET_LINER, false, false",
        "IRON_BARREL, false, true",
        "IRON_BARREL, true, false",
        "SLEEVED_ALUMINIUM_BARREL, false, true",
        "PLATED, false, true",
        "PLATED, true, false",
        "BARE_ALUMINIUM_SILICON, false, false",
    })
    void barrelsOfOneCastingComeOffTogether(Construction construction, boolean oneCasting, boolean separate) {
        TwinShop shop = new TwinShop();
        shop.construction = construction;
        shop.pitch = oneCasting ? Optional.of(Length.ofNanometres(84_000_000)) : Optional.empty();

        assertThat(shop.shelf().engine().hasSeparateBarrels()).isEqualTo(separate);
    }
}
