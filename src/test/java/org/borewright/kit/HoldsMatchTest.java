package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Check;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.request.Condition;
import org.borewright.kit.table.Settling;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A hold says where: the holes that stand in the way, and no other. */
class HoldsMatchTest {

    @ParameterizedTest(name = "present {0}, {1} and {2}: {3} in {4}")
    @CsvSource({
        // +0.75 is possible for both, and certain for neither
        "standard, 70.480, 70.480, WALL_NOT_PROBED, 1 2",
        // the same, and hole 2 is certain there
        "standard, 70.480, 70.300, WALL_NOT_PROBED, 1",
        "standard, 70.300, 70.480, WALL_NOT_PROBED, 2",
        // all wear on one wall, 70.942 at +1.00, clears the bar's 70.950, but not for certain
        "standard, 70.451, 70.020, READING_TOO_CLOSE, 1",
        "standard, 70.455, 70.020, WALL_NOT_PROBED, 1",
        // 2U below the bar of +1.00: nearer no probe of two walls proves it, and a better gauge comes first
        "standard, 70.939, 70.020, WALL_NOT_PROBED, 1",
        "standard, 70.940, 70.020, READING_TOO_CLOSE, 1",
        // +0.50 bears all wear on one wall, and of the other hole nothing is known: at +0.25 no gauge decides
        "standard, -, 70.120, WALL_NOT_PROBED, 2",
        "standard, -, 70.050, NOT_MEASURED, 1",
        "unknown, 70.050, 70.050, SIZE_WHEN_NEW_NOT_KNOWN, 1 2",
        // one hole has no reading, the other a reading that may hide a worn wall
        "standard, -, 70.480, NOT_MEASURED, 1",
        "standard, -, 70.480, WALL_NOT_PROBED, 2",
    })
    void onlyTheHolesInTheWayAreNamed(
            String present, String first, String second, Hold.Reason reason, String cylinders) {
        Match match = new TwinShop().worn(present, first, second);

        assertThat(match.ruling().holds()).extracting(Hold::reason).contains(reason);
        assertThat(match.ruling().holds())
                .filteredOn(hold -> hold.reason() == reason)
                .extracting(hold -> String.join(" ", hold.cylinders()))
                .isEqualTo(List.of(cylinders));
    }

    /** A hone follows the hole, so that no wall need be probed: 69.990 + 0.005 lies within U of 70.000, where the present size ends. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"IRON_BARREL, 69.990, WALL_NOT_PROBED, false", "PLATED, 69.993, CLEARANCE_TOO_CLOSE, true"})
    void aWallThatIsNotBoredNeedNotBeProbed(
            Construction construction, String diameter, Hold.Reason reason, boolean held) {
        TwinShop shop = new TwinShop();
        shop.construction = construction;

        assertThat(shop.worn("standard", diameter, "70.010").ruling().holds().stream()
                        .anyMatch(hold ->
                                hold.reason() == reason && hold.cylinders().equals(List.of("1"))))
                .isEqualTo(held);
    }

    /** The bar comes to 70.950 at +1.00, the last size: a wall at 2 · 35.490 from its own axis it does not reach, whatever gauge is taken. */
    @Test
    void aProbedWallBeyondTheLastSizeLeavesNone() {
        TwinShop shop = new TwinShop();
        CylinderSurvey beyond =
                TwinShop.survey("1", "70.900").with(TwinShop.probed(new Wall.Reach(mm("35.490"), true)));

        Match match =
                shop.ask(shop.request(Condition.WORN, "standard", List.of(beyond, TwinShop.survey("2", "70.300"))));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_COMMON_SIZE);
    }

    /** The bar comes to 70.950 at +1.00, the last size: as far as the probed wall, it cannot be told; beside it the wall need not be probed. */
    @Test
    void aProbedWallThatIsTooCloseIsReadAgainAndNotProbedAgain() {
        TwinShop shop = new TwinShop();
        Wall wall = TwinShop.probed(new Wall.Reach(mm("35.475"), true));
        CylinderSurvey close = TwinShop.survey("1", "70.900").with(wall);

        Match match =
                shop.ask(shop.request(Condition.WORN, "standard", List.of(close, TwinShop.survey("2", "70.300"))));

        assertThat(match.ruling().holds())
                .extracting(Hold::reason, Hold::cylinders)
                .containsExactly(tuple(Hold.Reason.READING_TOO_CLOSE, List.of("1")));
    }

    @ParameterizedTest
    @EnumSource
    void aFindingWithoutADepthIsNamedWhereItStandsInTheWay(Condition condition) {
        TwinShop shop = new TwinShop();
        String diameter = condition == Condition.WORN ? "70.300" : "70.250";

        Match match = shop.ask(shop.request(
                condition,
                "standard",
                List.of(TwinShop.survey("1", diameter, found(Finding.Kind.SCORED)), TwinShop.survey("2", diameter))));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_CERTAIN_SIZE);
        assertThat(match.ruling().holds())
                .filteredOn(hold -> hold.reason() == Hold.Reason.DEPTH_NOT_MEASURED)
                .extracting(Hold::cylinders)
                .containsExactly(List.of("1"));
    }

    @ParameterizedTest
    @EnumSource
    void aluminiumAndALooseSleeveArePutRightEachInItsOwnWay(Condition condition) {
        TwinShop shop = new TwinShop();

        Match match = shop.ask(shop.request(
                condition,
                "standard",
                List.of(
                        TwinShop.survey("1", "70.010", found(Finding.Kind.SMEARED_ALUMINIUM)),
                        TwinShop.survey("2", "70.010", found(Finding.Kind.SLEEVE_LOOSE)))));

        assertThat(match.ruling().holds())
                .extracting(Hold::reason, Hold::cylinders)
                .containsExactly(
                        tuple(Hold.Reason.SMEARED_ALUMINIUM, List.of("1")),
                        tuple(Hold.Reason.SLEEVE_LOOSE, List.of("2")));
        match.settling()
                .ifPresent(settling -> assertThat(settling.readings())
                        .extracting(Settling.Reading::what)
                        .containsOnly(Settling.What.PUT_RIGHT_FIRST));
        assertThat(match.settling().isPresent()).isEqualTo(condition == Condition.WORN);
    }

    @Test
    void aHoledCylinderIsNoKitWhateverItReads() {
        TwinShop shop = new TwinShop();

        Match match = shop.ask(shop.request(
                Condition.WORN,
                "+0.50",
                List.of(TwinShop.survey("1", "70.010", found(Finding.Kind.HOLED)), TwinShop.survey("2", "70.500"))));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.REFER);
        assertThat(only(match).says()).isEqualTo("A cylinder is beyond machining: cylinder 1.");
    }

    @ParameterizedTest(name = "scored {0} deep in a hole of {1}: {2}, {3} in {4}")
    @CsvSource({
        // 70.010 + 2 × 0.02 leaves the hone of +0.25 its stock
        "0.02, 70.010, hold, FINDING_TO_CUT, 1",
        "    , 70.010, no certain size, DEPTH_NOT_MEASURED, 1",
        "    , 71.010, no certain size, DEPTH_NOT_MEASURED, 1",
        "0.50, 70.010, no common size, NO_COMMON_SIZE, 1 2",
    })
    void aFindingInAFinishedHoleIsCutOutAndNotSleevedWhileASizeHasRoom(
            Length depth, String diameter, String verdict, Hold.Reason reason, String cylinders) {
        TwinShop shop = new TwinShop();
        Finding score = new Finding(Finding.Kind.SCORED, Optional.ofNullable(depth), Optional.empty());

        Match match = shop.ask(shop.request(
                Condition.FINISHED,
                "",
                List.of(TwinShop.survey("1", "70.010", score), TwinShop.survey("2", diameter))));

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(only(match).reason()).isEqualTo(reason);
        assertThat(String.join(" ", only(match).cylinders())).isEqualTo(cylinders);
    }

    @ParameterizedTest(name = "plated, {0} and {1}: {2} in {3}")
    @CsvSource({
        "69.900, 70.010, NEVER_CUT, 1",
        "70.010, 70.100, NEVER_CUT, 2",
        "70.100, 70.100, NEVER_CUT, 1 2",
    })
    void aPlatedHoleThatNoPistonRunsInStandsInTheWayAndNotTheLargest(
            String first, String second, Hold.Reason reason, String cylinders) {
        TwinShop shop = new TwinShop();
        shop.construction = Construction.PLATED;

        Match match = shop.finished(first, second);

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_COMMON_SIZE);
        assertThat(only(match).reason()).isEqualTo(reason);
        assertThat(String.join(" ", only(match).cylinders())).isEqualTo(cylinders);
    }

    /** A worn plated hole: 69.981 is too tight for 69.950 and 0.040, 70.060 too loose for 69.940 and 0.100; neither asks for a sleeve first. */
    @ParameterizedTest(name = "plated, worn to {0}: {1} {2}")
    @CsvSource({
        "69.981, NO_COMMON_SIZE, NEVER_CUT 1",
        "70.060, NO_COMMON_SIZE, NEVER_CUT 1",
        "70.010, SERVES,         ''",
    })
    void aWornPlatedHoleThatNoPistonRunsInIsNotSaidToComeOutUnclean(String diameter, Verdict verdict, String holds) {
        TwinShop shop = new TwinShop();
        shop.construction = Construction.PLATED;

        Match match = shop.worn("standard", diameter, "70.010");

        assertThat(match.ruling().verdict()).isEqualTo(verdict);
        assertThat(String.join(" ", said(match))).isEqualTo(holds);
    }

    /** Nothing but a hone settles a poor surface, and nothing but a bar what is cut out: neither may touch a plated wall. */
    @ParameterizedTest(name = "{0}, {1}, {2}: {3} {4}")
    @CsvSource({
        "IRON_BARREL, WORN, FINISH_POOR, serves, ",
        "PLATED, WORN, FINISH_POOR, refer to a specialist, FINDING_NEVER_CUT",
        "PLATED, WORN, WORN, refer to a specialist, FINDING_NEVER_CUT",
        "PLATED, WORN, CORRODED, refer to a specialist, FINDING_NEVER_CUT",
        "BARE_ALUMINIUM_SILICON, WORN, SEIZED, refer to a specialist, FINDING_NEVER_CUT",
        "PLATED, WORN, CRACKED, refer to a specialist, BEYOND_MACHINING",
        "PLATED, WORN, STAIN, serves, ",
        "IRON_BARREL, FINISHED, FINISH_POOR, hold, FINISH_POOR",
        "PLATED, FINISHED, FINISH_POOR, refer to a specialist, FINDING_NEVER_CUT",
        "PLATED, FINISHED, SCORED, refer to a specialist, FINDING_NEVER_CUT",
        "BARE_ALUMINIUM_SILICON, FINISHED, STAIN, serves, ",
    })
    void whatOnlyHoneOrBarWouldSettleNeverPassesUncut(
            Construction construction, Condition condition, Finding.Kind kind, String verdict, Hold.Reason reason) {
        TwinShop shop = new TwinShop();
        shop.construction = construction;
        String diameter = condition == Condition.WORN && construction.mayBeBored() ? "69.989" : "70.010";

        Match match = shop.ask(shop.request(
                condition,
                "standard",
                List.of(TwinShop.survey("1", diameter, found(kind)), TwinShop.survey("2", diameter))));

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(match.ruling().holds())
                .extracting(Hold::reason, Hold::cylinders)
                .isEqualTo(reason == null ? List.of() : List.of(tuple(reason, List.of("1"))));
    }

    /**
     * A larger size cuts it away, and where the hone of a smaller one settles it, it is not what keeps that from being certain: of 70.236 and
     * 70.220 the first is within U of the least of +0.25, the second is honed to it, and +0.50 is sure of both. A hole that is left as it is
     * must be honed first.
     */
    @ParameterizedTest(name = "{1} and {2}, finish poor in {0}: {3}")
    @CsvSource({
        "1, 70.010, 70.260, HOLES_DIFFER 1",
        "2, 70.010, 70.260, HOLES_DIFFER 1 2 FINISH_POOR 2",
        "1, 70.236, 70.220, HOLES_DIFFER 1 2 FINISH_POOR 1 CLEARANCE_TOO_CLOSE 1",
        "2, 70.236, 70.220, HOLES_DIFFER 1 2 CLEARANCE_TOO_CLOSE 1",
    })
    void aPoorSurfaceStandsInTheWayOnlyWhereTheHoleIsLeftAsItIs(
            String poor, String first, String second, String holds) {
        TwinShop shop = new TwinShop();
        Finding[] of1 = poor.equals("1") ? new Finding[] {found(Finding.Kind.FINISH_POOR)} : new Finding[0];
        Finding[] of2 = poor.equals("2") ? new Finding[] {found(Finding.Kind.FINISH_POOR)} : new Finding[0];

        Match match = shop.ask(shop.request(
                Condition.FINISHED, "", List.of(TwinShop.survey("1", first, of1), TwinShop.survey("2", second, of2))));

        assertThat(said(match)).containsExactly(holds.split(" (?=[A-Z])", -1));
    }

    /**
     * What is seized is cut out, and 70.8135 + 2 × 0.09 + 0.005 lies within U of 71.000, the last size. Another finding of no depth is named
     * beside it, and each in its own hole.
     */
    @ParameterizedTest(name = "{0} {1} in the other: {2}")
    @CsvSource({
        "STAIN, 70.4307, READING_TOO_CLOSE 1",
        "SCORED, 70.4307, DEPTH_NOT_MEASURED 2 READING_TOO_CLOSE 1",
    })
    void aCutThatComesTooCloseToTheLastSizeIsReadAgain(Finding.Kind other, String diameter, String holds) {
        Finding seized = new Finding(Finding.Kind.SEIZED, Optional.of(mm("0.09")), Optional.empty());
        TwinShop shop = new TwinShop();

        Match match = shop.ask(shop.request(
                Condition.FINISHED,
                "",
                List.of(TwinShop.survey("1", "70.8135", seized), TwinShop.survey("2", diameter, found(other)))));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_CERTAIN_SIZE);
        assertThat(said(match)).containsExactly(holds.split(" (?=[A-Z])", -1));
    }

    /**
     * Nobody supplies rings for +0.25, to which both could be brought. At +0.29 the second hole, 70.282, lies too close to the least clearance:
     * that keeps no smaller size from them, and is not told.
     */
    @Test
    void whatIsTooCloseAtALargerSizeKeepsNothingApart() {
        TwinShop shop = new TwinShop();
        shop.withdraw("R-025", Withdrawal.State.NEVER_MADE);
        shop.sizes.removeIf(size -> size.oversize().isMoreThan(mm("0.25")));
        shop.size("+0.29", "0.29");

        Match match = shop.finished("70.010", "70.282");

        assertThat(TwinShop.table(match)).isEqualTo("standard:no +0.25:certain +0.29:possible");
        assertThat(said(match)).first().isEqualTo("HOLES_DIFFER 1");
        assertThat(match.ruling().holds()).extracting(Hold::reason).doesNotContain(Hold.Reason.CLEARANCE_TOO_CLOSE);
    }

    /**
     * Beside another that fits, one that fits another size, one that no size holds as it is, one that is larger than any piston runs in, and
     * one that nobody measured either.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            OTHER,  VERDICT,         SIZE,     SAID
            70.010, HOLD,            standard, NOT_MEASURED 1
            70.510, HOLD,            +0.50,    NOT_MEASURED 1
            70.100, NO_CERTAIN_SIZE, -,        NOT_MEASURED 1; BETWEEN_SIZES 2
            71.100, NO_COMMON_SIZE,  -,        NOT_MEASURED 1; NO_COMMON_SIZE 2
            -,      HOLD,            -,        NOT_MEASURED 1 2
            """)
    void besideAFinishedHoleThatNobodyMeasuredTheSizeOfTheOtherIsHeld(
            String other, Verdict verdict, String size, String said) {
        Match match = new TwinShop().finished("-", other);

        assertThat(match.ruling().verdict()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(String.join("; ", said(match))).isEqualTo(said);
    }

    /** What is asked for stands, held by that alone, whether the measured hole runs in it or is bored to it; but not one it is too close for. */
    @ParameterizedTest
    @CsvSource({
        "70.510, +0.50, +0.50,    'NOT_MEASURED 1'",
        "70.010, +0.50, +0.50,    'NOT_MEASURED 1'",
        "69.995281, standard, standard, 'NOT_MEASURED 1'",
        "69.995280, standard, standard, 'NOT_MEASURED 1; ASKED_SIZE_DOES_NOT_SERVE; CLEARANCE_TOO_CLOSE 2'",
    })
    void besideAHoleThatNobodyMeasuredASizeMayBeAskedFor(String other, String asked, String size, String said) {
        TwinShop shop = new TwinShop();

        Match match = shop.ask(shop.request(Condition.FINISHED, "", TwinShop.surveys("-", other))
                .asking(shop.size(asked).orElseThrow()));

        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(String.join("; ", said(match))).isEqualTo(said);
    }

    /** Seizure is always cut out, and a poor surface honed, whatever the diameter is. */
    @ParameterizedTest
    @CsvSource({
        "SEIZED,      NO_CERTAIN_SIZE, -,        NOT_MEASURED 1; DEPTH_NOT_MEASURED 1",
        "FINISH_POOR, HOLD,            standard, NOT_MEASURED 1; FINISH_POOR 1",
        "STAIN,       HOLD,            standard, NOT_MEASURED 1",
    })
    void whatWasSeenInAHoleThatNobodyMeasuredCountsToo(Finding.Kind kind, Verdict verdict, String size, String said) {
        List<CylinderSurvey> surveys = TwinShop.surveys("-", "70.010");
        surveys = List.of(
                new CylinderSurvey("1", surveys.get(0).asRead(), Wall.UNKNOWN, List.of(found(kind))), surveys.get(1));
        TwinShop shop = new TwinShop();

        Match match = shop.ask(shop.request(Condition.FINISHED, "", surveys));

        assertThat(match.ruling().verdict()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(String.join("; ", said(match))).isEqualTo(said);
    }

    /** A wall that is never bored needs no size when new: what runs in it is asked of it as it is. 69.993 lies within U of the least clearance. */
    @Test
    void aWallThatIsNotBoredNeedNoSizeWhenNew() {
        TwinShop shop = new TwinShop();
        shop.construction = Construction.PLATED;

        assertThat(said(shop.worn("unknown", "69.993", "70.010"))).containsExactly("CLEARANCE_TOO_CLOSE 1");
    }

    private static List<String> said(Match match) {
        return match.ruling().holds().stream()
                .map(hold -> (hold.reason() + " " + String.join(" ", hold.cylinders())).trim())
                .toList();
    }

    private static Finding found(Finding.Kind kind) {
        return new Finding(kind, Optional.empty(), Optional.empty());
    }

    @Test
    void checksOfSeveralHolesSayWhoseTheyAre() {
        TwinShop shop = new TwinShop();
        shop.wall = new WallShape(
                Optional.empty(), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());

        Hold hold = only(shop.worn("standard", "70.110", "70.020"));

        assertThat(hold.cylinders()).containsExactly("1", "2");
        assertThat(hold.checks()).extracting(Check::place).containsExactly("cylinder 1", "cylinder 2");
        assertThat(hold.says()).isEqualTo("A check is not proven: wall left; cylinders 1, 2.");
    }

    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                // hole 1 too close, hole 2 well inside
                "69.993 | 70.010 | The clearance in a hole left as it is lies too close to call: least clearance; cylinder 1.",
                "70.010 | 70.260 | The finished holes do not take one size, and the smaller ones must be cut: cylinder 1.",
                "70.100 | 70.120 | The finished holes lie between two sizes, too loose for the smaller and too tight for the larger: cylinders 1, 2.",
                "70.010 | 71.100 | No size brings the finished holes together, and the largest stands in the way: cylinder 2.",
            })
    void aHoldOnFinishedHolesNamesThem(String first, String second, String says) {
        assertThat(only(new TwinShop().finished(first, second)).says()).isEqualTo(says);
    }

    /** A hole is proven at +0.25 from 70.245 282 to 70.284 718, at +1.00 from 70.995 282 to 71.034 718. */
    @ParameterizedTest(name = "{0} and {1}: {2}, {3}")
    @CsvSource({
        "71.036, 70.010, no certain size, CLEARANCE_TOO_CLOSE 1",
        "70.993, 71.036, hold, CLEARANCE_TOO_CLOSE 1 2",
        // +0.25 would bring them together if hole 2 were proven there, +0.50 does
        "70.010, 70.286, hold, HOLES_DIFFER 1 2 CLEARANCE_TOO_CLOSE 2",
        "70.010, 70.260, hold, HOLES_DIFFER 1",
    })
    void whatMeasuredPistonsWouldSettleIsSaidBesideWhatMustBeCut(
            String first, String second, String verdict, String holds) {
        Match match = new TwinShop().finished(first, second);

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(match.ruling().holds().stream()
                        .map(hold -> hold.reason() + " " + String.join(" ", hold.cylinders())))
                .containsExactly(holds.split(" (?=[A-Z])", -1));
    }

    @Test
    void aKitThatIsShortNamesThePartsAndWhatThereIsOfThem() {
        TwinShop shop = new TwinShop();
        shop.lastOf("P-050", 1);
        shop.lastOf("PIN-1", 0);
        shop.lastOf("R-050", 1);
        shop.withdraw("R-050", Withdrawal.State.DISCONTINUED);
        shop.lastOf("BOLT-1", 0);
        shop.withdraw("BOLT-1", Withdrawal.State.DISCONTINUED);

        Hold hold = only(shop.worn("standard", "70.110", "70.020"));

        assertThat(hold.says())
                .isEqualTo("The kit is short of a part that cannot be had: piston P-050 (needed 2, on the shelf 1);"
                        + " ring set R-050 (needed 2, on the shelf 1, discontinued); wrist pin PIN-1 (needed 2, on the shelf 0);"
                        + " single-use bolt BOLT-1 (needed 6, discontinued).");
    }

    private static Hold only(Match match) {
        assertThat(match.ruling().holds()).hasSize(1);
        return match.ruling().holds().get(0);
    }

    /** A plated hole runs on, so it bears the allowances of service: here 0.020 mm of each, a difference of two readings known to 0.000 817. */
    @ParameterizedTest(name = "out of round by {0}, taper {1}: {2}")
    @CsvSource({
        "0.019183, 0, ''",
        "0.019184, 0, CHECK_OPEN",
        "0.020816, 0, CHECK_OPEN",
        "0.020817, 0, CHECK_OUT",
        "0, 0.019183, ''",
        "0, 0.020817, CHECK_OUT",
    })
    void aWornPlatedHoleMustBeRoundAndStraightEnoughToRunOn(Length outOfRound, Length taper, String reason) {
        TwinShop shop = new TwinShop();
        shop.construction = Construction.PLATED;
        shop.shapeAllowed = mm("0.020");
        Length small = mm("69.998");
        Optional<Length> top = Optional.of(small.plus(taper));
        Optional<Length> rest = Optional.of(small);
        Grid grid = new Grid(
                List.of(mm("10"), mm("60"), mm("110")),
                List.of(Axis.THRUST, Axis.PIN),
                List.of(List.of(top, top), List.of(rest, rest), List.of(Optional.of(small.plus(outOfRound)), rest)));
        CylinderSurvey first = new CylinderSurvey("1", grid, Wall.UNKNOWN, List.of());

        Match match =
                shop.ask(shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.010"))));

        assertThat(match.ruling().holds())
                .extracting(hold -> hold.reason().name())
                .isEqualTo(reason.isEmpty() ? List.of() : List.of(reason));
    }
}
