package org.borewright.kit;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.surveys;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sizes that would come out clean and that something else stands against. Least piston to head of the twin: 199.4 + 0.5 − (40 + 125 + 34)
 * + 1.0 = 1.9 mm, less the skim; its deck bears a skim of 0.3 mm.
 */
class BlockedSizesMatchTest {

    @ParameterizedTest(name = "skim {0}, at least {1} to the head: {2}, at most {3}")
    @CsvSource({
        "0.300, 0.6, serves, 0.300",
        "0.300001, 0.6, hold, 0.300",
        "0.200, 1.7, serves, 0.300",
        "0.200001, 1.7, hold, 0.200",
        "0.400, 1.7, hold, 0.200",
        "0.000001, 1.9, hold, 0",
    })
    void aDeckIsSkimmedNoFurtherThanEngineAndPistonBear(String skim, String least, String verdict, String most) {
        TwinShop shop = new TwinShop();
        shop.pistonToHead = new Limits(mm(least), mm("2.4"));

        Match match = skimmed(shop, skim, "70.110", "70.020");

        assertThat(TwinShop.named(match)).isEqualTo("+0.50");
        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(match.checks())
                .filteredOn(check -> check.rule() == Rule.DECK_SKIM)
                .extracting(BlockedSizesMatchTest::limit)
                .containsExactly(mm(most));
    }

    @Test
    void aHoldOnTheSkimStandsOnAllThatTheSkimBreaksAndNothingIsSaidTwice() {
        TwinShop shop = new TwinShop();
        shop.pistonToHead = new Limits(mm("1.7"), mm("2.4"));

        List<Hold> holds = skimmed(shop, "0.25", "70.110", "70.020").ruling().holds();

        assertThat(holds).extracting(Hold::reason).containsExactly(Hold.Reason.SKIMMED_TOO_FAR);
        assertThat(holds.get(0).checks())
                .extracting(Check::rule)
                .containsExactly(Rule.PISTON_TO_HEAD_LEAST, Rule.DECK_SKIM);
    }

    @Test
    void aDeckThatIsNotSkimmedIsNotHeldAgainstASkim() {
        assertThat(new TwinShop().worn("standard", "70.110", "70.020").checks())
                .extracting(Check::rule)
                .doesNotContain(Rule.DECK_SKIM);
    }

    @ParameterizedTest(name = "opening {0}: {1}, {2}, {3}")
    @CsvSource({
        // +0.25 needs 70.300 + 2 × 0.5
        "71.299999, hold, +0.50, NO_GASKET_KIT",
        "71.300, no certain size, -, WALL_NOT_PROBED NO_GASKET_KIT",
    })
    void aSizeWithoutAGasketKitIsHeldAndNoSleeveIsSpokenOf(String opening, String verdict, String size, String holds) {
        TwinShop shop = new TwinShop();
        shop.gaskets.set(0, TwinShop.gasket("GK-1", opening));

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(reasons(match)).isEqualTo(holds);
    }

    @Test
    void aSizeWithoutRingsIsHeld() {
        TwinShop shop = new TwinShop();
        shop.rings.removeIf(set -> !set.size().equals("standard"));

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(TwinShop.named(match)).isEqualTo("+0.50");
        assertThat(reasons(match)).isEqualTo("PARTS_DO_NOT_FIT");
    }

    @Test
    void sizesThatArePossibleAtTheBestAreHeldByTheSkimBeforeAnyReading() {
        TwinShop shop = new TwinShop();
        shop.pistonToHead = new Limits(mm("1.7"), mm("2.4"));

        Match match = skimmed(shop, "0.25", "70.480", "70.300");

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_CERTAIN_SIZE);
        assertThat(reasons(match)).isEqualTo("SKIMMED_TOO_FAR WALL_NOT_PROBED");
        assertThat(match.ruling().holds().get(1).cylinders()).containsExactly("1");
    }

    /** Of 70.480 mm both +0.75 and +1.00 are possible and nothing is certain, of 71.000 nothing is left. */
    @ParameterizedTest(name = "{0} and {1} without pistons of {2}: {3}, passed over {4}, {5}")
    @CsvSource({
        "70.480, 70.020, '', no certain size, '', WALL_NOT_PROBED 1, +0.75",
        "70.480, 70.020, +0.75, no certain size, +0.75, WALL_NOT_PROBED 1, +1.00",
        "70.480, 70.020, +0.75 +1.00, no certain size, +0.75 +1.00, POSSIBLE_NEVER_MADE WALL_NOT_PROBED 1, ",
        "70.480, 70.480, +0.75 +1.00, no certain size, +0.75 +1.00, POSSIBLE_NEVER_MADE WALL_NOT_PROBED 1 2, ",
        "71.000, 70.020, +0.75 +1.00, no common size, '', NO_SIZE_LEFT 1, ",
    })
    void aPossibleSizeThatWasNeverMadeIsPassedOverForTheNext(
            String first, String second, String wanting, String verdict, String passedOver, String holds, String next) {
        TwinShop shop = new TwinShop();
        shop.pistons.removeIf(piston -> List.of(wanting.split(" ", -1)).contains(piston.size()));

        Match match = shop.worn("standard", first, second);

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(match.passedOver().stream().map(row -> row.size().label()).collect(joining(" ")))
                .isEqualTo(passedOver);
        assertThat(match.ruling().holds().stream()
                        .map(hold -> (hold.reason() + " " + String.join(" ", hold.cylinders())).trim())
                        .collect(joining(" ")))
                .isEqualTo(holds);
        assertThat(match.settling().map(settling -> settling.row().size().label()))
                .isEqualTo(Optional.ofNullable(next));
    }

    /** A maker whose pistons of the size named want rings is no smaller size that was passed over; one of a smaller size is. */
    @ParameterizedTest(name = "without {0}: {1}, passed over {2}")
    @CsvSource({"-, +0.25, ''", "R2-025, +0.25, ''", "R-025 R2-025, +0.50, +0.25"})
    void onlySmallerSizesArePassedOver(String gone, String size, String passedOver) {
        TwinShop shop = new TwinShop();
        TwoMakers makers = new TwoMakers(shop, "0.25", "40");
        shop.rings.removeIf(
                set -> List.of(gone.split(" ", -1)).contains(set.number().text()));

        Match match = makers.ask(shop.request(Condition.WORN, "standard", surveys("70.060", "70.020")));

        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(match.passedOver().stream().map(row -> row.size().label()).collect(joining(" ")))
                .isEqualTo(passedOver);
    }

    /**
     * Worn from +0.75, where the smallest hole is 70.730: 2·70.800 − 70.730 + 0.04 = 70.910 comes out clean at +1.00 alone, whose largest new
     * hole is 71.020.
     */
    @ParameterizedTest(name = "sleeve {0}, pitch {1}, largest {2}: {3}, {4}, {5}")
    @CsvSource(
            nullValues = "unknown",
            value = {
                // (76.060 − 71.020)/2 − 0.02 = 2.5
                "76.060, unknown, 1.00, hold, +1.00, NEVER_MADE",
                "76.059998, unknown, 1.00, no common size, -, NO_SIZE_LEFT",
                "unknown, unknown, 1.00, hold, +1.00, NEVER_MADE CHECK_OPEN",
                "78, 75.020, 1.00, hold, +1.00, NEVER_MADE",
                "78, 75.019999, 1.00, no common size, -, NO_SIZE_LEFT",
                "78, unknown, 0.75, no common size, -, NO_SIZE_LEFT",
            })
    void aSizeThatWasOnlyNeverMadeIsNamedAndPistonsMayBeMade(
            String sleeve, String pitch, String largest, String verdict, String size, String holds) {
        TwinShop shop = new TwinShop();
        shop.pistons.removeIf(piston -> piston.size().equals("+1.00"));
        shop.largestOversize = mm(largest);
        shop.pitch = Optional.ofNullable(pitch).map(TwinShop::mm);
        Optional<Length> bridge = shop.pitch.map(apart -> mm("4"));
        shop.wall = new WallShape(
                Optional.ofNullable(sleeve).map(TwinShop::mm),
                Optional.of(mm("2.5")),
                Optional.empty(),
                Optional.empty(),
                bridge);

        Match match = shop.worn("+0.75", "70.800", "70.740");

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(reasons(match)).isEqualTo(holds);
        assertThat(match.holes()).allMatch(hole -> hole.atSize().isEmpty());
    }

    @Test
    void onlyTheMetalCallsForASleeve() {
        TwinShop shop = new TwinShop();
        shop.gaskets.set(0, TwinShop.gasket("GK-1", "71"));
        shop.wall = new WallShape(
                Optional.of(mm("75")), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_COMMON_SIZE);
        assertThat(reasons(match)).isEqualTo("NO_SIZE_LEFT");
    }

    /** A gasket for standard must open 70.050 + 2 × 0.5, for +0.25 0.25 mm more. */
    @ParameterizedTest(name = "{0} and {1}, opening {2}, skim {3}: {4} {5}, {6}, cut to {7}")
    @CsvSource({
        "70.010, 70.010, 71.050, 0, serves, standard, '', -",
        "70.010, 70.010, 71.049999, 0, hold, standard, NO_GASKET_KIT, -",
        "70.010, 70.010, 73, 0.300001, hold, standard, SKIMMED_TOO_FAR, -",
        // what is too close to call, and wants a gasket besides
        "69.993, 70.010, 71.049999, 0, hold, standard, NO_GASKET_KIT CLEARANCE_TOO_CLOSE, -",
        // they differ, and +0.25 would bring them together
        "70.010, 70.260, 71.300, 0, hold, -, HOLES_DIFFER, +0.25",
        "70.010, 70.260, 71.299999, 0, hold, -, HOLES_DIFFER NO_GASKET_KIT, +0.25",
        "70.100, 70.120, 71.299999, 0, hold, -, BETWEEN_SIZES NO_GASKET_KIT, +0.25",
    })
    void finishedHolesWhoseSizeWantsAGasketOrLessSkimAreNotSentToBeSleeved(
            String first,
            String second,
            String opening,
            String skim,
            String verdict,
            String size,
            String holds,
            String together) {
        TwinShop shop = new TwinShop();
        shop.gaskets.set(0, TwinShop.gasket("GK-1", opening));

        Match match = skimmed(shop, Condition.FINISHED, skim, first, second);

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(reasons(match)).isEqualTo(holds);
        assertThat(cutTo(match)).isEqualTo(together);
    }

    @Test
    void finishedHolesWithoutRingsOfTheirSizeKeepItAndTheNextIsNamedBeside() {
        TwinShop shop = new TwinShop();
        shop.rings.removeIf(set -> set.size().equals("standard"));

        Match match = shop.finished("70.010", "70.010");

        assertThat(TwinShop.named(match)).isEqualTo("standard");
        assertThat(reasons(match)).isEqualTo("PARTS_DO_NOT_FIT");
        assertThat(match.finishedHoles(Condition.FINISHED))
                .allMatch(hole -> hole.size().orElseThrow().label().equals("standard"));
        assertThat(cutTo(match)).isEqualTo("+0.25");
    }

    @Test
    void finishedHolesThatNoMetalBearsCallForASleeve() {
        TwinShop shop = new TwinShop();
        shop.wall = new WallShape(
                Optional.of(mm("75")), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());

        Match match = shop.finished("70.010", "70.260");

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_COMMON_SIZE);
        assertThat(reasons(match)).isEqualTo("NO_COMMON_SIZE");
    }

    private static String cutTo(Match match) {
        return match.bringTogether(Condition.FINISHED)
                .map(row -> row.size().label())
                .orElse("-");
    }

    private static String reasons(Match match) {
        return String.join(
                " ",
                match.ruling().holds().stream()
                        .map(hold -> hold.reason().name())
                        .toList());
    }

    private static Length limit(Check check) {
        return Length.ofNanometres(((Comparison) check).limit().units());
    }

    private static Match skimmed(TwinShop shop, String skim, String... diameters) {
        return skimmed(shop, Condition.WORN, skim, diameters);
    }

    private static Match skimmed(TwinShop shop, Condition condition, String skim, String... diameters) {
        MatchRequest plain = shop.request(condition, "standard", surveys(diameters));
        return shop.ask(plain.with(TwinShop.skimmed(skim)));
    }
}
