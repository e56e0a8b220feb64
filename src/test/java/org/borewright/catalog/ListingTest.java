package org.borewright.catalog;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Stocktaking;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known of a number: what it is, where it is used, which boxes hold it. The two engines of the small catalogue. */
class ListingTest {

    private static final Catalogue SMALL = small();

    private static Catalogue small() {
        Delivery delivery = Delivery.from(Path.of("src/test/resources/catalog-small"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    private static Listing listing(String number) {
        return SMALL.listing(new PartNumber(number)).orElseThrow();
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
                SMALL.revision(), Instant.EPOCH, SMALL.shelves().values(), Map.of(never, withdrawal), SMALL.offers());

        Listing listing = catalogue.listing(never).orElseThrow();
        assertThat(listing.withdrawal()).contains(withdrawal);
        assertThat(listing.part()).isEmpty();
        assertThat(listing.uses()).isEmpty();
    }

    @Test
    void everyNumberThatIsOfferedIsListed() {
        assertThat(SMALL.listings().keySet())
                .containsAll(SMALL.offers().byNumber().keySet());
    }
}
