package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.shape.WallShape;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WallLeftTest {

    private static final Length CENTRING = mm("0.020");
    private static final Length PRESENT = mm("70.000");
    private static final Length FINISH = mm("70.580");
    private static final String SLEEVE_UNKNOWN =
            "sleeved before: the outside diameter of that sleeve is not known; measure it";
    private static final String NOT_SURVEYED =
            "the wall around this hole was not surveyed; measure its least thickness";

    /** (outside − largest finish)/2 − e, an odd nanometre down: geometry. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            OUTSIDE,   FINISH,    CENTRING, LEFT
            75.000,    70.580,    0.020,    2.190
            75.000,    70.580,    0,        2.210
            75.000,    70.580001, 0.020,    2.189999
            75.000001, 70.580,    0.020,    2.190
            75.000,    70.579999, 0.020,    2.190
            70.000,    70.580,    0.020,    -0.310
            """)
    void aSleeveLeavesHalfOfWhatIsNotHole(Length outside, Length finish, Length centring, Length left) {
        assertThat(WallLeft.ofSleeve(outside, finish, centring)).isEqualTo(left);
    }

    /** Surveyed least wall − (finish − present)/2 − e, an odd nanometre down: geometry. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            WALL,  PRESENT,   FINISH,    CENTRING, LEFT
            4.000, 70.000,    70.580,    0.020,    3.690
            4.000, 70.000,    70.580001, 0.020,    3.689999
            4.000, 70.000001, 70.580,    0.020,    3.690
            4.000, 69.999999, 70.580,    0.020,    3.689999
            4.000, 70.000,    70.000,    0,        4.000
            """)
    void aSurveyedWallLosesHalfOfWhatIsCut(Length wall, Length present, Length finish, Length centring, Length left) {
        assertThat(WallLeft.ofSurveyed(wall, present, finish, centring)).isEqualTo(left);
    }

    /**
     * What the engine was made with, what was found, and how the check against its least wall ends: a sleeve as made is exact, one measured
     * is known to 0.003 and half of that is in the wall, a wall measured is known to 0.05 (common practice).
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            LEAST,    SLEEVE MADE, SLEEVED BEFORE, SLEEVE FOUND, WALL FOUND, OUTCOME
            2.190,    75.000,      false,          ,             ,           IN
            2.189999, 75.000,      false,          ,             ,           IN
            2.190001, 75.000,      false,          ,             ,           OUT
            2.190,    75.000,      false,          60.000,       ,           IN
            2.190,    75.000,      false,          ,             2.550,      IN
            2.190,    75.000,      false,          ,             2.549999,   TOO_CLOSE
            2.190,    75.000,      false,          ,             1.000,      OUT
            2.190001, 75.000,      false,          ,             9.000,      OUT
            2.1885,   60.000,      true,           75.000,       1.000,      OUT
            ,         ,            true,           ,             ,           UNKNOWN
            ,         75.000,      true,           75.000,       ,           UNKNOWN
            ,         75.000,      false,          ,             4.000,      UNKNOWN
            2.1885,   60.000,      true,           75.000,       ,           IN
            2.188501, 60.000,      true,           75.000,       ,           TOO_CLOSE
            2.190,    60.000,      true,           75.000,       ,           TOO_CLOSE
            2.191499, 60.000,      true,           75.000,       ,           TOO_CLOSE
            2.1915,   60.000,      true,           75.000,       ,           OUT
            2.190,    75.000,      true,           ,             ,           UNKNOWN
            2.190,    75.000,      true,           ,             9.000,      UNKNOWN
            3.640,    ,            false,          ,             4.000,      IN
            3.640001, ,            false,          ,             4.000,      TOO_CLOSE
            3.690,    ,            false,          ,             4.000,      TOO_CLOSE
            3.739999, ,            false,          ,             4.000,      TOO_CLOSE
            3.740,    ,            false,          ,             4.000,      OUT
            2.190,    ,            false,          ,             ,           UNKNOWN
            2.1885,   ,            true,           75.000,       4.000,      IN
            """)
    void theWallIsReckonedFromWhatIsThere(
            Length least,
            Length sleeveMade,
            boolean sleevedBefore,
            Length sleeveFound,
            Length wallFound,
            Outcome outcome) {
        Optional<Check> check = WallLeft.check(
                made(sleeveMade, least), found(sleevedBefore, sleeveFound, wallFound), PRESENT, FINISH, CENTRING);
        assertThat(check).map(Check::outcome).contains(outcome);
        assertThat(check).map(Check::rule).contains(Rule.WALL_LEFT);
    }

    @Test
    void whereNobodyStatesALeastAWallThatWasMeasuredIsNotPassed() {
        assertThat(WallLeft.check(made(mm("75"), null), found(false, null, mm("0.3")), PRESENT, FINISH, CENTRING))
                .contains(new Unchecked(
                        Rule.WALL_LEFT,
                        "",
                        Outcome.UNKNOWN,
                        "nobody states how much wall this engine needs; ask its maker, or leave the hole as it is"));
        assertThat(WallLeft.check(made(mm("75"), null), Wall.UNKNOWN, PRESENT, FINISH, CENTRING))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"true, '" + SLEEVE_UNKNOWN + "'", "false, '" + NOT_SURVEYED + "'"})
    void aHoldSaysWhatToMeasure(boolean sleevedBefore, String reason) {
        assertThat(WallLeft.check(made(null, mm("2")), found(sleevedBefore, null, null), PRESENT, FINISH, CENTRING))
                .contains(new Unchecked(Rule.WALL_LEFT, "", Outcome.UNKNOWN, reason));
    }

    @ParameterizedTest
    @CsvSource({"75.000, 2.190, IN", "75.000, 2.190001, OUT", "75.000, ,", ", 2.190,", ", ,"})
    void theSleeveAsMadeIsJudgedWhereBothFiguresAreKnown(Length sleeve, Length least, Outcome outcome) {
        WallShape made = made(sleeve, least);
        assertThat(WallLeft.checkSleeve(made, FINISH, CENTRING).map(Comparison::outcome))
                .isEqualTo(Optional.ofNullable(outcome));
        assertThat(WallLeft.check(made, Wall.UNKNOWN, PRESENT, FINISH, CENTRING).isPresent())
                .isEqualTo(least != null);
    }

    @ParameterizedTest
    @CsvSource({
        "73.620, 1.500, IN",
        "73.620, 1.499999, IN",
        "73.620, 1.500001, OUT",
        "73.619999, 1.500, OUT",
        "73.620, ,",
        ", 1.500,"
    })
    void theSpigotHasItsOwnLeast(Length outside, Length least, Outcome outcome) {
        WallShape made = new WallShape(
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(outside),
                Optional.ofNullable(least),
                Optional.empty());
        Optional<Comparison> check = WallLeft.checkSpigot(made, FINISH, CENTRING);
        assertThat(check.map(Comparison::outcome)).isEqualTo(Optional.ofNullable(outcome));
        assertThat(check.map(Comparison::rule))
                .isEqualTo(Optional.ofNullable(outcome).map(any -> Rule.SPIGOT_WALL));
    }

    @Property
    boolean noWallIsShownThickerThanItIs(
            @ForAll @LongRange(min = 70_000_000, max = 80_000_000) long outside,
            @ForAll @LongRange(min = 68_000_000, max = 70_000_000) long finish) {
        long sleeve =
                2 * WallLeft.ofSleeve(nm(outside), nm(finish), Length.ZERO).nanometres();
        long surveyed = 2
                * WallLeft.ofSurveyed(nm(5_000_000), nm(finish), nm(outside), Length.ZERO)
                        .nanometres();
        long cut = outside - finish;
        return sleeve <= cut && sleeve >= cut - 1 && surveyed <= 10_000_000 - cut && surveyed >= 10_000_000 - cut - 1;
    }

    private static WallShape made(Length sleeve, Length least) {
        return new WallShape(
                Optional.ofNullable(sleeve),
                Optional.ofNullable(least),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Wall found(boolean sleevedBefore, Length sleeve, Length wall) {
        return new Wall(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(sleeve),
                Optional.ofNullable(wall),
                sleevedBefore);
    }
}
