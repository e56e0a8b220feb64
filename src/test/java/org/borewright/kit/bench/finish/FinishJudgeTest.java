package org.borewright.kit.bench.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.RingGap;
import org.borewright.fit.Rule;
import org.borewright.fit.ShapeShown;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.RingShape;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.QueriedGrid;
import org.borewright.measure.survey.Survey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishJudgeTest {

    private final TwinFinish twin = new TwinFinish();

    /** In 70.504 to 70.506; nothing is computed from a piston that is read amiss, and what one beyond its tolerance gives is still told. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            PISTON, LEAST, GREATEST, OUTCOME OF CLEARANCE
            70.300, ,      ,         UNKNOWN
            70.445, 0.059, 0.061,    IN IN
            70.460, 0.044, 0.046,    TOO_CLOSE IN
            """)
    void theClearanceIsToldOfAPistonThatIsBelieved(String piston, Length least, Length greatest, String outcomes) {
        JudgedHole hole = Finish.of(
                        twin.bench.fits(),
                        twin.request(
                                twin.bench.pistons("P-050", piston),
                                List.of(
                                        twin.fitted("1", TwinFinish.survey(TwinFinish.GOOD), "A"),
                                        twin.fitted("2", TwinFinish.survey(TwinFinish.GOOD_TOO), "")),
                                true))
                .holes()
                .get(0);

        assertThat(hole.clearance()).isEqualTo(Optional.ofNullable(least).map(known -> new Limits(known, greatest)));
        assertThat(hole.checks())
                .filteredOn(check -> check.rule() == Rule.CLEARANCE_LEAST || check.rule() == Rule.CLEARANCE_GREATEST)
                .extracting(check -> check.outcome().name())
                .containsExactly(outcomes.split(" ", -1));
    }

    @Test
    void everyRuleIsAskedOfAMeasuredHole() {
        JudgedHole hole = first(TwinFinish.survey(TwinFinish.GOOD), TwinFinish.GOOD_TOO);

        assertThat(hole.checks())
                .extracting(Check::rule)
                .containsExactly(
                        Rule.PISTON_PART,
                        Rule.CLEARANCE_LEAST,
                        Rule.CLEARANCE_GREATEST,
                        Rule.FINISHED_TAPER,
                        Rule.FINISHED_OUT_OF_ROUND,
                        Rule.RING_GAP_LEAST,
                        Rule.RING_GAP_GREATEST);
        RingShape ring = twin.bench.shop.rings.get(2).rings().get(0);
        assertThat(hole.ringGaps())
                .containsExactly(new RingGapIn(
                        TwinShop.no("R-050"),
                        "top",
                        RingGap.in(new Limits(mm("70.504"), mm("70.506")), ring),
                        Optional.empty()));
        assertThat(hole.shape()).isPresent();
    }

    /** The hole is 0.001 wider at one end than at the other; U of a difference is 0.000 817. */
    @ParameterizedTest(name = "{0} allowed: {1}")
    @CsvSource({"0.010, IN", "0.001817, IN", "0.0018, TOO_CLOSE", "0.0001, OUT"})
    void theEngineMakerSaysHowStraightAHoleIsToBe(Length allowed, Outcome taper) {
        twin.bench.shop.honedShape = allowed;

        assertThat(first(TwinFinish.survey(TwinFinish.GOOD), TwinFinish.GOOD_TOO)
                        .checks())
                .filteredOn(check -> check.rule() == Rule.FINISHED_TAPER)
                .extracting(Check::outcome)
                .containsExactly(taper);
    }

    /** What was read and is queried is not called unmeasured. */
    @Test
    void aHoleThatWasNotReadAndOneThatIsQueriedAreToldApart() {
        assertThat(unknown(first(new NotMeasured(), TwinFinish.GOOD_TOO)))
                .extracting(Unchecked::reason)
                .containsExactly(
                        "the hole was not measured",
                        ShapeShown.TOO_LITTLE_READ,
                        ShapeShown.TOO_LITTLE_READ,
                        "the hole was not measured");
        JudgedHole queried = first(TwinFinish.survey(TwinFinish.GOOD), TwinFinish.GOOD);
        assertThat(unknown(queried)).hasSize(4).extracting(Unchecked::reason).containsOnly(QueriedGrid.READ_AGAIN);
        assertThat(queried.ringGaps()).isEmpty();
        assertThat(queried.clearance()).isEmpty();
        assertThat(queried.shape()).isEmpty();
    }

    @Test
    void withoutARingSetNoHolePasses() {
        twin.ringsNamed = false;

        JudgedHole hole = first(TwinFinish.survey(TwinFinish.GOOD), TwinFinish.GOOD_TOO);

        assertThat(hole.judgement()).isEqualTo(Judgement.HOLD);
        assertThat(unknown(hole)).extracting(Unchecked::rule).containsExactly(Rule.RING_GAP_LEAST);
        assertThat(hole.ringGaps()).isEmpty();
    }

    /** The groove wants 0.200 at the least, a hole of 70.504 leaves the ring 0.0126 more than in its gauge, uncertain by about 0.017. */
    @ParameterizedTest(name = "a ring of {0} of which {1} may be filed off, filed: {2}")
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            AS MADE, ALLOWED, FILED, JUDGEMENT, HELD,               FILE TO
            0.150,   0.254,   false, HOLD,      RINGS_NOT_FILED,    0.200
            0.150,   0.254,   true,  PASS,      ,                   0.200
            0.190,   0.254,   false, HOLD,      RINGS_NOT_FILED,    0.200
            0.190,   0.254,   true,  PASS,      ,                   0.200
            0.300,   0.254,   false, PASS,      ,
            """)
    void aRingThatIsToBeFiledPassesOnTheWordOfWhoeverFiledIt(
            Length made, Length allowed, boolean filed, Judgement judgement, Reason held, Length fileTo) {
        twin.bench.shop.gapOfRings("+0.50", made, allowed);
        twin.ringsFiled = filed;

        Finish finish = twin.judge(true, TwinFinish.GOOD, TwinFinish.GOOD_TOO);

        assertThat(finish.judgement()).isEqualTo(judgement);
        assertThat(finish.holds())
                .extracting(BenchHold::reason)
                .containsExactlyElementsOf(Optional.ofNullable(held).stream().toList());
        assertThat(finish.holes().get(0).ringGaps())
                .extracting(gap -> gap.fileTo().map(Limits::least))
                .containsExactly(Optional.ofNullable(fileTo));
    }

    private JudgedHole first(Survey first, String second) {
        return twin.judge(true, first, TwinFinish.survey(second)).holes().get(0);
    }

    private static List<Unchecked> unknown(JudgedHole hole) {
        return hole.ended(Outcome.UNKNOWN).stream().map(Unchecked.class::cast).toList();
    }
}
