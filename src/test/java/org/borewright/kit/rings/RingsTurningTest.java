package org.borewright.kit.rings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.borewright.catalog.Piston;
import org.borewright.fit.Certainty;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.hole.TurningPoint;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings of a twin that would change whether new rings will do. Its taper may be 0.05 mm, U 0.000 817 mm of a difference: 0.049 183 above
 * the smallest reading along the thrust faces.
 */
class RingsTurningTest {

    private static final Length NEXT = Length.ofNanometres(1);
    private static final String LIKEWISE = "70.044 / 70.049 70.041 / 70.031 70.026";

    private final TwinShop shop = new TwinShop();
    private List<Finding> findings = List.of();
    private int celsius = 20;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // the largest of hole 1 | of hole 2 | the turning points
                "70.060    | 70.058    | 1 above 70.079183 possible; 2 above 70.080183 possible",
                "70.079183 | 70.058    | 1 above 70.079183 possible; 2 above 70.080183 possible",
                "70.079184 | 70.058    | 1 at most 70.079183 certain",
                "70.060    | 70.080184 | 2 at most 70.080183 certain",
                // two in the way: neither alone makes it certain
                "70.079184 | 70.080184 | ''",
                // beyond the allowance by U: ruled out, and not said
                "70.080817 | 70.058    | ''",
            })
    void theLargestDiameterThatRingsOnlyBearsIsNamed(String first, String second, String points) {
        assertThat(points(ask(first, second)).map(RingsTurningTest::inWords).collect(Collectors.joining("; ")))
                .isEqualTo(points);
    }

    @ParameterizedTest
    @CsvSource({"SLEEVE_LOOSE", "SCORED", "FINISH_POOR"})
    void noReadingIsNamedWhereAFindingKeepsRingsOnlyFromBeingCertain(Finding.Kind found) {
        findings = List.of(new Finding(found, Optional.empty(), Optional.empty()));

        assertThat(points(ask("70.060", "70.058"))).isEmpty();
    }

    /**
     * The largest lies where the skirt runs, and the piston of the first hole is small: 69.920 + 0.140 less the uncertainty of both gauges. In
     * the second the same diameter would do.
     */
    @Test
    void theLimitIsThatOfThePistonInTheHole() {
        String rows = " 70.035 / 70.052 70.045 / 70.050 70.040";
        Match match = shop.ask(Requests.seen(
                shop.request(
                        Condition.WORN,
                        "standard",
                        List.of(
                                new CylinderSurvey("1", grid("70.040" + rows), Wall.UNKNOWN, List.of()),
                                new CylinderSurvey("2", grid("70.041" + rows), Wall.UNKNOWN, List.of()))),
                List.of(asFound("69.920"), asFound("69.935"))));

        assertThat(points(match).map(RingsTurningTest::inWords))
                .containsExactly("1 above 70.053322 possible", "2 above 70.068322 possible");
    }

    /** At +0.75, in an engine that bears +0.30: readings are believed up to 70.020 + 0.30 + 0.50, and what rings only bears lies beyond. */
    @Test
    void aLimitBeyondAllThatIsBelievedIsNotNamed() {
        shop.largestOversize = mm("0.30");
        AsFound found = asFound(shop.pistons.get(3), "70.685");
        String rows = " 70.790 / 70.785 70.780 / 70.780 70.775";
        Match match = shop.ask(Requests.seen(
                shop.request(
                        Condition.WORN,
                        "+0.75",
                        List.of(
                                new CylinderSurvey("1", grid("70.810" + rows), Wall.UNKNOWN, List.of()),
                                new CylinderSurvey("2", grid("70.809" + rows), Wall.UNKNOWN, List.of()))),
                List.of(found, found)));

        assertThat(match.ringsOnly().orElseThrow().certainty()).isEqualTo(Certainty.CERTAIN);
        assertThat(points(match)).isEmpty();
    }

    /** Larger than every other of its hole, so that it is the one reading that is moved. */
    @Property(tries = 60)
    void atItsLimitRingsOnlyIsCertainAndANanometreAboveItIsWhatIsSaid(
            @ForAll @IntRange(min = 70_051, max = 70_081) int first, @ForAll @IntRange(min = 15, max = 25) int warm) {
        celsius = warm;
        String second = "70.058";
        for (TurningPoint point :
                points(ask(inMillimetres(first * 1_000L), second)).toList()) {
            Length next = point.limit().plus(NEXT);
            boolean ofFirst = point.cylinder().equals("1");
            String other = ofFirst ? second : inMillimetres(first * 1_000L);
            Certainty at = ofFirst ? certainty(text(point.limit()), other) : certainty(other, text(point.limit()));
            Certainty above = ofFirst ? certainty(text(next), other) : certainty(other, text(next));

            assertThat(at).isEqualTo(Certainty.CERTAIN);
            assertThat(above).isEqualTo(point.side() == TurningPoint.Side.ABOVE ? runs(point) : Certainty.POSSIBLE);
        }
    }

    private static Stream<TurningPoint> points(Match match) {
        return match.turningPoints().stream().filter(point -> point.then() instanceof TurningPoint.Runs);
    }

    private Certainty certainty(String first, String second) {
        return ask(first, second).ringsOnly().orElseThrow().certainty();
    }

    private Match ask(String first, String second) {
        return shop.ask(Requests.measured(
                Requests.seen(
                        shop.request(
                                Condition.WORN,
                                "standard",
                                List.of(
                                        new CylinderSurvey(
                                                "1",
                                                grid(first + " 70.045 / 70.050 70.040 / 70.030 70.025"),
                                                Wall.UNKNOWN,
                                                findings),
                                        new CylinderSurvey(
                                                "2", grid(second + " " + LIKEWISE), Wall.UNKNOWN, List.of()))),
                        List.of(asFound(), asFound())),
                Climate.at(Temperature.parse(BigDecimal.valueOf(celsius), Temperature.Scale.CELSIUS))));
    }

    private AsFound asFound() {
        return asFound("69.930");
    }

    private AsFound asFound(String diameter) {
        return asFound(shop.pistons.get(0), diameter);
    }

    private AsFound asFound(Piston piston, String diameter) {
        return new AsFound(
                new PresentPiston(
                        Optional.of(shop.shelf().parts().designs().get(0)),
                        Optional.of(piston),
                        Optional.of(mm(diameter)),
                        new Measuring(Gauge.Kind.MICROMETER.usual(), Climate.at(Temperature.REFERENCE))),
                Optional.of(AsFound.Grooves.GOOD),
                Optional.of(AsFound.Ridge.OFF),
                Optional.of(AsFound.Glaze.BROKEN));
    }

    private static Grid grid(String rows) {
        return Grids.grid(rows, List.of(mm("10"), mm("34.4"), mm("110")));
    }

    private static String inMillimetres(long nanometres) {
        return text(Length.ofNanometres(nanometres));
    }

    private static String text(Length length) {
        return BigDecimal.valueOf(length.nanometres(), 6).toPlainString();
    }

    private static String inWords(TurningPoint point) {
        return String.format(
                Locale.ROOT,
                "%s %s %s %s",
                point.cylinder(),
                point.side() == TurningPoint.Side.ABOVE ? "above" : "at most",
                text(point.limit()),
                runs(point).label());
    }

    private static Certainty runs(TurningPoint point) {
        return ((TurningPoint.Runs) point.then()).ringsOnly();
    }
}
