package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.survey;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.request.Condition;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.survey.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a survey of the twin leaves open for the bench, sold with +0.50 whatever it says. */
class BeforeBoringTest {

    private final TwinShop shop = new TwinShop();

    private static Choice sold(Match match) {
        return match.table().stream()
                .filter(row -> row.size().label().equals("+0.50"))
                .map(SizeRow::choice)
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow();
    }

    /** The holes as the bench measured them; a hyphen for one that it did not. */
    private List<Hole> measured(String... diameters) {
        return shop.worn("standard", diameters).surveyed();
    }

    private static List<String> said(List<Hold> open) {
        return open.stream()
                .map(hold -> hold.reason() + " " + String.join(" ", hold.cylinders()))
                .map(String::strip)
                .toList();
    }

    /** Of a wall that stands off the axis the cut tells by itself; a hole that nobody read may be past its window before it. */
    @ParameterizedTest(name = "{0} and {1}, then {2} and {3}: {4}")
    @CsvSource({
        "70.300, 70.300, -, -, ''",
        "70.480, 70.300, -, -, ''",
        "-, 70.300, -, -, NOT_MEASURED 1",
        "-, 70.300, 70.310, -, ''",
        "-, 70.300, -, 70.310, NOT_MEASURED 1",
        // as the other hole was read in the survey
        "-, 70.300, 70.300, -, ''",
        "-, -, 70.310, -, NOT_MEASURED 1 2",
        "-, -, 70.310, 70.310, ''",
        // smaller than any standard hole
        "69.500, 70.300, -, -, SMALLER_THAN_PRESENT_SIZE 1",
        "69.500, 70.300, 70.310, -, ''",
    })
    void aHoleIsReadBeforeItIsBored(String first, String second, String firstAnew, String secondAnew, String open) {
        Match match = shop.worn("standard", first, second);

        assertThat(String.join(", ", said(BeforeBoring.of(match, sold(match), measured(firstAnew, secondAnew)))))
                .isEqualTo(open);
    }

    /** Pistons that the survey was not answered for have no wall that was looked at. */
    @Test
    void pistonsThatTheSurveyKnowsNothingOfAreOpen() {
        Match match = shop.worn("standard", "70.300", "70.300");
        Choice sold = sold(match);
        shop.withdraw("P-050", Withdrawal.State.NEVER_MADE);

        assertThat(said(BeforeBoring.of(shop.worn("standard", "70.300", "70.300"), sold, measured("-", "-"))))
                .containsExactly("CHECK_OPEN");
    }

    /** What is put right is measured again; a crack is none the less there. */
    @ParameterizedTest(name = "{0}: {1}, measured anew {2}")
    @CsvSource({
        "SMEARED_ALUMINIUM, SMEARED_ALUMINIUM 1, ''",
        "SLEEVE_LOOSE, SLEEVE_LOOSE 1, ''",
        "CRACKED, BEYOND_MACHINING 1, BEYOND_MACHINING 1",
    })
    void aFindingStandsUntilItIsPutRight(Finding.Kind kind, String open, String anew) {
        Match match = shop.ask(shop.request(
                Condition.WORN,
                "standard",
                List.of(
                        survey("1", "70.300", new Finding(kind, Optional.empty(), Optional.empty())),
                        survey("2", "70.300"))));

        assertThat(String.join(", ", said(BeforeBoring.of(match, sold(match), measured("-", "-")))))
                .isEqualTo(open);
        // carried along from the survey
        assertThat(String.join(", ", said(BeforeBoring.of(match, sold(match), measured("70.300", "70.300")))))
                .isEqualTo(open);
        assertThat(String.join(", ", said(BeforeBoring.of(match, sold(match), measured("70.310", "70.310")))))
                .isEqualTo(anew);
    }

    /** No reading of a hole tells how thick its wall is, and the size that was sold need not be the one that the match names. */
    @Test
    void aWallThatIsNotProvenForTheSizeSoldStaysOpen() {
        shop.wall = new WallShape(
                Optional.empty(), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());
        Match match = shop.worn("standard", "70.060", "70.060");

        assertThat(TwinShop.named(match)).isEqualTo("+0.25");
        List<Hold> open = BeforeBoring.of(match, sold(match), measured("70.060", "70.060"));

        assertThat(said(open)).containsExactly("CHECK_OPEN");
        assertThat(open.get(0).checks())
                .isNotEmpty()
                .allMatch(check -> check.rule().title().contains("wall"));
    }

    /** At +0.75 less than 2.5 mm would be left, and +0.50 was sold. */
    @Test
    void theWallAtAnotherSizeIsNoMatter() {
        shop.wall = new WallShape(
                Optional.of(mm("75.590")),
                Optional.of(mm("2.5")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(BeforeBoring.of(match, sold(match), measured("-", "-"))).isEmpty();
    }

    /** What the shelf lacks the desk has found or not before it took the customer's yes. */
    @Test
    void aKitThatIsShortIsNoHoldOnTheBench() {
        shop.offers.clear();
        Match match = shop.worn("standard", "70.300", "70.300");

        assertThat(match.ruling().holds()).isNotEmpty();
        assertThat(BeforeBoring.of(match, sold(match), measured("-", "-"))).isEmpty();
    }
}
