package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.survey;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.fit.Certainty;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.kit.table.Settling.Reading;
import org.borewright.kit.table.Settling.What;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is to be read next, hole by hole, for the smallest size that may serve: +0.25 is certain up to 70.200 less 2U, 70.189 438 mm. */
class SettlingTest {

    private final TwinShop shop = new TwinShop();

    /** Readings at 10, 20 and 30 mm from the deck; findings as kind, depth and height. */
    @ParameterizedTest(name = "{0}, {1}: {2} at {3}")
    @CsvSource({
        // 2·70.060 − 70 + 0.04 = 70.160 without it, 70.200 with it at 20 mm, and 70.100 at the most elsewhere
        "70.010 / 70.060 / 70.020, SCORED 0.02 -, MEASURE_HEIGHT PROBE_WALL, 10 30",
        "70.010 / 70.060 / 70.020, SCORED 0.02 20, PROBE_WALL, ",
        // wherever it lies it is cut out: nothing is to be read
        "70.010 / 70.060 / 70.020, SCORED 0.01 -, , ",
        // 70.060 + 0.16 at the best: +0.25 is out, +0.50 certain
        "70.010 / 70.060 / 70.020, SCORED 0.08 -, , ",
        // nor where it lies counts where the wear alone may be too much: 2·70.080 − 70 + 0.04 = 70.200
        "70.080 / 70.080 / 70.080, SCORED 0.01 -, PROBE_WALL, ",
        // the bar leaves a better surface than any that it finds
        "70.010 / 70.100 / 70.020, FINISH_POOR - -, PROBE_WALL, ",
        // it takes nothing out, and its height tells nothing
        "70.010 / 70.100 / 70.020, BROKEN_FIN 0.02 -, PROBE_WALL, ",
        "70.010 / 70.100 / 70.020, SCORED 0.00 -, PROBE_WALL, ",
        // 2·70.076 − 70 + 0.04 = 70.192 clears 70.200 by less than 2U: a better gauge proves it too
        "70.010 / 70.076 / 70.020, STAIN - -, PROBE_WALL BETTER_GAUGE, ",
        "70.010 / 70.080 / 70.020, STAIN - -, PROBE_WALL, ",
        "70.010 / 70.060 / 70.020, SCORED - -, MEASURE_DEPTH, ",
        "70.010 / 70.060 / 70.020, SMEARED_ALUMINIUM - -, PUT_RIGHT_FIRST, ",
        "-, WORN - -, MEASURE_HOLE, ",
    })
    void theNextReadingIsTheOneThatSettlesIt(String rows, String finding, String next, String heights) {
        List<Reading> readings = readings(rows.equals("-") ? new NotMeasured() : Grids.grid(rows), finding(finding));

        assertThat(readings).extracting(reading -> reading.what().name()).isEqualTo(words(next));
        assertThat(readings.stream()
                        .flatMap(reading -> reading.heights().stream())
                        .toList())
                .isEqualTo(words(heights).stream().map(TwinShop::mm).toList());
    }

    /** The worst clears 70.200 by 0.008, and 2U must be no more: with u(t) of 1 K and u(α) as they are a gauge of U 0.003 622 does. */
    @Test
    void theGaugeThatProvesWearOnOneWallCutOutIsNamed() {
        Reading better = readings(Grids.grid("70.010 / 70.076 / 70.020"), finding("STAIN - -")).stream()
                .filter(reading -> reading.what() == What.BETTER_GAUGE)
                .findFirst()
                .orElseThrow();

        Length figure = better.gauge().orElseThrow().atMost();
        assertThat(certaintyWith(figure)).isEqualTo(Certainty.CERTAIN);
        assertThat(certaintyWith(figure.plus(mm("0.00001")))).isEqualTo(Certainty.POSSIBLE);
    }

    private Certainty certaintyWith(Length gauge) {
        CylinderSurvey hole = new CylinderSurvey("1", Grids.grid("70.010 / 70.076 / 70.020"), Wall.UNKNOWN, List.of());
        return shop.ask(Requests.measured(
                        shop.request(Condition.WORN, "standard", List.of(hole, survey("2", "70.030"))),
                        new Gauge(
                                Gauge.Kind.BORE_GAUGE,
                                Optional.empty(),
                                new Gauge.Calibration(Optional.of(gauge), Optional.empty(), Optional.empty()),
                                Optional.empty(),
                                Length.ZERO,
                                Optional.empty(),
                                Gauge.Source.REQUEST)))
                .table()
                .get(1)
                .certainty();
    }

    /** 2·35.200 + 0.04 clears the bar of 70.450 by 0.010, and 2U is 0.010 562: nothing is left to probe, and the gauge is named once. */
    @Test
    void aProbedWallTooNearTheBarIsProbedAgainWithSomethingBetter() {
        CylinderSurvey probed = new CylinderSurvey(
                "1", new SingleDiameter(mm("70.100")), TwinShop.probed(new Wall.Reach(mm("35.200"), false)), List.of());

        assertThat(shop.ask(shop.request(Condition.WORN, "standard", List.of(probed, survey("2", "70.010"))))
                        .settling()
                        .orElseThrow()
                        .readings())
                .extracting(Reading::what)
                .containsExactly(What.BETTER_PROBE);
    }

    /** Finished for a piston of 69.940 to 69.950, of which the smaller bears 70.040: 70.042 is too close to call. */
    @ParameterizedTest
    @CsvSource({"STAIN, MEASURE_PISTONS", "FINISH_POOR, PUT_RIGHT_FIRST"})
    void aHoleThatIsLeftIsSettledByItsPistonOnceItsSurfaceIs(Finding.Kind kind, What next) {
        Finding seen = new Finding(kind, Optional.empty(), Optional.empty());
        List<CylinderSurvey> holes = List.of(survey("1", "70.042", seen), survey("2", "70.010"));
        Match match = shop.ask(shop.request(Condition.FINISHED, "", holes));

        assertThat(Settling.at(
                                shop.shelf().engine().bore(),
                                Temperature.REFERENCE,
                                match.surveyed(),
                                match.table().get(0))
                        .orElseThrow()
                        .readings())
                .extracting(Reading::what)
                .containsExactly(next);
    }

    /** A reading far off its neighbours is asked for again, before anything else. */
    @Test
    void whatIsQueriedIsReadAgain() {
        List<Reading> readings = readings(
                Grids.grid("70.010 70.012 / 70.011 71.013 / 70.012 70.010 / 70.011 70.010"), finding("WORN - -"));

        assertThat(readings).extracting(Reading::what).containsExactly(What.READ_AGAIN);
    }

    private List<Reading> readings(Survey first, Finding finding) {
        CylinderSurvey hole = new CylinderSurvey("1", first, Wall.UNKNOWN, List.of(finding));
        return shop.ask(shop.request(Condition.WORN, "standard", List.of(hole, survey("2", "70.030"))))
                .settling()
                .map(Settling::readings)
                .orElse(List.of());
    }

    private static Finding finding(String written) {
        List<String> words = words(written);
        return new Finding(Finding.Kind.valueOf(words.get(0)), length(words.get(1)), length(words.get(2)));
    }

    private static Optional<Length> length(String written) {
        return written.equals("-") ? Optional.empty() : Optional.of(mm(written));
    }

    private static List<String> words(String written) {
        return written == null ? List.of() : Arrays.asList(written.split(" "));
    }
}
