package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.borewright.fit.Certainty;
import org.borewright.fit.CloserReading;
import org.borewright.fit.CloserReading.Better;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;

/** What is said to settle a size does settle it, and can be read of a real hole. */
class SettlingProperties {

    private static final List<Length> DEPTHS = List.of(TwinShop.mm("10"), TwinShop.mm("60"), TwinShop.mm("110"));
    private static final CylinderSurvey SOUND = TwinShop.survey("2", "70.010");

    private final TwinShop shop = new TwinShop();

    @Property(tries = 500)
    void theReadingNamedMakesTheSizeCertainFromEitherAxis(
            @ForAll @LongRange(min = 70_030_000, max = 70_430_000) long first,
            @ForAll @LongRange(min = 70_030_000, max = 70_180_000) long second,
            @ForAll @IntRange(max = 40) int micrometresDeep,
            @ForAll @IntRange(min = 5, max = 35) int celsius) {
        MatchRequest asked = request(celsius, List.of(scored("1", first, micrometresDeep), scored("2", second, 0)));
        Optional<Settling> settling = shop.ask(asked).settling();
        Statistics.label("answered").collect(settling.isPresent());
        Assume.that(settling.isPresent());

        for (boolean fromBarAxis : List.of(false, true)) {
            assertThat(certaintyOnceProbed(asked, settling.get(), fromBarAxis)).isEqualTo(Certainty.CERTAIN);
        }
    }

    private Certainty certaintyOnceProbed(MatchRequest asked, Settling settling, boolean fromBarAxis) {
        List<CylinderSurvey> probed = new ArrayList<>(asked.cylinders());
        List<Settling.Reading> probes = settling.readings().stream()
                .filter(reading -> reading.gauge().isEmpty())
                .toList();
        for (Settling.Reading reading : probes) {
            probed.replaceAll(survey -> survey.cylinder().equals(reading.cylinder())
                    ? probed(survey, reach(reading, fromBarAxis))
                    : survey);
        }
        return certainty(shop.ask(Requests.surveyed(asked, probed)), settling);
    }

    private static Certainty certainty(Match answer, Settling settling) {
        return answer.table().stream()
                .filter(row -> row.size().equals(settling.row().size()))
                .map(SizeRow::certainty)
                .findFirst()
                .orElseThrow();
    }

    /** The wall found just where it was named, off the original axis where that is named, else off the bar's own. */
    private static Wall.Reach reach(Settling.Reading reading, boolean fromBarAxis) {
        Optional<Length> within = fromBarAxis ? Optional.empty() : reading.within();
        return within.map(radius -> new Wall.Reach(radius, false))
                .orElseGet(() -> new Wall.Reach(reading.withinFromBarAxis().orElseThrow(), true));
    }

    private static Optional<Length> figure(Settling.Reading reading, boolean fromBarAxis) {
        return fromBarAxis ? reading.withinFromBarAxis() : reading.within();
    }

    /** Of a wall that nobody probed: all wear on it is proven cut out with the gauge named, and with one that is worth 0.2 µm less it is not. */
    @Property(tries = 300)
    void theGaugeNamedProvesTheWorstAndALesserOneDoesNot(
            @ForAll @LongRange(min = 70_074_600, max = 70_079_900) long at20,
            @ForAll @IntRange(max = 2) int steps,
            @ForAll @IntRange(min = 10, max = 30) int celsius) {
        Length hole = Length.ofNanometres(at20 + steps * 125_000L);
        Temperature warm = Temperature.parse(BigDecimal.valueOf(celsius), Temperature.Scale.CELSIUS);
        MatchRequest asked =
                request(celsius, worn(shop.shelf().engine().bore().expansion().asRead(hole, warm)));
        Match answer = shop.ask(asked);
        Optional<Better> named = answer.settling()
                .flatMap(found -> found.readings().stream()
                        .flatMap(next -> next.gauge().stream())
                        .findFirst());
        Statistics.label("a gauge is named").collect(named.isPresent());
        Assume.that(named.isPresent());
        Better better = named.get();
        Statistics.label("what").collect(better.what(), better.allAt20());

        Length corrected = answer.surveyed().get(0).diameters().orElseThrow().greatest();
        MatchRequest again = better.allAt20() ? request(20, worn(corrected)) : asked;
        assertThat(certaintyWith(better, Length.ZERO, again, answer)).isEqualTo(Certainty.CERTAIN);
        assertThat(certaintyWith(better, Length.ofNanometres(200), again, answer))
                .isEqualTo(Certainty.POSSIBLE);
    }

    private Certainty certaintyWith(Better better, Length more, MatchRequest asked, Match before) {
        return certainty(
                shop.ask(Requests.measured(asked, gauge(better, more))),
                before.settling().orElseThrow());
    }

    /** A gauge as named, but for so much: with its usual step, or with all that it is worth in its calibration. */
    private static Gauge gauge(Better better, Length more) {
        boolean whole = better.what() == CloserReading.What.WHOLE_GAUGE;
        Length calibration = (whole ? better.atMost().doubled() : better.atMost()).plus(more);
        return new Gauge(
                Gauge.Kind.BORE_GAUGE,
                Optional.empty(),
                new Gauge.Calibration(Optional.of(calibration), Optional.empty(), Optional.empty()),
                whole ? Optional.of(Length.ZERO) : Optional.empty(),
                Length.ZERO,
                Optional.empty(),
                Gauge.Source.REQUEST);
    }

    private static List<CylinderSurvey> worn(Length diameter) {
        return List.of(new CylinderSurvey("1", new SingleDiameter(diameter), Wall.UNKNOWN, List.of()), SOUND);
    }

    /** However the axis lies, one of two opposite walls stands off it by half the diameter between them. */
    @Property(tries = 300)
    void noReadingIsAskedForThatNoHoleCouldGive(
            @ForAll @LongRange(min = 70_000_000, max = 70_900_000) long first,
            @ForAll @LongRange(min = 70_000_000, max = 70_900_000) long second,
            @ForAll @IntRange(max = 60) int micrometresDeep) {
        MatchRequest asked = request(20, List.of(scored("1", first, micrometresDeep), scored("2", second, 0)));

        shop.ask(asked)
                .settling()
                .ifPresent(settling -> settling.readings().forEach(reading -> {
                    Length diameter = Length.ofNanometres(reading.cylinder().equals("1") ? first : second);
                    for (boolean fromBarAxis : List.of(false, true)) {
                        figure(reading, fromBarAxis)
                                .ifPresent(
                                        radius -> assertThat(radius.doubled()).isGreaterThanOrEqualTo(diameter));
                    }
                }));
    }

    @Property(tries = 300)
    void aHoleAlreadyProbedIsNotToldToProbeFromTheSameAxisAgain(
            @ForAll @LongRange(min = 70_000_000, max = 70_300_000) long diameter,
            @ForAll @LongRange(max = 200_000) long off,
            @ForAll boolean fromBarAxis) {
        Wall.Reach reach = new Wall.Reach(Length.ofNanometres(diameter / 2 + off), fromBarAxis);
        MatchRequest asked = request(20, List.of(probed(scored("1", diameter, 0), reach), scored("2", 70_000_000, 0)));

        shop.ask(asked)
                .settling()
                .ifPresent(settling -> settling.readings().stream()
                        .filter(reading -> reading.cylinder().equals("1"))
                        .forEach(reading -> {
                            assertThat(reading.within()).isEmpty();
                            assertThat(reading.withinFromBarAxis().isPresent() && fromBarAxis)
                                    .isFalse();
                            assertThat(reading.what()).isNotEqualTo(Settling.What.PROBE_WALL);
                        }));
    }

    /** However poor the probe is, as long as it lies no further than all wear on one wall: the diameters still prove what they prove. */
    @Property(tries = 300)
    void toProbeAWallTakesNoSizeAway(
            @ForAll @LongRange(min = 70_000_000, max = 70_300_000) long diameter,
            @ForAll @IntRange(max = 100) int percent,
            @ForAll @LongRange(min = 1, max = 500_000) long uncertainty) {
        long farthest = diameter - 35_000_000 - diameter / 2;
        Wall.Reach reach = new Wall.Reach(
                Length.ofNanometres(diameter / 2 + farthest * percent / 100),
                false,
                Optional.of(Length.ofNanometres(uncertainty)));
        CylinderSurvey read = scored("1", diameter, 0);
        CylinderSurvey sound = scored("2", 70_000_000, 0);

        Match unprobed = shop.ask(request(20, List.of(read, sound)));
        Match probed = shop.ask(request(20, List.of(probed(read, reach), sound)));

        for (int size = 0; size < unprobed.table().size(); size++) {
            assertThat(probed.table().get(size).certainty())
                    .as("%s, %s", reach, unprobed.table().get(size).size().label())
                    .isIn(
                            unprobed.table().get(size).certainty() == Certainty.CERTAIN
                                    ? List.of(Certainty.CERTAIN)
                                    : List.of(Certainty.values()));
        }
    }

    @Property(tries = 200)
    void aFindingOfKnownDepthIsToldAtWhatHeightsItSettlesTheSize(
            @ForAll @Size(3) List<@LongRange(min = 70_001_000, max = 70_110_000) Long> rows,
            @ForAll @IntRange(min = 1, max = 60) int micrometresDeep) {
        assertSettledByHeight(Wall.UNKNOWN, rows, micrometresDeep);
    }

    /** Most behind the wall, or where a place worn less leaves no room for so far a wall. */
    @Property(tries = 200)
    void soIsOneBesideAProbedWall(
            @ForAll @LongRange(min = 70_060_000, max = 70_100_000) long top,
            @ForAll @Size(2) List<@LongRange(min = 70_001_000, max = 70_040_000) Long> below,
            @ForAll @LongRange(min = 15_000, max = 40_000) long off,
            @ForAll @IntRange(min = 20, max = 70) int micrometresDeep) {
        Wall probed = TwinShop.probed(new Wall.Reach(Length.ofNanometres(top / 2 + off), true));
        assertSettledByHeight(probed, List.of(top, below.get(0), below.get(1)), micrometresDeep);
    }

    /** Asked again with the height noted: certain just where it was named, wherever the wall is worn most. */
    private void assertSettledByHeight(Wall wall, List<Long> rows, int micrometresDeep) {
        Grid grid = new Grid(
                DEPTHS,
                List.of(Axis.THRUST),
                rows.stream()
                        .map(reading -> List.of(Optional.of(Length.ofNanometres(reading))))
                        .toList());
        CylinderSurvey unplaced = new CylinderSurvey("1", grid, wall, List.of(score(micrometresDeep)), true);
        Optional<Settling> settling =
                shop.ask(request(20, List.of(unplaced, SOUND))).settling();
        Assume.that(settling.isPresent());
        List<Length> heights = settling.get().readings().stream()
                .filter(reading -> reading.what() == Settling.What.MEASURE_HEIGHT)
                .flatMap(reading -> reading.heights().stream())
                .toList();
        Statistics.label("heights").collect(heights.size());

        for (Length height : DEPTHS) {
            Match placed = shop.ask(request(20, List.of(unplaced.placed(height), SOUND)));
            assertThat(certainty(placed, settling.get()) == Certainty.CERTAIN).isEqualTo(heights.contains(height));
        }
    }

    private MatchRequest request(int celsius, List<CylinderSurvey> surveys) {
        Temperature temperature = Temperature.parse(BigDecimal.valueOf(celsius), Temperature.Scale.CELSIUS);
        return Requests.measured(shop.request(Condition.WORN, "standard", surveys), Climate.at(temperature));
    }

    private static CylinderSurvey scored(String cylinder, long nanometres, int micrometresDeep) {
        return new CylinderSurvey(
                cylinder,
                new SingleDiameter(Length.ofNanometres(nanometres)),
                Wall.UNKNOWN,
                List.of(score(micrometresDeep)));
    }

    private static Finding score(int micrometresDeep) {
        return new Finding(Finding.Kind.SCORED, Optional.of(Length.ofMicrometres(micrometresDeep)), Optional.empty());
    }

    private static CylinderSurvey probed(CylinderSurvey survey, Wall.Reach reach) {
        return new CylinderSurvey(survey.cylinder(), survey.asRead(), TwinShop.probed(reach), survey.findings());
    }
}
