package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.RingGap;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.RingShape;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One hole of the twin for a piston of +0.50: 70.440 to 70.450, clearance 0.040, 0.060, 0.100. */
class HolePlannerTest {

    private final TwinBench bench = new TwinBench();

    /** A hole that is to be cut need not be measured before; one that runs as it is or not at all must be. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({"WORN, IRON_BARREL, false", "FINISHED, IRON_BARREL, true", "WORN, PLATED, true"})
    void aHoleThatIsLeftAsItIsMustBeMeasured(Condition condition, Construction construction, boolean held) {
        bench.condition = condition;
        bench.shop.construction = construction;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "-", "-");

        assertThat(plan.holds().stream().anyMatch(hold -> hold.reason() == Reason.CHECK_UNKNOWN))
                .isEqualTo(held);
        assertThat(plan.readiness() == Readiness.READY).isNotEqualTo(held);
    }

    /** The target lies 0.020 above the least: a hole known to 0.020 can be proven there with whatever piston comes, and to no more. */
    @ParameterizedTest(name = "gauge of {0}: {1}")
    @CsvSource({
        "0.019, PROVISIONAL, ''",
        "0.019935, PROVISIONAL, ''",
        "0.019936, HOLD, TARGET_NOT_PROVEN",
        "0.020, HOLD, TARGET_NOT_PROVEN",
        "0.050, HOLD, TARGET_NOT_PROVEN"
    })
    void aGaugeTooCoarseForAnyPistonStopsTheWorkBeforeOneIsMeasured(
            Length uncertainty, Readiness readiness, String reason) {
        bench.gauge = new Gauge(
                Gauge.Kind.BORE_GAUGE,
                Optional.empty(),
                new Gauge.Calibration(Optional.of(uncertainty), Optional.empty(), Optional.empty()),
                Optional.of(Length.ZERO),
                Length.ZERO,
                Optional.empty(),
                Gauge.Source.REQUEST);

        BenchPlan plan = bench.plan(List.of(), "-", "-");

        assertThat(plan.readiness()).isEqualTo(readiness);
        assertThat(plan.holds())
                .extracting(hold -> hold.reason().name())
                .isEqualTo(reason.isEmpty() ? List.of() : List.of(reason));
    }

    /** The bar may go first; what to hone to only the measured piston tells. */
    @Test
    void whatToHoneToWaitsForThePiston() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445"), "-", "-");

        assertThat(plan.holes())
                .extracting(HolePlan::boreTo)
                .containsExactly(Optional.of(mm("70.455")), Optional.of(mm("70.450")));
        assertThat(plan.holes())
                .extracting(HolePlan::honeTo)
                .containsExactly(Optional.of(mm("70.505")), Optional.empty());
    }

    /** The bar goes to 70.455 where U more is left; the hone alone follows the hole and takes out what it must. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({"WORN, 70.110, true", "WORN, 70.470, false", "FINISHED, 70.110, false"})
    void thatWornHolesComeCleanUnderTheBarIsForAMatchToProve(Condition condition, String diameter, boolean told) {
        bench.condition = condition;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), diameter, diameter);

        assertThat(plan.cautions().contains(Caution.CLEAN_UP_NOT_ASKED)).isEqualTo(told);
    }

    /**
     * Targets of 70.504 and 70.507. A hole is honed at least 0.005 beyond its largest reading: while that reaches no target the first piston
     * goes first; one nanometre beyond, the larger piston spares hole 1 what hole 2 does not need.
     */
    @ParameterizedTest
    @CsvSource({
        "70.499,    70.495, A, B",
        "70.499001, 70.495, B, A",
        "70.503,    70.500, B, A",
        "70.500,    70.503, A, B"
    })
    void aPistonIsJudgedByTheHoleThatIsHonedForIt(String first, String second, String one, String other) {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.444", "70.447"), first, second);

        assertThat(tags(plan)).containsExactly(one, other);
    }

    /** Targets of 70.501 and 70.509: a bar would come to both, but a hole that stays as it is must have the nearer. */
    @ParameterizedTest
    @CsvSource({"WORN, IRON_BARREL, A, B", "FINISHED, IRON_BARREL, B, A", "WORN, PLATED, B, A"})
    void aHoleThatStaysAsItIsHasThePistonNearestToIt(
            Condition condition, Construction construction, String one, String other) {
        bench.condition = condition;
        bench.shop.construction = construction;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.441", "70.449"), "70.495", "70.485");

        assertThat(tags(plan)).containsExactly(one, other);
    }

    /**
     * Finished, for pistons of 70.441 and 70.449. A hole too tight for both is cut for either, so that the other has the piston nearest to
     * it; one too tight only for the larger is spared the hone, though both would come to target by it.
     */
    @ParameterizedTest
    @CsvSource({
        "70.502, 70.430, A, B, AS_IS, REBORE",
        "70.508, 70.430, B, A, AS_IS, REBORE",
        "70.430, 70.502, B, A, REBORE, AS_IS",
        "70.501, 70.480, B, A, AS_IS, AS_IS"
    })
    void aFinishedHoleTooTightCountsAsWhatItWillBe(
            String first, String second, String one, String other, Work ofFirst, Work ofSecond) {
        bench.condition = Condition.FINISHED;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.441", "70.449"), first, second);

        assertThat(tags(plan)).containsExactly(one, other);
        assertThat(plan.holes()).extracting(HolePlan::work).containsExactly(ofFirst, ofSecond);
    }

    /** Smaller than the piston. */
    @ParameterizedTest
    @CsvSource({"IRON_BARREL, REBORE, false", "PLATED, AS_IS, true"})
    void aWornHoleThatIsNeverCutIsHeldAgainstItsClearance(Construction construction, Work work, boolean held) {
        bench.shop.construction = construction;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "70.430", "70.420");

        assertThat(plan.holes()).extracting(HolePlan::work).containsOnly(work);
        assertThat(plan.holds().stream().anyMatch(hold -> hold.reason() == Reason.CHECK_OUT))
                .isEqualTo(held);
        assertThat(plan.holes().get(0).checks().stream()
                        .anyMatch(check -> check.place().equals("honed clean")))
                .isNotEqualTo(held);
    }

    /** One piston for two holes, each at its target or to be cut to it: a hole not measured is cut if it is worn, and not if it is finished. */
    @ParameterizedTest
    @CsvSource({
        "WORN,     70.110, -,      A, -",
        "WORN,     -,      70.110, A, -",
        "FINISHED, -,      70.505, A, -",
        "FINISHED, 70.430, -,      -, A"
    })
    void aHoleThatIsNotMeasuredIsCutWhereItIsWorn(
            Condition condition, String first, String second, String one, String other) {
        bench.condition = condition;

        assertThat(tags(bench.plan(bench.pistons("P-050", "70.445"), first, second)))
                .containsExactly(one, other);
    }

    @Test
    void aPistonGoesOnlyWhereItsHandAllows() {
        bench.shop.hands = List.of(Hand.LEFT, Hand.RIGHT);
        bench.shop.pistons.removeIf(made -> made.size().equals("+0.50"));
        bench.shop.pistons.addAll(List.of(handed("P-LEFT", Hand.LEFT), handed("P-RIGHT", Hand.RIGHT)));
        PistonReading right = bench.piston("A", "P-RIGHT", mm("70.445"), Optional.empty());
        PistonReading left = bench.piston("B", "P-LEFT", mm("70.445"), Optional.empty());

        assertThat(tags(bench.plan(List.of(right, left), "-", "-"))).containsExactly("B", "A");
        assertThat(tags(bench.plan(List.of(right), "-", "-"))).containsExactly("-", "A");
    }

    @Test
    void theRingGapsAreAskedAtBothEndsOfTheWindow() {
        HolePlan hole = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "-", "-")
                .holes()
                .get(0);
        RingShape ring = bench.shop.rings.get(2).rings().get(0);

        assertThat(hole.ringGaps())
                .containsExactly(new RingGapIn(
                        TwinShop.no("R-050"), "top", RingGap.in(hole.window().orElseThrow(), ring), Optional.empty()));
        assertThat(hole.checks())
                .extracting(Check::rule)
                .containsExactly(Rule.TARGET_LEAST, Rule.TARGET_GREATEST, Rule.RING_GAP_LEAST, Rule.RING_GAP_GREATEST);
    }

    /** A finished hole that nobody measured is not bored for want of a figure: it waits, and so does the engine. */
    @Test
    void aFinishedHoleThatNobodyMeasuredIsLeftAsItIs() {
        bench.condition = Condition.FINISHED;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "70.505", "-");

        assertThat(plan.readiness()).isEqualTo(Readiness.HOLD);
        assertThat(plan.holes()).extracting(HolePlan::work).containsOnly(Work.AS_IS);
        assertThat(plan.holes())
                .extracting(HolePlan::boreTo, HolePlan::honeTo)
                .containsOnly(tuple(Optional.empty(), Optional.empty()));
    }

    /** Of a ring that is to be filed the plan tells to what, and holds nothing: it is filed once its hole is honed. */
    @Test
    void aRingThatIsToBeFiledIsToldWithTheLeastGap() {
        bench.shop.gapOfRings("+0.50", mm("0.150"), mm("0.254"));

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "-", "-");

        assertThat(plan.readiness()).isEqualTo(Readiness.READY);
        assertThat(plan.holes())
                .flatExtracting(HolePlan::ringGaps)
                .extracting(gap -> gap.fileTo().map(Limits::least))
                .containsOnly(Optional.of(mm("0.200")))
                .hasSize(2);
    }

    private static Piston handed(String number, Hand hand) {
        Piston any = TwinShop.piston(number, "+0.50", "0.50", Optional.empty());
        return new Piston(any.number(), any.design(), any.size(), hand, any.grade(), any.shape());
    }

    private static List<String> tags(BenchPlan plan) {
        return plan.holes().stream()
                .map(hole -> hole.piston().map(PistonInHand::tag).orElse("-"))
                .toList();
    }
}
