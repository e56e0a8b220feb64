package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.borewright.fit.Shapes.groove;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.named;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.ring;
import static org.borewright.fit.Shapes.worth;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Decision;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingGapTest {

    /** Top ring 0.35 to 0.60 mm, second 0.25 to 0.60: TM 5-3825-229-14&P. */
    private static final GrooveShape TOP = groove(limits("0.350", "0.600"));

    /**
     * π for each unit of diameter, down for the least and up for the greatest. 0.05 mm gain 0.157 08, 0.50 mm 1.570 80, 0.001 in
     * 0.003 142 in. A standard ring in a +0.25 hole gains 0.785 mm.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            HOLE,      LEAST,     GREATEST
            70.000,    0.400000,  0.550000
            70.050,    0.557079,  0.707080
            70.250,    1.185398,  1.335399
            70.500,    1.970796,  2.120797
            70.025400, 0.479796,  0.629797
            69.970,    0.305752,  0.455753
            70.000001, 0.400003,  0.550004
            69.999999, 0.399996,  0.549997
            """)
    void theGapGrowsByPiTimesTheBore(Length hole, Length least, Length greatest) {
        RingShape ring = ring(limits("0.400", "0.550"), Length.ZERO);
        assertThat(RingGap.in(Limits.exactly(hole), ring)).isEqualTo(new Limits(least, greatest));
    }

    /**
     * "0.003 inch for each 0.001 inch", TM 5-3805-261-34; "0.03 mm undersize reduces the gap 0.08 mm", TM 5-3825-229-14&P, p. 6-24,
     * which rounds 0.001 in: the manuals' rules within a twentieth, and within a fifth.
     */
    @ParameterizedTest
    @CsvSource({"0.0254, 0.0762, 0.05", "0.254, 0.762, 0.05", "-0.03, -0.08, 0.20"})
    void theRuleOfTheManualsIsTheSameRounded(Length overGauge, Length gain, double within) {
        Limits gap = RingGap.in(Limits.exactly(mm("70.000").plus(overGauge)), ring(limits("0", "0"), Length.ZERO));
        assertThat(gap.least().toMillimetres() / gain.toMillimetres()).isCloseTo(1, offset(within));
    }

    @ParameterizedTest
    @CsvSource({"69.980, 70.020, 0.337168, 0.612832", "70.000, 70.010, 0.400, 0.581416"})
    void theLeastIsInTheSmallestHoleAndTheGreatestInTheLargest(
            String smallest, String largest, Length least, Length greatest) {
        RingShape ring = ring(limits("0.400", "0.550"), Length.ZERO);
        assertThat(RingGap.in(limits(smallest, largest), ring)).isEqualTo(new Limits(least, greatest));
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            RING FROM, TO,       LEAST, GREATEST
            0.350000,  0.600000, IN,    IN
            0.350001,  0.599999, IN,    IN
            0.349999,  0.600000, OUT,   IN
            0.350000,  0.600001, IN,    OUT
            """)
    void exactGapsMayMeetTheLimits(Length from, Length to, Outcome least, Outcome greatest) {
        assertThat(outcomes(new Limits(from, to), Length.ZERO, Length.ZERO)).containsExactly(least, greatest);
    }

    /** A hole uncertain by 0.002 mm makes the gap uncertain by 0.006 284. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            RING FROM, TO,       LEAST,     GREATEST
            0.356284,  0.593716, IN,        IN
            0.356283,  0.593716, TOO_CLOSE, IN
            0.356284,  0.593717, IN,        TOO_CLOSE
            0.343717,  0.606283, TOO_CLOSE, TOO_CLOSE
            0.343716,  0.606283, OUT,       TOO_CLOSE
            0.343717,  0.606284, TOO_CLOSE, OUT
            """)
    void aMeasuredHoleMakesTheGapPiTimesAsUncertain(Length from, Length to, Outcome least, Outcome greatest) {
        assertThat(outcomes(new Limits(from, to), Length.ZERO, mm("0.002"))).containsExactly(least, greatest);
    }

    /** The gap is 0.003 mm off its limit: a gauge settles it from 0.003/π = 0.000 954 down. */
    @ParameterizedTest
    @CsvSource({"0.353, 0.597, 0.000954", "0.347, 0.603, 0.000954", "0.350, 0.600,"})
    void theGaugeThatSettlesAGapIsPiTimesFiner(Length from, Length to, Length gauge) {
        assertThat(check(new Limits(from, to), Length.ZERO, mm("0.002")))
                .allSatisfy(check -> assertThat(named(check)).isEqualTo(Optional.ofNullable(gauge)));
    }

    /** Least gap 0.350; up to 0.100 may be filed off a ring made for it, none off another. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            RING FROM, FILE,     U,     RULE,             OUTCOME
            0.350,     0.100,    0,     RING_GAP_LEAST,   IN
            0.349999,  0.100,    0,     RING_GAP_TO_FILE, IN
            0.250,     0.100,    0,     RING_GAP_TO_FILE, IN
            0.249999,  0.100,    0,     RING_GAP_TO_FILE, OUT
            0.349999,  0,        0,     RING_GAP_LEAST,   OUT
            0.349999,  0.000001, 0,     RING_GAP_TO_FILE, IN
            0.349998,  0.000001, 0,     RING_GAP_TO_FILE, OUT
            0.356284,  0.100,    0.002, RING_GAP_LEAST,   IN
            0.356283,  0.100,    0.002, RING_GAP_TO_FILE, IN
            0.350,     0.100,    0.002, RING_GAP_TO_FILE, IN
            0.256284,  0.100,    0.002, RING_GAP_TO_FILE, IN
            0.256283,  0.100,    0.002, RING_GAP_TO_FILE, TOO_CLOSE
            0.243716,  0.100,    0.002, RING_GAP_TO_FILE, OUT
            """)
    void onlyARingMadeForItIsFiledAndOnlyWithinItsAllowance(
            Length from, Length file, Length uncertainty, Rule rule, Outcome outcome) {
        Comparison least =
                check(new Limits(from, mm("0.500")), file, uncertainty).get(0);
        assertThat(least.rule()).isEqualTo(rule);
        assertThat(least.outcome()).isEqualTo(outcome);
        assertThat(least.place()).isEqualTo("top");
    }

    /** Least gap 0.350: what is to be filed off, what to, and whether the ring as it was made would do in a finished hole. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            RING FROM, FILE,  U,     FILED OFF, FILE TO, AS MADE
            0.350,     0.100, 0,     ,          ,        IN
            0.349999,  0.100, 0,     0.000001,  0.350,   OUT
            0.250,     0.100, 0,     0.100,     0.350,   OUT
            0.249999,  0.100, 0,     0.100001,  ,        OUT
            0.200,     0,     0,     ,          ,        OUT
            0.356283,  0.100, 0.002, 0,         0.350,   TOO_CLOSE
            0.343717,  0.100, 0.002, 0.006283,  0.350,   TOO_CLOSE
            0.343716,  0.100, 0.002, 0.006284,  0.350,   OUT
            """)
    void whatIsFiledOffOpensTheGapToTheLeast(
            Length from, Length file, Length uncertainty, Length filedOff, Length fileTo, Outcome asMade) {
        Limits hole = Limits.exactly(mm("70.000"));
        RingShape ring = ring(new Limits(from, mm("0.500")), file);
        Comparison least = RingGap.check(hole, worth(uncertainty), ring, TOP).get(0);

        assertThat(Optional.of(least)
                        .filter(check -> check.rule() == Rule.RING_GAP_TO_FILE)
                        .map(check -> nm(check.value().units())))
                .isEqualTo(Optional.ofNullable(filedOff));
        assertThat(RingGap.fileTo(hole, Length.ZERO, worth(uncertainty), ring, TOP)
                        .map(Limits::least))
                .isEqualTo(Optional.ofNullable(fileTo));
        assertThat(RingGap.checkFiled(hole, worth(uncertainty), ring, TOP, false))
                .extracting(Check::rule, Check::place, Check::outcome)
                .containsExactly(Rule.RING_FILED, "top", asMade);
        assertThat(RingGap.checkFiled(hole, worth(uncertainty), ring, TOP, true))
                .extracting(Check::rule, Check::place, Check::outcome)
                .containsExactly(Rule.RING_FILED, "top", Outcome.IN);
    }

    /**
     * Least gap 0.350, greatest 0.600. A ring filed to the least at the narrowest place is wider by π for each unit that the hole widens,
     * and so must be filed to no more than that below the greatest: by hand, 0.010 · π = 0.031416, 0.079577 · π = 0.249998,
     * 0.079578 · π = 0.250001.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            RING FROM, TO,    WIDENS,   FROM,  TO,       AT THE WIDEST, OUTCOME
            0.300,     0.400, 0,        0.350, 0.600000, 0.400000,      IN
            0.300,     0.400, 0.010,    0.350, 0.568584, 0.431416,      IN
            0.260,     0.340, 0.010,    0.350, 0.568584, 0.381416,      IN
            0.300,     0.300, 0.079577, 0.350, 0.350001, 0.599999,      IN
            0.300,     0.300, 0.079578, ,      ,         0.600002,      OUT
            0.350,     0.400, 0.010,    ,      ,         0.431416,      IN
            """)
    void aFiledRingIsAsWideAtTheWidestAsItsHoleWidens(
            Length from, Length to, Length widens, Length least, Length most, Length widest, Outcome outcome) {
        Limits hole = new Limits(mm("70.000"), mm("70.000").plus(widens));
        RingShape ring = ring(new Limits(from, to), mm("0.100"));

        assertThat(RingGap.fileTo(hole, widens, worth(Length.ZERO), ring, TOP))
                .isEqualTo(Optional.ofNullable(least).map(narrowest -> new Limits(narrowest, most)));
        Comparison greatest =
                RingGap.checkInHole(hole, worth(Length.ZERO), ring, TOP).get(1);
        assertThat(nm(greatest.value().units())).isEqualTo(widest);
        assertThat(greatest.outcome()).isEqualTo(outcome);
        assertThat(RingGap.check(hole, worth(Length.ZERO), ring, TOP).get(1).value())
                .as("of whichever hole of that range, each ring filed in its own")
                .isEqualTo(RingGap.check(Limits.exactly(hole.greatest()), worth(Length.ZERO), ring, TOP)
                        .get(1)
                        .value());
    }

    /** A hole uncertain by 0.002 mm leaves the gap uncertain by 0.006284: filed to the most of it the ring is proven not too wide. */
    @Test
    void whatIsFiledToTheMostIsProvenStill() {
        Limits hole = limits("70.000", "70.010");
        RingShape ring = ring(limits("0.300", "0.400"), mm("0.100"));

        assertThat(RingGap.fileTo(hole, hole.width(), worth(mm("0.002")), ring, TOP))
                .contains(new Limits(mm("0.350"), mm("0.562300")));
    }

    @Property
    boolean aLargerHoleNeverHasASmallerGap(
            @ForAll @LongRange(min = 69_900_000, max = 71_100_000) long hole,
            @ForAll @LongRange(min = 0, max = 500_000) long larger) {
        RingShape ring = ring(limits("0.400", "0.550"), Length.ZERO);
        Limits small = RingGap.in(Limits.exactly(nm(hole)), ring);
        Limits large = RingGap.in(Limits.exactly(nm(hole + larger)), ring);
        return !large.least().isLessThan(small.least()) && !large.greatest().isLessThan(small.greatest());
    }

    @Property
    boolean aLargerHoleNeverTurnsTheLeastGapWorseAndNeverTheGreatestBetter(
            @ForAll @LongRange(min = 69_900_000, max = 70_100_000) long hole,
            @ForAll @LongRange(min = 0, max = 50_000) long larger,
            @ForAll @LongRange(min = 0, max = 150_000) long file,
            @ForAll @LongRange(min = 0, max = 10_000) long uncertainty) {
        RingShape ring = ring(limits("0.300", "0.550"), nm(file));
        List<Comparison> small = RingGap.check(Limits.exactly(nm(hole)), worth(nm(uncertainty)), ring, TOP);
        List<Comparison> large = RingGap.check(Limits.exactly(nm(hole + larger)), worth(nm(uncertainty)), ring, TOP);
        return isNoWorse(large.get(0), small.get(0)) && isNoWorse(small.get(1), large.get(1));
    }

    @Property
    boolean inItsOwnGaugeARingHasItsOwnGap(
            @ForAll @LongRange(min = 0, max = 2_000_000) long least,
            @ForAll @LongRange(min = 0, max = 500_000) long width) {
        Limits gap = new Limits(nm(least), nm(least + width));
        return RingGap.in(Limits.exactly(mm("70.000")), ring(gap, Length.ZERO)).equals(gap);
    }

    /** In a worn hole the gap of the right ring is judged alike, and only what to do about a wide one differs. */
    @Property
    boolean aWornHoleIsJudgedAlike(@ForAll @LongRange(min = 69_800_000, max = 70_400_000) long hole) {
        RingShape ring = ring(limits("0.300", "0.550"), Length.ZERO);
        List<Comparison> finished = RingGap.check(Limits.exactly(nm(hole)), worth(nm(5_000)), ring, TOP);
        List<Comparison> worn = RingGap.checkInService(Limits.exactly(nm(hole)), worth(nm(5_000)), ring, TOP);
        return worn.get(0).equals(finished.get(0))
                && worn.get(1).rule() == Rule.SERVICE_RING_GAP
                && worn.get(1).margin() == finished.get(1).margin()
                && worn.get(1).uncertainty() == finished.get(1).uncertainty();
    }

    private static boolean isNoWorse(Comparison one, Comparison other) {
        List<Decision> rising = List.of(Decision.OUT, Decision.TOO_CLOSE, Decision.IN);
        return rising.indexOf(Decision.of(one.margin(), one.uncertainty()))
                >= rising.indexOf(Decision.of(other.margin(), other.uncertainty()));
    }

    private static List<Outcome> outcomes(Limits gap, Length file, Length uncertainty) {
        return check(gap, file, uncertainty).stream().map(Comparison::outcome).toList();
    }

    private static List<Comparison> check(Limits gap, Length file, Length uncertainty) {
        return RingGap.check(Limits.exactly(mm("70.000")), worth(uncertainty), ring(gap, file), TOP);
    }
}
