package org.borewright.kit.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.stream.Collectors;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Withdrawal;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.Settling;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rungs of the twin, from the one that takes no metal to the sleeve. */
class LadderTest {

    private final TwinShop shop = new TwinShop();

    private List<Rung> ladder(Match match) {
        return Ladder.of(
                shop.shelf().engine(), shop.request(Condition.WORN, "standard", TwinShop.surveys("-", "-")), match);
    }

    private static String told(List<Rung> rungs) {
        return rungs.stream()
                .map(rung -> rung.way().label()
                        + rung.row()
                                .map(SizeRow::size)
                                .map(size -> " " + size.label())
                                .orElse("") + ": "
                        + rung.certainty().label())
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest(name = "{0} and {1} in {2}")
    @CsvSource(delimiter = '|', textBlock = """
            69.989 | 69.989 | standard | rings only: possible; hone only standard: certain; rebore +0.25: certain; sleeve: possible
            70.110 | 70.020 | standard | rings only: no; hone only standard: no; rebore +0.25: possible; rebore +0.50: certain; sleeve: possible
            70.480 | 70.480 | standard | rings only: no; hone only standard: no; rebore +0.75: possible; rebore +1.00: possible; sleeve: possible
            -      | -      | standard | rings only: possible; hone only standard: possible; rebore +0.25: possible; rebore +0.50: possible; sleeve: possible
            71.000 | 70.000 | standard | rings only: no; hone only standard: no; sleeve: possible
            -      | -      | unknown  | rings only: possible; rebore standard: possible; rebore +0.25: possible; sleeve: possible
            """)
    void theWaysRiseByTheMetalTheyTakeUpToTheFirstThatServes(
            String first, String second, String present, String ladder) {
        assertThat(told(ladder(shop.worn(present, first, second)))).isEqualTo(ladder);
    }

    /** 70.110 asks for +0.50. A smaller size stands on the ladder already, or is ruled out; one beyond the first that serves is added. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            +1.00    | 70.110 | rings only: no; hone only standard: no; rebore +0.25: possible; rebore +0.50: certain; rebore +1.00: certain; sleeve: possible
            +0.50    | 70.110 | rings only: no; hone only standard: no; rebore +0.25: possible; rebore +0.50: certain; sleeve: possible
            +0.25    | 70.300 | rings only: no; hone only standard: no; rebore +0.50: possible; rebore +0.75: certain; sleeve: possible
            +1.00    | -      | rings only: possible; hone only standard: possible; rebore +0.25: possible; rebore +0.50: possible; rebore +1.00: possible; sleeve: possible
            """)
    void aSizeThatIsAskedForStandsOnTheLadderUnlessItIsRuledOut(String size, String diameter, String ladder) {
        MatchRequest request = shop.request(Condition.WORN, "standard", TwinShop.surveys(diameter, diameter))
                .asking(shop.shelf().size(size).orElseThrow());

        assertThat(told(Ladder.of(shop.shelf().engine(), request, shop.ask(request))))
                .isEqualTo(ladder);
    }

    @Test
    void aWallThatIsNeverCutTakesNewPistonsAsItIs() {
        shop.construction = Construction.PLATED;

        assertThat(told(ladder(shop.worn("standard", "70.005", "70.005"))))
                .isEqualTo("rings only: possible; new pistons, the wall as it is standard: certain; sleeve: possible");
    }

    /** A size of 0.03 mm may run in it as well, but a wall that is never cut takes its own size or a grade of it. */
    @ParameterizedTest(name = "without rings of {0}")
    @CsvSource({"-", "standard", "+0.03"})
    void theNewPistonsOfAWallThatIsNeverCutAreOfItsSizeWhateverCanBeHad(String gone) {
        shop.construction = Construction.PLATED;
        shop.size("+0.03", "0.03");
        shop.rings.removeIf(set -> set.size().equals(gone));

        assertThat(told(ladder(shop.worn("standard", "-", "-"))))
                .isEqualTo("rings only: possible; new pistons, the wall as it is standard: possible; sleeve: possible");
    }

    @Test
    void aRungNamesTheReadingsThatWouldProveIt() {
        Rung quarter = ladder(shop.worn("standard", "70.110", "70.020")).get(2);

        assertThat(quarter.open()).isEmpty();
        assertThat(quarter.readings())
                .extracting(
                        Settling.Reading::cylinder, reading -> reading.within().orElseThrow())
                .containsExactly(tuple("1", mm("35.074719")));
    }

    /** At 70.201 mm no wall lies near enough for +0.25, and pistons were never made in +0.50. */
    @Test
    void aRungSaysWhatStandsAgainstIt() {
        shop.pistonToHead = new Limits(mm("5"), mm("6"));

        assertThat(ladder(shop.worn("standard", "70.110", "70.020")).get(2).open())
                .containsExactly("no gasket kit fits this size");
        assertThat(ladder(new TwinShop().worn("standard", "70.201", "70.020"))
                        .get(2)
                        .open())
                .containsExactly("no reading of the holes can prove it");
    }

    /** Pistons of DESIGN-1 are in both holes: two ring sets and four clips. What is ruled out wants no parts. */
    @ParameterizedTest(name = "{1} is {2}, hole {0}: {3}")
    @CsvSource({
        "70.060, R-STD, to be had, ''",
        "70.060, R-STD, never made, no ring set of the present size is supplied with pin and clips that fit this piston",
        "70.060, R-STD, the last, 'ring set R-STD (needed 2, on the shelf 1)'",
        "70.060, CLIP-1, the last, 'clip CLIP-1 (needed 4, on the shelf 1)'",
        "70.060, GK-1, too low, no gasket kit fits this size",
        "70.900, R-STD, the last, ''",
        "70.900, R-STD, never made, ''",
    })
    void ringsOnlySaysWhichOfItsPartsCannotBeHad(String hole, String number, String state, String lacking) {
        switch (state) {
            case "never made" -> shop.withdraw(number, Withdrawal.State.NEVER_MADE);
            case "the last" -> shop.lastOf(number, 1);
            case "too low" -> shop.pistonToHead = new Limits(mm("5"), mm("6"));
            default -> {}
        }
        Match match = shop.ask(ofKnownPistons(hole));
        List<String> open = ladder(match).get(0).open();
        List<String> conditions = match.ringsOnly().orElseThrow().open();

        assertThat(open.subList(0, conditions.size())).isEqualTo(conditions);
        assertThat(open.subList(conditions.size(), open.size()))
                .isEqualTo(lacking.isEmpty() ? List.of() : List.of(lacking));
    }

    private MatchRequest ofKnownPistons(String hole) {
        AsFound found =
                Requests.pistonOf(shop.shelf().parts().designs().stream().findFirst());
        return Requests.seen(
                shop.request(Condition.WORN, "standard", TwinShop.surveys(hole, "70.020")), List.of(found, found));
    }

    /** Rings of standard are no longer made: the way at the present size is told as what it is, and no rebore in its place. */
    @Test
    void theWayAtThePresentSizeIsNamedWhateverStandsAgainstIt() {
        shop.withdraw("R-STD", Withdrawal.State.NEVER_MADE);

        Rung present = ladder(shop.worn("standard", "69.989", "69.989")).get(1);

        assertThat(present.way()).isEqualTo(Way.HONE_ONLY);
        assertThat(present.row().map(row -> row.size().label())).contains("standard");
        assertThat(present.open()).isNotEmpty();
    }

    /** 70.255 mm is too wide for any standard piston: what is ruled out does not stand in the place of what only wants rings. */
    @Test
    void aWallThatIsNeverCutIsToldOfTheSizeThatItHas() {
        shop.construction = Construction.PLATED;
        shop.withdraw("R-025", Withdrawal.State.NEVER_MADE);

        assertThat(told(ladder(shop.worn("+0.25", "70.255", "70.255"))))
                .isEqualTo("rings only: possible; new pistons, the wall as it is +0.25: certain; sleeve: possible");
    }

    /** Where none of a size serves, the maker with least against it. */
    @Test
    void ofTwoMakersTheOneWithLessAgainstItIsNamed() {
        TwoMakers makers = new TwoMakers(shop, "0.25", "40");
        shop.withdraw("R-025", Withdrawal.State.NEVER_MADE);
        MatchRequest request = shop.request(Condition.WORN, "+0.25", TwinShop.surveys("70.360", "70.360"));

        Rung present =
                Ladder.of(shop.shelf().engine(), request, makers.ask(request)).get(1);

        assertThat(present.row()
                        .flatMap(SizeRow::choice)
                        .map(choice -> choice.design().code()))
                .contains("DESIGN-2");
    }

    @Test
    void finishedHolesHaveNoLadder() {
        assertThat(ladder(shop.finished("70.500", "70.500"))).isEmpty();
    }
}
