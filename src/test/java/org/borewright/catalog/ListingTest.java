package org.borewright.catalog;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Stocktaking;
import org.borewright.kit.TwinShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known of a number: what it is, where it is used, which boxes hold it. The two engines of the small catalogue. */
class ListingTest {

    private final Catalogue small = small();

    private static Catalogue small() {
        Delivery delivery = Delivery.from(Path.of("src/test/resources/catalog-small"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    private Listing listing(String number) {
        return small.listing(new PartNumber(number)).orElseThrow();
    }

    private static String uses(Listing listing) {
        return listing.uses().stream()
                .map(use -> use.engine() + " " + use.size().orElse("any size"))
                .collect(joining("; "));
    }

    @ParameterizedTest
    @CsvSource({
        "NH-OS4-025, OSTRAVEL-4 +0.25",
        "TV-HT2-R050, HALVERN-T2 +0.50",
        "NH-OS4-G, OSTRAVEL-4 any size",
        "HVT2-SE, HALVERN-T2 any size",
        "OVS4-HB, OSTRAVEL-4 any size",
        "NH-OS4-CB025, OSTRAVEL-4 +0.25",
        "OVS4-HBS, OSTRAVEL-4 any size",
    })
    void aNumberIsUsedWhereItFits(String number, String uses) {
        assertThat(uses(listing(number))).isEqualTo(uses);
    }

    @ParameterizedTest
    @CsvSource({
        "NH-OS4-025, NH-OS4-CB025 NH-OS4-EB025",
        "NH-OS4-G, NH-OS4-CB000 NH-OS4-CB025 NH-OS4-CB050 NH-OS4-EB000 NH-OS4-EB025 NH-OS4-EB050",
        "OVS4-HB, OVS4-HBS",
        "HVT2-SE, ''",
    })
    void aPartIsSoldInTheBoxesThatHoldIt(String number, String boxes) {
        assertThat(listing(number).soldIn().stream().map(PartNumber::text).collect(joining(" ")))
                .isEqualTo(boxes);
    }

    @Test
    void aBoxIsNoPartAndAPartIsNoBox() {
        assertThat(listing("NH-OS4-CB025").part()).isEmpty();
        assertThat(listing("NH-OS4-CB025").box()).isPresent();
        assertThat(listing("NH-OS4-025").part()).isPresent();
        assertThat(listing("NH-OS4-025").box()).isEmpty();
    }

    @Test
    void aReplacedPartSaysByWhat() {
        assertThat(listing("HVT2-GKA").withdrawal().flatMap(Withdrawal::replacedBy))
                .contains(new PartNumber("HVT2-GKB"));
    }

    @Test
    void aNumberThatIsOnlyWithdrawnIsKnownWithoutAUse() {
        PartNumber never = new PartNumber("NEVER-1");
        Withdrawal withdrawal = new Withdrawal(never, Withdrawal.State.NEVER_MADE, Optional.empty(), "listed");

        Catalogue catalogue = Catalogue.of(
                small.revision(), Instant.EPOCH, small.shelves().values(), Map.of(never, withdrawal), small.offers());

        Listing listing = catalogue.listing(never).orElseThrow();
        assertThat(listing.withdrawal()).contains(withdrawal);
        assertThat(listing.part()).isEmpty();
        assertThat(listing.uses()).isEmpty();
    }

    private static String usesIn(TwinShop shop, String number) {
        Catalogue catalogue = Catalogue.of(
                new Revision("test-fit", "test-offers"),
                Instant.EPOCH,
                List.of(shop.shelf()),
                shop.withdrawals,
                new Offers(shop.offers));
        return uses(catalogue.listing(TwinShop.no(number)).orElseThrow());
    }

    /** As where the rings of two sizes are gapped from one set. */
    @Test
    void aNumberOfTwoSizesIsUsedAtBothSmallerFirst() {
        TwinShop shop = new TwinShop();
        RingSet half = shop.rings.get(2);
        shop.rings.add(new RingSet(half.number(), half.design(), "+0.25", half.nominalBore(), half.rings()));

        assertThat(usesIn(shop, "R-050")).isEqualTo("TWIN-1 +0.25; TWIN-1 +0.50");
    }

    @ParameterizedTest
    @CsvSource({
        "P-050 1 R-050 1, TWIN-1 +0.50",
        "R-075 1 P-050 1 PIN-1 1, TWIN-1 +0.50; TWIN-1 +0.75",
        "PIN-1 1 CLIP-1 2, TWIN-1 any size",
        "NOBODYS-1 4, ''",
    })
    void aBoxIsUsedAtTheSizesOfWhatIsInIt(String contents, String uses) {
        TwinShop shop = new TwinShop();
        shop.box("BOX-1", Box.Kind.CYLINDER_BOX, contents, "70", 2);

        assertThat(usesIn(shop, "BOX-1")).isEqualTo(uses);
    }

    @Test
    void everyNumberThatIsOfferedIsListed() {
        assertThat(small.listings().keySet())
                .containsAll(small.offers().byNumber().keySet());
    }
}
