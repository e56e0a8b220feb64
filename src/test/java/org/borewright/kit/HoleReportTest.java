package org.borewright.kit;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.Choke;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of one hole at the size that is named. The twin's stroke is 80 mm: half of it is read from 10 to 50 mm. */
class HoleReportTest {

    private static final String ROUND = "70.012 70.011 / 70.011 70.010 / 70.010 70.010 / 70.010 70.010 / 70.009 70.010";
    private static final String ROUND_ABOVE = "70.012 70.011 / 70.011 70.010 / 70.010 70.010";
    private static final String OVAL_ABOVE = "70.035 70.001 / 70.012 70.011 / 70.010 70.010";

    private final TwinShop shop = new TwinShop();

    private static CylinderSurvey hole(String name, String rows) {
        return new CylinderSurvey(name, Grids.grid(rows), Wall.UNKNOWN, List.of(), true);
    }

    private static String told(HoleReport report) {
        return report.checks().stream()
                .map(check -> check.rule() + " " + check.outcome())
                .collect(joining(", "));
    }

    private static String told(HoleReport report, Rule rule) {
        return report.checks().stream()
                .filter(check -> check.rule() == rule)
                .map(Check::outcome)
                .map(Outcome::name)
                .collect(joining(", "));
    }

    /** The hole is bored, so that clean-up and wall are asked; it runs as it is, so that its clearance and its gap are. */
    @ParameterizedTest(name = "{0} {1} {2}: {3}")
    @CsvSource({
        "IRON_BARREL, WORN, 70.110, 'CLEAN_UP IN, WALL_LEFT IN'",
        "IRON_BARREL, WORN, 69.980, 'CLEAN_UP IN, WALL_LEFT IN'",
        "PLATED, WORN, 70.010, 'WALL_LEFT IN, CLEARANCE_LEAST IN, CLEARANCE_GREATEST IN, RING_GAP_LEAST IN, RING_GAP_GREATEST IN, "
                + "SERVICE_TAPER NOT_CHECKED, SERVICE_OUT_OF_ROUND NOT_CHECKED'",
        "IRON_BARREL, FINISHED, 70.010, 'WALL_LEFT IN, CLEARANCE_LEAST IN, CLEARANCE_GREATEST IN, RING_GAP_LEAST IN, "
                + "RING_GAP_GREATEST IN, FINISHED_TAPER NOT_CHECKED, FINISHED_OUT_OF_ROUND NOT_CHECKED'",
    })
    void whatIsAskedFollowsWhatBecomesOfTheHole(
            Construction construction, Condition condition, String diameter, String asked) {
        shop.construction = construction;

        Match match = shop.ask(shop.request(condition, "standard", TwinShop.surveys(diameter, diameter)));

        assertThat(match.holes()).extracting(HoleReportTest::told).containsExactly(asked, asked);
    }

    /** Finished holes that are asked for at +0.50 are bored again: by their own reading, and not by that of a worn wall. */
    @Test
    void aFinishedHoleThatIsBoredAgainIsCleanedUp() {
        Match match = shop.ask(Requests.asking(
                shop.request(Condition.FINISHED, "", TwinShop.surveys("70.010", "70.480")), shop.size("+0.50")));

        assertThat(match.holes())
                .extracting(report -> told(report, Rule.CLEAN_UP))
                .containsExactly("IN", "IN");
    }

    /** What the hone would have left does not matter to the bar, and what is seen in the hole does: 70.010 and twice 0.08 deep for 70.450. */
    @Test
    void aFinishedHoleThatIsBoredAgainIsAskedForNoShapeAndClearsWhatWasFound() {
        CylinderSurvey oval = new CylinderSurvey(
                "1",
                Grids.grid("70.010 69.980 / 70.010 69.980 / 70.010 69.980"),
                Wall.UNKNOWN,
                List.of(new Finding(Finding.Kind.SCORED, Optional.of(TwinShop.mm("0.08")), Optional.empty())));

        Match match = shop.ask(Requests.asking(
                shop.request(Condition.FINISHED, "", List.of(oval, TwinShop.survey("2", "70.010"))),
                shop.size("+0.50")));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.SERVES);
        assertThat(match.holes().get(0).checks())
                .extracting(Check::rule)
                .doesNotContain(Rule.FINISHED_TAPER, Rule.FINISHED_OUT_OF_ROUND);
        assertThat(match.holes().get(0).checks().stream()
                        .filter(check -> check.rule() == Rule.CLEAN_UP)
                        .map(check ->
                                Length.ofNanometres(((Comparison) check).value().units())))
                .containsExactly(TwinShop.mm("70.170"));
    }

    /**
     * A ring that is closed to 0.30 to 0.45 mm at its bore has π times the difference more: the holes of +0.50 lie from 70.480 to 70.550, and
     * of standard as it is at 70.010.
     */
    @ParameterizedTest(name = "{0} {1}: {2} to {3}")
    @CsvSource({
        "IRON_BARREL, 70.110, 0.237168, 0.607080",
        "PLATED, 70.010, 0.331415, 0.481416",
    })
    void aGapIsThatOfTheHoleThatTheRingWillRunIn(
            Construction construction, String diameter, Length least, Length greatest) {
        shop.construction = construction;

        Match match = shop.worn("standard", diameter, diameter);

        assertThat(match.holes())
                .flatExtracting(HoleReport::ringGaps)
                .extracting(RingGapIn::groove, RingGapIn::gap, RingGapIn::fileTo)
                .containsOnly(tuple("top", new Limits(least, greatest), Optional.empty()))
                .hasSize(2);
    }

    /** The groove wants 0.200 mm, and the narrowest hole of +0.50 closes the ring of 0.254 to 0.191. */
    @ParameterizedTest(name = "{0} {1}, a ring of {2}: file to {3}")
    @CsvSource({
        "IRON_BARREL, 70.110, 0.254, 0.200",
        "IRON_BARREL, 70.110, 0.300, ",
        "PLATED,      70.010, 0.150, 0.200",
        "PLATED,      70.010, 0.300, ",
    })
    void whatMustBeFiledIsKnownBeforeAnythingIsCut(
            Construction construction, String diameter, Length made, Length fileTo) {
        shop.construction = construction;
        List.of("standard", "+0.25", "+0.50").forEach(size -> shop.gapOfRings(size, made, made));

        Match match = shop.worn("standard", diameter, diameter);

        assertThat(match.holes())
                .flatExtracting(HoleReport::ringGaps)
                .extracting(gap -> gap.fileTo().map(Limits::least))
                .containsOnly(Optional.ofNullable(fileTo))
                .hasSize(2);
    }

    @Test
    void ofAFinishedHoleThatNobodyMeasuredNoGapIsKnown() {
        Match match = shop.finished("70.010", "-");

        assertThat(match.holes()).extracting(report -> report.ringGaps().size()).containsExactly(1, 0);
    }

    /** Too little read never proves a shape good, but may prove it bad. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({ROUND + ", IN", ROUND_ABOVE + ", NOT_CHECKED", OVAL_ABOVE + ", OUT"})
    void aShapeIsProvenByWhatWasRead(String rows, String outcome) {
        Match match = shop.ask(
                shop.request(Condition.FINISHED, "", List.of(hole("1", rows), hole("2", ROUND + " / 70.010 70.011"))));

        assertThat(told(match.holes().get(0), Rule.FINISHED_TAPER)).isEqualTo(outcome);
        assertThat(told(match.holes().get(0), Rule.FINISHED_OUT_OF_ROUND)).isEqualTo(outcome);
        assertThat(told(match.holes().get(1), Rule.FINISHED_TAPER)).isEqualTo("IN");
    }

    /** A wall that was honed wider below by the maker's choke, 0.010 to 0.030 mm, has no taper by that. */
    @Test
    void aWornChokeIsNoTaper() {
        shop.construction = Construction.PLATED;
        shop.choke = Optional.of(new Choke(new Limits(TwinShop.mm("0.010"), TwinShop.mm("0.030"))));
        String choked = "70.001 70.001 / 70.006 70.006 / 70.011 70.011 / 70.016 70.016 / 70.021 70.02";

        Match match = shop.ask(
                shop.request(Condition.WORN, "standard", List.of(hole("1", choked + "1"), hole("2", choked + "2"))));

        assertThat(match.holes().get(0).checks())
                .filteredOn(check -> check.rule() == Rule.SERVICE_TAPER)
                .extracting(Check::place, Check::outcome)
                .containsExactly(tuple("beyond its choke", Outcome.IN));
    }

    @Test
    void aShapeThatIsOutIsHeldInItsOwnHole() {
        Match match = shop.ask(shop.request(
                Condition.FINISHED, "", List.of(hole("1", OVAL_ABOVE), hole("2", ROUND + " / 70.010 70.011"))));

        assertThat(match.ruling().holds())
                .filteredOn(hold -> hold.reason() == Hold.Reason.CHECK_OUT)
                .extracting(Hold::cylinders)
                .containsExactly(List.of("1"));
    }

    /** Part against part: what the kit of the size is made of is told with the answer. */
    @Test
    void ringsPinAndClipsOfTheKitAreChecked() {
        assertThat(shop.worn("standard", "70.110", "70.020").checks())
                .extracting(Check::rule)
                .contains(
                        Rule.MASS_SPREAD,
                        Rule.RING_SECTION,
                        Rule.PIN_IN_PISTON_LEAST,
                        Rule.PIN_IN_ROD_GREATEST,
                        Rule.CLIP_FLOAT_LEAST,
                        Rule.GASKET_OPENING);
    }

    /** A size that another maker serves is not passed over. */
    @Test
    void aSizeOfWhichOneMakerMadeNoneIsServedByTheOther() {
        TwoMakers makers = new TwoMakers(shop, "0.25", "40");
        shop.pistons.removeIf(piston -> piston.number().equals(TwinShop.no("P-025")));

        Match match = makers.ask(shop.request(Condition.WORN, "standard", TwinShop.surveys("70.060", "70.060")));

        assertThat(TwinShop.named(match)).isEqualTo("+0.25");
        assertThat(match.passedOver()).isEmpty();
    }
}
