package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked of an engine as a whole: its holes, what they displace, and which engines have barrels that go from one to the other. */
class EngineTest {

    private final Engine twin = new TwinShop().shelf().engine();

    @Test
    void itIsKnownByItsCodeAndItsHolesByTheirNames() {
        assertThat(twin.code()).isEqualTo("TWIN-1");
        assertThat(twin.cylinder("2")).contains(twin.cylinders().get(1));
        assertThat(twin.cylinder("3")).isEmpty();
    }

    /** Two holes of 70.5 mm and a stroke of 80 mm: 2 · π/4 · 7.05² · 8 cm³. */
    @Test
    void allHolesDisplaceTogether() {
        assertThat(twin.displacement(TwinShop.mm("70.5"))).isCloseTo(624.580_035, within(5e-7));
    }

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
