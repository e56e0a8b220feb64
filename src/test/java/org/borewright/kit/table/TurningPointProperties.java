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
import org.borewright.catalog.Size;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.hole.ReadingLimit;
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

    /** Two roundings to a whole nanometre, of the correction and of U, lie between a limit and what is certainly beyond it. */
    private static final Length JUST = Length.ofNanometres(3);

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
        Wall wall = wall(new Wall.Reach(Length.ofNanometres(first / 2 + off), fromBarAxis));
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
        Grid grid = new Grid(
                List.of(TwinShop.mm("10"), TwinShop.mm("80")),
                List.of(Axis.THRUST),
                List.of(
                        List.of(Optional.of(Length.ofNanometres(top))),
                        List.of(Optional.of(Length.ofNanometres(bottom)))));
        assertTurns(request(
                celsius, List.of(new CylinderSurvey("1", grid, Wall.UNKNOWN, List.of()), scored("2", second, 0))));
    }

    private void assertTurns(MatchRequest asked) {
        Match match = shop.ask(asked);
        Optional<Size> now = size(match);
        for (TurningPoint point : match.turningPoints()) {
            Statistics.label("side").collect(point.side(), point.read());
            Optional<Size> atLimit = size(shop.ask(with(asked, point, point.limit())));
            Optional<Size> above =
                    size(shop.ask(with(asked, point, point.limit().plus(JUST))));
            switch (point.side()) {
                case ABOVE -> {
                    assertThat(atLimit).as("at %s", point).isEqualTo(now);
                    assertThat(above).as("above %s", point).isEqualTo(point.then());
                }
                case AT_MOST -> {
                    assertThat(atLimit).as("at %s", point).isEqualTo(point.then());
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
        if (point.read() == ReadingLimit.Read.PROBED_WALL) {
            boolean fromBarAxis = survey.wall().reach().orElseThrow().fromBarAxis();
            return new CylinderSurvey(
                    survey.cylinder(), survey.asRead(), wall(new Wall.Reach(limit, fromBarAxis)), survey.findings());
        }
        Length largest = survey.asRead().largest().orElseThrow();
        UnaryOperator<Length> move = point.side() == TurningPoint.Side.ABOVE
                ? reading -> reading.equals(largest) ? limit : reading
                : reading -> reading.min(limit);
        return new CylinderSurvey(survey.cylinder(), survey.asRead().map(move), survey.wall(), survey.findings());
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

    private static Wall wall(Wall.Reach reach) {
        return new Wall(
                Optional.empty(), Optional.empty(), Optional.of(reach), Optional.empty(), Optional.empty(), false);
    }
}
