package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CleanUpTest {

    private static final Length NEW = mm("70.000");
    private static final Length HONE_STOCK = mm("0.050");
    private static final Length CENTRING = mm("0.020");

    /** New 70.000, largest reading 70.110, e 0.02: 70.260, all wear on one wall (geometry of the bar). */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            DIAMETER,  WHEN NEW,  CENTRING, DEFECT,   WORST,     BEST
            70.110,    70.000,    0.020,    0,        70.260,    70.110
            70.110,    70.000,    0,        0,        70.220,    70.110
            70.110,    70.000,    0.020,    0.050,    70.360,    70.210
            70.110,    70.010,    0.020,    0,        70.250,    70.110
            70.000,    70.000,    0,        0,        70.000,    70.000
            70.110001, 70.000,    0.020,    0,        70.260002, 70.110001
            70.110,    69.999999, 0.020,    0,        70.260001, 70.110
            70.110,    70.000,    0.020,    0.000001, 70.260002, 70.110002
            """)
    void wearOnOneWallCountsTwice(
            Length diameter, Length whenNew, Length centring, Length defect, Length worst, Length best) {
        assertThat(CleanUp.worstAt(diameter, whenNew, centring, defect)).isEqualTo(worst);
        assertThat(CleanUp.bestAt(diameter, defect)).isEqualTo(best);
    }

    @ParameterizedTest
    @CsvSource({"35.100, 0.020, false, 70.240", "35.100, 0.020, true, 70.200", "35.100001, 0, false, 70.200002"})
    void aProbedWallStandsForTwiceItsReach(Length radius, Length centring, boolean fromBarAxis, Length worst) {
        assertThat(CleanUp.probed(radius, centring, fromBarAxis)).isEqualTo(worst);
    }

    /** Each worst with its guard: what is proven is both together, but a worst that lies above another's is no matter of the guard. */
    @ParameterizedTest(name = "{0} + {1} beside {2} + {3}: {4}")
    @CsvSource({
        "70.110, 0.100,    70.160, 0.010, true",
        "70.110, 0.060001, 70.160, 0.010, true",
        "70.110, 0.060,    70.160, 0.010, false",
        "70.160, 0.100,    70.160, 0.010, true",
        "70.160, 0.010,    70.160, 0.010, false",
        "70.160001, 0.100, 70.160, 0.010, false",
        "70.110, 0.100,    ,       0.010, false",
        ",       0.100,    70.160, 0.010, false",
    })
    void isWorthLessThanWhatProvesASmallerFinish(
            Length worst, Length guard, Length other, Length otherGuard, boolean less) {
        assertThat(needing(worst, guard).isWorthLessThan(needing(other, otherGuard)))
                .isEqualTo(less);
    }

    private static CleanUp needing(Length worst, Length guard) {
        return new CleanUp(
                Optional.ofNullable(worst), Optional.empty(), Optional.empty(), guard, guard.halfRoundedUp());
    }

    /** Worst 70.260 guarded by 2U = 0.010, best 70.110 by U = 0.005, hone stock 0.050. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            70.500000, CERTAIN
            70.320000, CERTAIN
            70.319999, POSSIBLE
            70.310000, POSSIBLE
            70.155000, POSSIBLE
            70.154999, NO
            70.000000, NO
            """)
    void isCertainFromTheGuardUpAndNoFromTheUncertaintyDown(Length finish, Certainty certainty) {
        CleanUp cleanUp = new CleanUp(
                Optional.of(mm("70.260")), Optional.of(mm("70.110")), Optional.empty(), mm("0.010"), mm("0.005"));
        assertThat(cleanUp.at(finish, HONE_STOCK)).isEqualTo(certainty);
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            WORST,  BEST,   FINISH, CERTAINTY
            ,       ,       71.000, POSSIBLE
            ,       ,       60.000, POSSIBLE
            ,       70.110, 99.000, POSSIBLE
            ,       70.110, 70.160, POSSIBLE
            ,       70.110, 70.159, NO
            70.260, ,       70.310, CERTAIN
            70.260, ,       60.000, POSSIBLE
            """)
    void whatIsNotKnownIsNeitherCertainNorExcluded(Length worst, Length best, Length finish, Certainty certainty) {
        CleanUp cleanUp = new CleanUp(
                Optional.ofNullable(worst), Optional.ofNullable(best), Optional.empty(), Length.ZERO, Length.ZERO);
        assertThat(cleanUp.at(finish, HONE_STOCK)).isEqualTo(certainty);
    }

    /** The wall stands at 2r = 70.980 from the bar's axis, ± 2 · 0.005; from another axis, 0.020 off, at 70.940 the least. */
    @ParameterizedTest(name = "from the bar''s own axis: {0}, finished at {1}: {2}")
    @CsvSource({
        "true,  71.040,    CERTAIN",
        "true,  71.039999, POSSIBLE",
        "true,  71.020,    POSSIBLE",
        "true,  71.019999, NO",
        "false, 71.080,    CERTAIN",
        "false, 71.079999, POSSIBLE",
        "false, 70.980,    POSSIBLE",
        "false, 70.979999, NO",
    })
    void aProbedWallThatTheBarDoesNotReachIsProvenLeft(boolean fromBarAxis, Length finish, Certainty certainty) {
        Length radius = mm("35.490");
        CleanUp cleanUp = new CleanUp(
                Optional.of(CleanUp.probed(radius, CENTRING, fromBarAxis)),
                Optional.of(mm("70.900")),
                Optional.of(CleanUp.reached(radius, CENTRING, fromBarAxis)),
                mm("0.010"),
                mm("0.005"));

        assertThat(cleanUp.at(finish, HONE_STOCK)).isEqualTo(certainty);
    }

    @ParameterizedTest
    @CsvSource({"60.000", "70.000", "99.000"})
    void ofAHoleNobodyMeasuredEverySizeIsPossible(Length finish) {
        assertThat(CleanUp.UNKNOWN.at(finish, HONE_STOCK)).isEqualTo(Certainty.POSSIBLE);
    }

    /** TM 5-3805-260-24: standard bore 4.5000 in; wear over 0.020 in goes to 0.040 oversize, else to 0.020. */
    @ParameterizedTest
    @CsvSource({"0.0061, 0.020", "0.0200, 0.020", "0.02001, 0.040", "0.0300, 0.040", "0.0400, 0.040"})
    void theManualsChoiceOfOversizeIsTheFirstThatWearSharedEvenlyAllows(BigDecimal wear, BigDecimal oversize) {
        Length standard = inches("4.5000");
        Length reading = standard.plus(Length.parse(wear, LengthUnit.INCH));
        CleanUp cleanUp = new CleanUp(
                Optional.empty(),
                Optional.of(CleanUp.bestAt(reading, Length.ZERO)),
                Optional.empty(),
                Length.ZERO,
                Length.ZERO);
        boolean small = cleanUp.at(standard.plus(inches("0.020")), Length.ZERO) != Certainty.NO;
        assertThat(cleanUp.at(standard.plus(inches("0.040")), Length.ZERO)).isEqualTo(Certainty.POSSIBLE);
        assertThat(new BigDecimal(small ? "0.020" : "0.040")).isEqualTo(oversize);
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FINISH,    HONE STOCK, GUARD, DEFECT,   WITHIN
            57.880,    0.050,      0.010, 0,        28.910
            70.500,    0.050,      0.010, 0,        35.220
            70.500001, 0.050,      0.010, 0,        35.220
            70.499999, 0.050,      0.010, 0,        35.219999
            70.500,    0,          0,     0,        35.250
            70.500,    0.050,      0.010, 0.030,    35.190
            70.500,    0.050,      0.010, 0.000001, 35.219999
            """)
    void theWallThatWouldSettleASize(Length finish, Length honeStock, Length guard, Length defect, Length within) {
        assertThat(CleanUp.wallWithin(finish, honeStock, guard, defect)).isEqualTo(within);
    }

    @Property
    boolean aWallProbedWithinThatFigureSettlesItAndOneNanometreFurtherDoesNot(
            @ForAll @LongRange(min = 60_000_000, max = 80_000_000) long finish,
            @ForAll @LongRange(min = 0, max = 20_000) long uncertainty,
            @ForAll @LongRange(min = 0, max = 40_000) long centring) {
        Length guard = nm(uncertainty).doubled();
        Length fromBarAxis = CleanUp.wallWithin(nm(finish), HONE_STOCK, guard, Length.ZERO);
        Length within = fromBarAxis.minus(nm(centring));
        return probed(within, nm(centring), guard).at(nm(finish), HONE_STOCK) == Certainty.CERTAIN
                && probed(within.plus(nm(1)), nm(centring), guard).at(nm(finish), HONE_STOCK) != Certainty.CERTAIN
                && probed(fromBarAxis, Length.ZERO, guard).at(nm(finish), HONE_STOCK) == Certainty.CERTAIN;
    }

    @Property
    boolean moreWearNeverLowersTheCleanUpAndNeverMakesASizeMoreCertain(
            @ForAll @LongRange(min = 0, max = 500_000) long wear,
            @ForAll @LongRange(min = 0, max = 300_000) long more,
            @ForAll @LongRange(min = 70_000_000, max = 71_100_000) long finish,
            @ForAll @LongRange(min = 0, max = 20_000) long uncertainty) {
        CleanUp less = worn(NEW.plus(nm(wear)), nm(uncertainty));
        CleanUp worse = worn(NEW.plus(nm(wear + more)), nm(uncertainty));
        Certainty before = less.at(nm(finish), HONE_STOCK);
        Certainty after = worse.at(nm(finish), HONE_STOCK);
        return !worse.worst().orElseThrow().isLessThan(less.worst().orElseThrow())
                && !worse.best().orElseThrow().isLessThan(less.best().orElseThrow())
                && before.and(after) == after;
    }

    @Property
    boolean aLargerSizeIsNeverLessCertain(
            @ForAll @LongRange(min = 0, max = 500_000) long wear,
            @ForAll @LongRange(min = 70_000_000, max = 71_100_000) long finish,
            @ForAll @LongRange(min = 0, max = 300_000) long larger,
            @ForAll @LongRange(min = 0, max = 20_000) long uncertainty) {
        CleanUp cleanUp = worn(NEW.plus(nm(wear)), nm(uncertainty));
        Certainty smaller = cleanUp.at(nm(finish), HONE_STOCK);
        return smaller.and(cleanUp.at(nm(finish + larger), HONE_STOCK)) == smaller;
    }

    @Property
    boolean aCertainFinishIsNeverBelowTheCleanUp(
            @ForAll @LongRange(min = 0, max = 500_000) long wear,
            @ForAll @LongRange(min = 70_000_000, max = 71_100_000) long finish,
            @ForAll @LongRange(min = 0, max = 20_000) long uncertainty) {
        CleanUp cleanUp = worn(NEW.plus(nm(wear)), nm(uncertainty));
        return cleanUp.at(nm(finish), HONE_STOCK) != Certainty.CERTAIN
                || !nm(finish).minus(HONE_STOCK).isLessThan(cleanUp.worst().orElseThrow());
    }

    @Property
    boolean theSameHoleInInchesGetsTheSameAnswer(
            @ForAll @IntRange(min = 275_590, max = 278_000) int reading,
            @ForAll @IntRange(min = 275_590, max = 280_000) int finish) {
        return inInches(reading, finish) == inMillimetres(reading, finish);
    }

    private static Certainty inInches(int reading, int finish) {
        return worn(Length.parse(BigDecimal.valueOf(reading, 5), LengthUnit.INCH), mm("0.005"))
                .at(Length.parse(BigDecimal.valueOf(finish, 5), LengthUnit.INCH), HONE_STOCK);
    }

    private static Certainty inMillimetres(int reading, int finish) {
        BigDecimal inch = new BigDecimal("25.4");
        return worn(Length.parse(BigDecimal.valueOf(reading, 5).multiply(inch), LengthUnit.MILLIMETRE), mm("0.005"))
                .at(Length.parse(BigDecimal.valueOf(finish, 5).multiply(inch), LengthUnit.MILLIMETRE), HONE_STOCK);
    }

    private static CleanUp worn(Length diameter, Length uncertainty) {
        return new CleanUp(
                Optional.of(CleanUp.worstAt(diameter, NEW, CENTRING, Length.ZERO)),
                Optional.of(CleanUp.bestAt(diameter, Length.ZERO)),
                Optional.empty(),
                uncertainty.doubled(),
                uncertainty);
    }

    private static CleanUp probed(Length radius, Length centring, Length guard) {
        return new CleanUp(
                Optional.of(CleanUp.probed(radius, centring, false)),
                Optional.empty(),
                Optional.of(CleanUp.reached(radius, centring, false)),
                guard,
                guard.halfRoundedUp());
    }

    private static Length inches(String inches) {
        return Length.parse(new BigDecimal(inches), LengthUnit.INCH);
    }
}
