package org.borewright.kit.bench.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.PistonReading;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Survey;

/** What holds of every judgement, whatever the readings. */
class FinishProperties {

    private final TwinFinish twin = new TwinFinish();

    /** Each hole keeps its own piston; the tags stay with the pistons, in whatever order those are sent. */
    @Property(tries = 200)
    void theOrderOfTheCylindersDoesNotMatter(
            @ForAll @Size(6) List<@LongRange(min = 70_498_000, max = 70_514_000) Long> one,
            @ForAll @Size(6) List<@LongRange(min = 70_498_000, max = 70_514_000) Long> other,
            @ForAll @LongRange(min = 70_385_000, max = 70_460_000) long inOne,
            @ForAll @LongRange(min = 70_385_000, max = 70_460_000) long inOther) {
        PistonReading a = piston("A", inOne);
        PistonReading b = piston("B", inOther);
        Finish asCounted = judge(List.of(a, b), twin.fitted("1", grid(one), "A"), twin.fitted("2", grid(other), "B"));
        Finish swapped = judge(List.of(b, a), twin.fitted("1", grid(other), "B"), twin.fitted("2", grid(one), "A"));

        assertThat(swapped.judgement()).isEqualTo(asCounted.judgement());
        assertThat(swapped.pistons()).isEqualTo(asCounted.pistons());
        assertThat(swapped.checks()).isEqualTo(asCounted.checks());
        assertThat(swapped.cautions()).isEqualTo(asCounted.cautions());
        assertThat(swapped.holds().stream().map(BenchHold::reason))
                .containsExactlyElementsOf(
                        asCounted.holds().stream().map(BenchHold::reason).toList());
        for (int i = 0; i < 2; i++) {
            JudgedHole there = swapped.holes().get(1 - i);
            JudgedHole here = asCounted.holes().get(i);
            assertThat(there.judgement()).isEqualTo(here.judgement());
            assertThat(there.piston()).isEqualTo(here.piston());
            assertThat(there.clearance()).isEqualTo(here.clearance());
            assertThat(there.shape()).isEqualTo(here.shape());
            assertThat(there.ringGaps()).isEqualTo(here.ringGaps());
            assertThat(there.checks()).isEqualTo(here.checks());
        }
    }

    private PistonReading piston(String tag, long nanometres) {
        return twin.bench.piston(tag, "P-050", Length.ofNanometres(nanometres), Optional.empty());
    }

    private static Survey grid(List<Long> nanometres) {
        return Grids.crosswise(nanometres.stream().map(Length::ofNanometres).toList());
    }

    private Finish judge(List<PistonReading> pistons, FittedHole first, FittedHole second) {
        return Finish.of(twin.bench.fits(), twin.request(pistons, List.of(first, second), true));
    }
}
