package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.statistics.Statistics;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Size;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.hole.TurningPoint;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Climate;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;

/** What is said to change the size does change it when it is read, and nothing short of it does. */
class TurningPointProperties {

    private static final Length NEXT = Length.ofNanometres(1);
    private static final Length LOWER = TwinShop.mm("80");

    private final TwinShop shop = new TwinShop();

    @Property(tries = 400)
    void aDiameterAtItsLimitChangesNothingAndAboveItTheSize(
            @ForAll @LongRange(min = 70_001_000, max = 70_450_000) long first,
            @ForAll @LongRange(min = 70_001_000, max = 70_450_000) long second,
            @ForAll @IntRange(max = 60) int micrometresDeep,
            @ForAll @IntRange(min = 10, max = 32) int celsius) {
        assertTurns(request(celsius, List.of(scored("1", first, micrometresDeep), scored("2", second, 0))));
    }

    @Property(tries = 200)
    void soDoesAWall(
            @ForAll @LongRange(min = 70_001_000, max = 70_300_000) long first,
            @ForAll @LongRange(min = 10_000, max = 200_000) long off,
            @ForAll @LongRange(min = 70_001_000, max = 70_300_000) long second,
            @ForAll boolean fromBarAxis,
            @ForAll @IntRange(min = 10, max = 32) int celsius) {
        Wall wall = TwinShop.probed(new Wall.Reach(Length.ofNanometres(first / 2 + off), fromBarAxis));
        CylinderSurvey probed =
                new CylinderSurvey("1", new SingleDiameter(Length.ofNanometres(first)), wall, List.of());
        assertTurns(request(celsius, List.of(probed, scored("2", second, 0))));
    }

    @Property(tries = 200)
    void soDoesTheLargestOfAGrid(
            @ForAll @LongRange(min = 70_001_000, max = 70_100_000) long top,
            @ForAll @LongRange(min = 70_001_000, max = 70_060_000) long bottom,
            @ForAll @LongRange(min = 70_001_000, max = 70_400_000) long second,
            @ForAll @IntRange(min = 10, max = 32) int celsius) {
        Grid grid = rows(Length.ofNanometres(top), Length.ofNanometres(bottom));
        assertTurns(request(
                celsius, List.of(new CylinderSurvey("1", grid, Wall.UNKNOWN, List.of()), scored("2", second, 0))));
    }

    /** The score lies at the lower place, so that this is where it decides once it is deep enough. */
    @Property(tries = 200)
    void soDoesTheDiameterAtAFinding(
            @ForAll @LongRange(min = 70_001_000, max = 70_060_000) long top,
            @ForAll @LongRange(min = 70_001_000, max = 70_060_000) long bottom,
            @ForAll @IntRange(max = 150) int micrometresDeep,
            @ForAll @IntRange(min = 10, max = 32) int celsius) {
        Finding score = new Finding(
                Finding.Kind.SCORED, Optional.of(Length.ofMicrometres(micrometresDeep)), Optional.of(LOWER));
        CylinderSurvey first = new CylinderSurvey(
                "1", rows(Length.ofNanometres(top), Length.ofNanometres(bottom)), Wall.UNKNOWN, List.of(score));
        assertTurns(request(celsius, List.of(first, scored("2", 70_010_000, 0))));
    }

    /** Behind the wall while the diameters at its height leave it possible, and no longer where they do not. */
    @Property(tries = 400)
    void soDoesAWallBesideAFinding(
            @ForAll @LongRange(min = 70_020_000, max = 70_080_000) long top,
            @ForAll @LongRange(min = 10_000, max = 150_000) long off,
            @ForAll @IntRange(min = 1, max = 120) int micrometresDeep,
            @ForAll boolean fromBarAxis) {
        Wall wall = TwinShop.probed(new Wall.Reach(Length.ofNanometres(top / 2 + off), fromBarAxis));
        Finding score = new Finding(
                Finding.Kind.SCORED, Optional.of(Length.ofMicrometres(micrometresDeep)), Optional.of(LOWER));
        Grid grid = rows(Length.ofNanometres(top), TwinShop.mm("70.010"));
        CylinderSurvey probed = new CylinderSurvey("1", grid, wall, List.of(score));
        assertTurns(request(20, List.of(probed, scored("2", 70_010_000, 0))));
    }

    /** No bar and no hone: the piston of the one size has room up to a diameter, and above it there is none. */
    @Property(tries = 100)
    void soDoesTheDiameterOfAWallThatIsNeverCut(
            @ForAll @LongRange(min = 70_001_000, max = 70_030_000) long first,
            @ForAll @LongRange(min = 70_001_000, max = 70_050_000) long second,
            @ForAll @IntRange(min = 10, max = 32) int celsius) {
        shop.construction = Construction.PLATED;
        Wall none = Wall.UNKNOWN;
        assertTurns(request(
                celsius,
                List.of(
                        new CylinderSurvey("1", new SingleDiameter(Length.ofNanometres(first)), none, List.of()),
                        new CylinderSurvey("2", new SingleDiameter(Length.ofNanometres(second)), none, List.of()))));
    }

    private void assertTurns(MatchRequest asked) {
        Match match = shop.ask(asked);
        Optional<Size> now = size(match);
        for (TurningPoint point : match.turningPoints()) {
            Statistics.label("side").collect(point.side(), point.read());
            Optional<Size> atLimit = size(shop.ask(with(asked, point, point.limit())));
            Optional<Size> above =
                    size(shop.ask(with(asked, point, point.limit().plus(NEXT))));
            switch (point.side()) {
                case ABOVE -> {
                    assertThat(atLimit).as("at %s", point).isEqualTo(now);
                    assertThat(above).as("above %s", point).isEqualTo(size(point));
                }
                case AT_MOST -> {
                    assertThat(atLimit).as("at %s", point).isEqualTo(size(point));
                    assertThat(above).as("above %s", point).isEqualTo(now);
                }
            }
        }
    }

    private static Optional<Size> size(Match match) {
        return match.ruling().row().filter(SizeRow::serves).map(SizeRow::size);
    }

    /** The same request with the deciding reading of a hole moved to a limit, and no other above it. */
    private static MatchRequest with(MatchRequest asked, TurningPoint point, Length limit) {
        return Requests.surveyed(
                asked,
                asked.cylinders().stream()
                        .map(survey ->
                                survey.cylinder().equals(point.cylinder()) ? moved(survey, point, limit) : survey)
                        .toList());
    }

    private static CylinderSurvey moved(CylinderSurvey survey, TurningPoint point, Length limit) {
        return switch (point.read()) {
            case PROBED_WALL -> {
                Wall.Reach reach = survey.wall().reach().orElseThrow();
                yield new CylinderSurvey(
                        survey.cylinder(), survey.asRead(), TwinShop.probed(reach.at(limit)), survey.findings());
            }
            case LARGEST_DIAMETER -> {
                Length largest = survey.asRead().largest().orElseThrow();
                UnaryOperator<Length> move = point.side() == TurningPoint.Side.ABOVE
                        ? reading -> reading.equals(largest) ? limit : reading
                        : reading -> reading.min(limit);
                yield survey.with(survey.asRead().map(move));
            }
            case DIAMETER_AT_FINDING ->
                survey.with(rows(survey.asRead().readings().get(0), limit));
        };
    }

    private MatchRequest request(int celsius, List<CylinderSurvey> surveys) {
        Temperature temperature = Temperature.parse(BigDecimal.valueOf(celsius), Temperature.Scale.CELSIUS);
        return Requests.measured(shop.request(Condition.WORN, "standard", surveys), Climate.at(temperature));
    }

    private static CylinderSurvey scored(String cylinder, long nanometres, int micrometresDeep) {
        Finding score =
                new Finding(Finding.Kind.SCORED, Optional.of(Length.ofMicrometres(micrometresDeep)), Optional.empty());
        return new CylinderSurvey(
                cylinder, new SingleDiameter(Length.ofNanometres(nanometres)), Wall.UNKNOWN, List.of(score));
    }

    private static Grid rows(Length upper, Length lower) {
        return new Grid(
                List.of(TwinShop.mm("10"), LOWER),
                List.of(Axis.THRUST),
                List.of(List.of(Optional.of(upper)), List.of(Optional.of(lower))));
    }

    private static Optional<Size> size(TurningPoint point) {
        return ((TurningPoint.Goes) point.then()).size();
    }
}
