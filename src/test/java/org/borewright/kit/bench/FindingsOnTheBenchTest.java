package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.fit.CommonPractice;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Finding.Kind;
import org.borewright.measure.survey.Finding.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Two holes for pistons of 70.445, the first with a finding: worn ones at 70.300, finished ones at target. */
class FindingsOnTheBenchTest {

    private final TwinBench bench = new TwinBench();

    /** A worn hole is still to be honed; a finished one at target is left as it is. */
    @ParameterizedTest
    @EnumSource
    void whatWasSeenHoldsByWhatItMeans(Kind kind) {
        Optional<Reason> held = reason(kind);
        boolean poor = kind.weight() == Weight.HONE;

        assertThat(reasons(plan(kind))).isEqualTo(held.stream().toList());
        bench.condition = Condition.FINISHED;
        assertThat(reasons(plan(kind)))
                .isEqualTo(poor ? List.of(Reason.FINISH_POOR) : held.stream().toList());
    }

    private static Optional<Reason> reason(Kind kind) {
        return switch (kind.weight()) {
            case COSMETIC, HONE -> Optional.empty();
            case MACHINABLE -> Optional.of(Reason.CLEAN_UP_NOT_JUDGED);
            case HOLD -> Optional.of(kind == Kind.SLEEVE_LOOSE ? Reason.SLEEVE_LOOSE : Reason.SMEARED_ALUMINIUM);
            case BEYOND_MACHINING -> Optional.of(Reason.BEYOND_MACHINING);
        };
    }

    /** Whatever else is seen in a cracked hole, the crack is all that counts of it. */
    @Test
    void aHoleBeyondMachiningIsNeverCut() {
        BenchPlan plan = plan(Kind.CRACKED, Kind.SCORED, Kind.SLEEVE_LOOSE);

        assertThat(reasons(plan)).containsExactly(Reason.BEYOND_MACHINING);
        assertThat(plan.holds().get(0).says()).isEqualTo("A cylinder is beyond machining: cylinder 1.");
        assertThat(plan.holes()).extracting(HolePlan::work).containsExactly(Work.AS_IS, Work.REBORE);
        assertThat(plan.holes().get(0).boreTo()).isEmpty();
        assertThat(plan.holes().get(0).honeTo()).isEmpty();
    }

    /** Plated, a poor surface is as far beyond the hone as a score is beyond the bar. */
    @ParameterizedTest
    @CsvSource({
        "FINISH_POOR, FINDING_NEVER_CUT",
        "SCORED, FINDING_NEVER_CUT",
        "CRACKED, BEYOND_MACHINING",
        "SMEARED_ALUMINIUM, SMEARED_ALUMINIUM",
        "STAIN,"
    })
    void aWallThatIsNeverCutIsNeverHonedForAFinding(Kind kind, Reason reason) {
        bench.condition = Condition.FINISHED;
        bench.shop.construction = Construction.PLATED;

        BenchPlan plan = plan(kind);

        assertThat(reasons(plan))
                .isEqualTo(reason == null ? List.of(Reason.SIZE_BLOCKED) : List.of(reason, Reason.SIZE_BLOCKED));
        assertThat(plan.holes()).extracting(HolePlan::work).containsOnly(Work.AS_IS);
    }

    /** Proven too tight, it is honed, and the hone settles its surface; too large, the work has stopped. */
    @ParameterizedTest
    @CsvSource({"70.470,", "70.505, FINISH_POOR", "70.560, PAST_WINDOW"})
    void thePoorSurfaceOfAFinishedHoleHoldsOnlyWhereItIsLeft(String diameter, Reason reason) {
        bench.condition = Condition.FINISHED;

        BenchPlan plan = bench.plan(
                bench.pistons("P-050", "70.445", "70.445"),
                List.of(
                        TwinShop.survey("1", diameter, seen(Kind.FINISH_POOR, Optional.empty())),
                        TwinShop.survey("2", "70.506")));

        assertThat(reasons(plan)).isEqualTo(reason == null ? List.of() : List.of(reason));
    }

    /**
     * A hole of 70.300 with a defect on one wall: honed clean at 70.300 + 2 × depth + 0.005, and the greatest its piston bears is 70.545, to
     * be exceeded by U. Past it no hone can help.
     */
    @ParameterizedTest
    @CsvSource({"0, true", "-0.000001, false"})
    void aDefectTooDeepForTheSizeStopsTheWork(Length beside, boolean past) {
        Length uncertain = together();
        Length depth = Length.ofNanometres((mm("70.545")
                                .plus(uncertain)
                                .minus(mm("70.300"))
                                .minus(CommonPractice.honeCleanUp())
                                .nanometres()
                        + 1)
                / 2);

        BenchPlan plan = bench.plan(
                bench.pistons("P-050", "70.445", "70.445"),
                List.of(
                        TwinShop.survey("1", "70.300", seen(Kind.SCORED, Optional.of(depth.plus(beside)))),
                        TwinShop.survey("2", "70.300")));

        assertThat(reasons(plan).contains(Reason.PAST_WINDOW)).isEqualTo(past);
        assertThat(reasons(plan)).contains(Reason.CLEAN_UP_NOT_JUDGED);
    }

    private Length together() {
        return Uncertainty.ofApart(bench.ofHole(mm("70.300")), TwinBench.ofPiston(mm("70.445")));
    }

    private BenchPlan plan(Kind... kinds) {
        String first = bench.condition == Condition.WORN ? "70.300" : "70.505";
        String second = bench.condition == Condition.WORN ? "70.300" : "70.506";
        Finding[] findings =
                Arrays.stream(kinds).map(kind -> seen(kind, Optional.empty())).toArray(Finding[]::new);
        return bench.plan(
                bench.pistons("P-050", "70.445", "70.445"),
                List.of(TwinShop.survey("1", first, findings), TwinShop.survey("2", second)));
    }

    private static Finding seen(Kind kind, Optional<Length> depth) {
        return new Finding(kind, depth, Optional.empty());
    }

    private static List<Reason> reasons(BenchPlan plan) {
        return plan.holds().stream().map(BenchHold::reason).toList();
    }
}
