package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.CloserReading.Better;
import org.borewright.fit.CloserReading.What;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.Uncertainty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchPlanTest {

    private final TwinBench bench = new TwinBench();

    @Test
    void eachHoleIsHonedToItsOwnPiston() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.4445", "70.4455"), "-", "-");

        assertThat(plan.readiness()).isEqualTo(Readiness.READY);
        assertThat(plan.holes())
                .extracting(hole -> hole.piston().orElseThrow().tag())
                .containsExactly("A", "B");
        assertThat(plan.holes())
                .extracting(hole -> hole.honeTo().orElseThrow())
                .containsExactly(mm("70.5045"), mm("70.5055"));
        assertThat(plan.holes())
                .extracting(hole -> hole.boreTo().orElseThrow())
                .containsExactly(mm("70.4545"), mm("70.4555"));
        Length together = Uncertainty.ofApart(bench.ofHole(mm("70.5045")), TwinBench.ofPiston(mm("70.4445")));
        assertThat(plan.holes().get(0).uncertainty()).isEqualTo(together);
        assertThat(plan.holes().get(0).window())
                .contains(new Limits(mm("70.4845").plus(together), mm("70.5445").minus(together)));
    }

    @Test
    void noTwoReadinessesAreToldAlike() {
        assertThat(Readiness.values()).extracting(Readiness::label).doesNotHaveDuplicates();
    }

    /** The bar stops for the smallest piston of 70.440; the window is what the largest of 70.450 and the smallest leave. */
    @Test
    void withoutPistonsThePlanIsProvisionalAndLosesNothing() {
        BenchPlan plan = bench.plan(List.of(), "-", "-");

        assertThat(plan.readiness()).isEqualTo(Readiness.PROVISIONAL);
        assertThat(plan.holes()).extracting(hole -> hole.boreTo().orElseThrow()).containsOnly(mm("70.450"));
        assertThat(plan.holes()).allMatch(hole -> hole.honeTo().isEmpty());
        Length ofHole = bench.ofHole(mm("70.500"));
        assertThat(plan.holes().get(1).window())
                .contains(new Limits(mm("70.490").plus(ofHole), mm("70.540").minus(ofHole)));
    }

    @Test
    void aHoleWithoutItsMeasuredPistonKeepsThePlanProvisional() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445"), "-", "-");

        assertThat(plan.readiness()).isEqualTo(Readiness.PROVISIONAL);
        assertThat(plan.holes()).extracting(hole -> hole.piston().isPresent()).containsExactly(true, false);
    }

    @Test
    void pistonsThatGoNowhereAreSpare() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.446", "70.447"), "-", "-");

        assertThat(plan.spare()).extracting(PistonInHand::tag).containsExactly("C");
    }

    /** 9 before 10, as a machinist counts. */
    @Test
    void pistonsStandInTheOrderOfTheirTags() {
        List<PistonReading> pistons = List.of("10", "B", "9", "11").stream()
                .map(tag -> bench.piston(tag, "P-050", mm("70.445"), Optional.empty()))
                .toList();

        assertThat(bench.plan(pistons, "-", "-").pistons())
                .extracting(PistonInHand::tag)
                .containsExactly("9", "B", "10", "11");
    }

    /** Tolerance 70.440 to 70.450, U of a micrometer 0.004 100 and a little: less than 70.390 is no reading across the thrust faces. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            NUMBER, DIAMETER,  HOLD
            P-050,  70.389999, PISTON_MISREAD
            P-050,  70.390,    PISTON_OUT_OF_TOLERANCE
            P-050,  70.435,    PISTON_OUT_OF_TOLERANCE
            P-050,  70.437,    PISTON_OPEN
            P-050,  70.445,
            P-050,  70.453,    PISTON_OPEN
            P-050,  70.455,    PISTON_OUT_OF_TOLERANCE
            P-025,  70.195,    WRONG_PISTON
            """)
    void aPistonThatIsProvenWrongIsRefused(String number, String diameter, Reason reason) {
        BenchPlan plan = bench.plan(bench.pistons(number, diameter), "-", "-");

        assertThat(plan.holds()).extracting(BenchHold::reason).isEqualTo(reason == null ? List.of() : List.of(reason));
        assertThat(plan.holes().get(0).piston().isPresent()).isEqualTo(reason == null || reason == Reason.PISTON_OPEN);
        assertThat(plan.readiness())
                .isEqualTo(
                        reason == null
                                ? Readiness.PROVISIONAL
                                : reason == Reason.PISTON_OPEN ? Readiness.TOO_CLOSE : Readiness.HOLD);
    }

    /** Least 70.440: within U of it the better gauge is named, and what is honed to does not change. */
    @Test
    void aPistonTooCloseToCallNamesItsGaugeAndKeepsItsHole() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.444", "70.445"), "-", "-");

        assertThat(plan.readiness()).isEqualTo(Readiness.TOO_CLOSE);
        assertThat(plan.holds()).extracting(BenchHold::pistons).containsExactly(List.of("A"));
        assertThat(((Comparison) plan.holds().get(0).checks().get(0)).closer())
                .contains(new Better(What.CALIBRATION, false, mm("0.002862")));
        assertThat(plan.holes().get(0).honeTo()).contains(mm("70.504"));
    }

    @Test
    void aSparePistonTooCloseToCallStandsInNobodysWay() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445", "70.441"), "-", "-");

        assertThat(plan.spare()).extracting(PistonInHand::tag).containsExactly("C");
        assertThat(plan.readiness()).isEqualTo(Readiness.READY);
    }

    @Test
    void nothingIsComputedFromAPistonReadAmiss() {
        PistonInHand piston =
                bench.plan(bench.pistons("P-050", "70.3"), "-", "-").pistons().get(0);

        assertThat(piston.checks()).extracting(Check::rule).containsExactly(Rule.PISTON_PART, Rule.PISTON_READING);
    }

    /** 2 g at the most. */
    @ParameterizedTest
    @CsvSource({
        "200000, 202000, false",
        "202000, 200000, false",
        "200000, 202001, true",
        "198999, , true",
        "199000, , false",
        "200000, , false"
    })
    void whatWasWeighedCountsAndWhatWasNotCountsAsItsNumberAllows(long first, Long second, boolean apart) {
        List<PistonReading> pistons = List.of(
                bench.piston("A", "P-050", mm("70.445"), Optional.of(first)),
                bench.piston("B", "P-050", mm("70.445"), Optional.ofNullable(second)));

        assertThat(bench.plan(pistons, "-", "-").holds())
                .extracting(BenchHold::reason)
                .isEqualTo(apart ? List.of(Reason.MASSES_APART) : List.of());
    }

    /**
     * Piston 70.445, greatest clearance 0.100: clean at 0.005 above its largest reading the hole may have 70.545. The offset is from
     * where that is reached, in steps of U, and one nanometre to each side.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            TIMES U, BESIDE, HOLD
            -1,      0,
            -1,      1,      CHECK_OPEN
            0,       0,      CHECK_OPEN
            1,       -1,     CHECK_OPEN
            1,       0,      PAST_WINDOW
            """)
    void aHolePastItsWindowStopsTheWork(int times, long beside, Reason reason) {
        Length limit = mm("70.540");
        Length together = Uncertainty.ofApart(bench.ofHole(limit), TwinBench.ofPiston(mm("70.445")));
        Length largest = limit.plus(together.times(times)).plus(Length.ofNanometres(beside));
        String typed = largest.toString().replace(" mm", "");

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), typed, "70.440");

        assertThat(plan.holds()).extracting(BenchHold::reason).isEqualTo(reason == null ? List.of() : List.of(reason));
        assertThat(plan.next().isPresent()).isEqualTo(reason == Reason.PAST_WINDOW);
    }

    @ParameterizedTest
    @CsvSource({"WORN, POSSIBLE", "FINISHED, CERTAIN"})
    void theNextSizeThatHoldsEveryHoleWouldSaveIt(Condition condition, Certainty certainty) {
        bench.condition = condition;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "70.560", "70.505");

        assertThat(plan.next().orElseThrow().size().label()).isEqualTo("+0.75");
        assertThat(plan.next().orElseThrow().certainty()).isEqualTo(certainty);
        assertThat(plan.holes().get(0).work()).isEqualTo(Work.AS_IS);
        assertThat(plan.holes().get(0).honeTo()).isEmpty();
    }

    @Test
    void beyondTheLastSizeNothingSavesIt() {
        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "71.2", "70.4");

        assertThat(plan.holds()).extracting(BenchHold::reason).containsExactly(Reason.PAST_LAST_SIZE);
        assertThat(plan.next()).isEmpty();
    }

    /** Without a measured piston a hole is too large only if it is so for the largest of 70.450. */
    @ParameterizedTest
    @CsvSource({"70.520, false", "70.543, false", "70.560, true"})
    void anUnmeasuredPistonCondemnsNoHoleThatAnotherMaySave(String largest, boolean past) {
        BenchPlan plan = bench.plan(List.of(), largest, "-");

        assertThat(plan.holds().stream().anyMatch(hold -> hold.reason() == Reason.PAST_WINDOW))
                .isEqualTo(past);
    }

    /** Hone to 70.505; the bar leaves 0.05 and needs something to cut, proven. A hole past the target is honed until it is clean. */
    @ParameterizedTest
    @CsvSource({
        "70.300, REBORE, 70.455, 70.505",
        "70.453, HONE_ONLY, , 70.505",
        "70.500, HONE_ONLY, , 70.505",
        "70.510, HONE_ONLY, , 70.515"
    })
    void whatIsLeftDecidesBetweenBarAndHone(String largest, Work work, Length boreTo, Length honeTo) {
        HolePlan hole = bench.plan(bench.pistons("P-050", "70.445", "70.445"), largest, "-")
                .holes()
                .get(0);

        assertThat(hole.work()).isEqualTo(work);
        assertThat(hole.boreTo()).isEqualTo(Optional.ofNullable(boreTo));
        assertThat(hole.honeTo()).contains(honeTo);
    }

    /** Least 0.040, target 0.060: 0.020 for both gauges together. */
    @Test
    void gaugesTooCoarseForTheTargetHoldAndNameTheOneThatIsNot() {
        bench.gauge = new Gauge(
                Gauge.Kind.BORE_GAUGE,
                Optional.empty(),
                new Gauge.Calibration(Optional.of(mm("0.025")), Optional.empty(), Optional.empty()),
                Optional.of(mm("0.001")),
                Length.ZERO,
                Optional.empty(),
                Gauge.Source.REQUEST);

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "-", "-");

        assertThat(plan.holds()).extracting(BenchHold::reason).containsExactly(Reason.TARGET_NOT_PROVEN);
        Comparison least = (Comparison) plan.holds().get(0).checks().get(0);
        assertThat(least.place()).isEqualTo("cylinder 1");
        assertThat(least.closer()).contains(new Better(What.CALIBRATION, false, mm("0.0195")));
    }

    /** Hole 1 has 70.515, hole 2 70.495: the larger piston belongs in the larger hole. */
    @Test
    void finishedHolesTakeThePistonsThatComeNearestToTarget() {
        bench.condition = Condition.FINISHED;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.441", "70.449"), "70.512", "70.502");

        assertThat(plan.readiness()).isEqualTo(Readiness.TOO_CLOSE);
        assertThat(plan.holes())
                .extracting(hole -> hole.piston().orElseThrow().tag())
                .containsExactly("B", "A");
        assertThat(plan.holes()).extracting(HolePlan::work).containsOnly(Work.AS_IS);
    }

    @Test
    void aFinishedHoleThatIsTooTightIsHonedFurther() {
        bench.condition = Condition.FINISHED;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "70.470", "70.505");

        assertThat(plan.holds()).isEmpty();
        assertThat(plan.holes()).extracting(HolePlan::work).containsExactly(Work.HONE_ONLY, Work.AS_IS);
        assertThat(plan.holes().get(0).honeTo()).contains(mm("70.505"));
    }

    @Test
    void aWallThatIsNeverCutHoldsWhereItIsTooTight() {
        bench.condition = Condition.FINISHED;
        bench.shop.construction = Construction.PLATED;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "70.470", "70.505");

        assertThat(plan.holds()).extracting(BenchHold::reason).contains(Reason.SIZE_BLOCKED, Reason.CHECK_OUT);
    }

    @Test
    void aHoldSaysWhereItStands() {
        assertThat(bench.plan(bench.pistons("P-050", "70.3"), "71.2", "-").holds())
                .extracting(BenchHold::says)
                .containsExactly(
                        "A piston reads far too small, as if across the pin or at the wrong height: reading of the piston; piston A.",
                        "A hole is too large for its piston, the work stops, and no larger size that is offered would save it: greatest clearance; cylinder 1.");
    }

    @ParameterizedTest
    @CsvSource({"20, 25, false", "20, 25.001, true", "26, 20.5, true", "26, 21, false"})
    void aWarmPistonAgainstAColdHoleIsACaution(BigDecimal hole, BigDecimal piston, boolean caution) {
        bench.ofHoles = at(hole);
        BenchRequest request = bench.request(
                bench.pistons("P-050", "70.445"),
                TwinShop.surveys("-", "-"),
                new Measuring(Gauge.Kind.MICROMETER.usual(), at(piston)));

        assertThat(BenchPlan.of(bench.fits(), request).cautions().contains(Caution.MEASURED_WARM_APART))
                .isEqualTo(caution);
    }

    /** 70.445 mm at 30 °C with 19.4 × 10⁻⁶ /K is 70.431 336 at 20 °C; with the wall's 11.4 it would be 70.436 970. */
    @Test
    void aPistonIsCorrectedWithItsOwnAlloy() {
        BenchRequest request = bench.request(
                bench.pistons("P-050", "70.445"),
                TwinShop.surveys("-", "-"),
                new Measuring(Gauge.Kind.MICROMETER.usual(), at(new BigDecimal("30"))));

        assertThat(BenchPlan.of(bench.fits(), request).pistons().get(0).diameter())
                .isEqualTo(mm("70.431336"));
    }

    private static Climate at(BigDecimal celsius) {
        return Climate.at(Temperature.parse(celsius, Temperature.Scale.CELSIUS));
    }
}
