package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;

/** What is found in a catalogue, by code, by number and by name. */
class CatalogueTest {

    private final TwinShop shop = new TwinShop();

    private final Catalogue catalogue = Catalogue.of(
            new Revision("test-fit", "test-offers"),
            Instant.EPOCH,
            List.of(shop.shelf()),
            Map.of(),
            new Offers(shop.offers));

    private static Gauge named(Optional<String> name) {
        Gauge usual = Gauge.Kind.BORE_GAUGE.usual();
        return new Gauge(
                usual.kind(),
                name,
                usual.calibration(),
                Optional.empty(),
                Length.ZERO,
                Optional.empty(),
                usual.statedBy());
    }

    @Test
    void anEngineIsFoundByItsCode() {
        assertThat(catalogue.shelf("TWIN-1").map(Shelf::engine))
                .contains(shop.shelf().engine());
        assertThat(catalogue.shelf("TWIN-2")).isEmpty();
        assertThat(catalogue.engines()).containsExactly(shop.shelf().engine());
    }

    @Test
    void anOfferIsFoundByItsNumber() {
        assertThat(catalogue.offers().of(TwinShop.no("P-050"))).contains(shop.offers.get(TwinShop.no("P-050")));
        assertThat(catalogue.offers().of(TwinShop.no("P-051"))).isEmpty();
    }

    @Test
    void whatLiesMoreOnTheShelfForSomebodyIsNoMoreForOthers() {
        Offers offers = catalogue.offers();
        Offer piston = offers.of(TwinShop.no("P-050")).orElseThrow();

        Offers theirs = offers.withMore(Map.of(piston.number(), 2, TwinShop.no("P-051"), 1));

        assertThat(theirs.of(piston.number()))
                .contains(new Offer(piston.number(), piston.price(), piston.onHand() + 2, piston.leadDays()));
        assertThat(theirs.of(TwinShop.no("P-051"))).isEmpty();
        assertThat(theirs.of(TwinShop.no("P-025"))).isEqualTo(offers.of(TwinShop.no("P-025")));
        assertThat(offers.of(piston.number())).contains(piston);
    }

    @Test
    void aGaugeIsFoundByItsNameAndOneWithoutIsInNoRegister() {
        Gauge third = named(Optional.of("BG-3"));
        Catalogue registered = catalogue.registering(List.of(third, named(Optional.empty())));

        assertThat(registered.gauge("BG-3")).contains(third);
        assertThat(registered.gauge("BG-4")).isEmpty();
        assertThat(registered.gauges()).hasSize(1);
        assertThat(registered.engines()).isEqualTo(catalogue.engines());
    }

    @Test
    void sizesStandInTheOrderOfTheirOversize() {
        List<Size> mixed = List.of(shop.sizes.get(2), shop.sizes.get(0), shop.sizes.get(4));

        assertThat(Collections.min(mixed).label()).isEqualTo("standard");
        assertThat(Collections.max(mixed).label()).isEqualTo("+1.00");
        assertThat(mixed.stream().sorted().map(Size::label)).containsExactly("standard", "+0.50", "+1.00");
    }
}
