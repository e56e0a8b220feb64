package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.survey;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.request.Condition;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The rebuilds left are counted with the walls of the very engine. The largest finish of the twin is 70.800 mm at +0.75 and 71.050 mm at
 * +1.00, its centring error 0.02 mm, its least wall 2.5 mm.
 */
class RebuildsLeftMatchTest {

    private static final int AT_050 = 2;

    @ParameterizedTest(name = "sleeve of {0} outside: {1}")
    @CsvSource({
        // (76.090 − 71.050)/2 − 0.02 = 2.5, the outside known to 0.003
        "76.093, 2",
        "76.092999, 1",
        // (75.840 − 70.800)/2 − 0.02 = 2.5
        "75.843, 1",
        "75.842999, 0",
        // nobody knows the outside of the sleeve
        ", ",
    })
    void aSleeveFittedSinceCountsWithItsOwnOutside(String outside, Integer byMetal) {
        TwinShop shop = new TwinShop();
        Wall wall = wall(Optional.ofNullable(outside).map(TwinShop::mm), Optional.empty(), true);

        assertThat(leftAt050(shop, hole(wall))).isEqualTo(left(byMetal));
    }

    @ParameterizedTest(name = "wall of {0}: {1}")
    @CsvSource({
        // 3.035 − (71.050 − 70.020)/2 − 0.02 = 2.5, the wall known to 0.05
        "3.085, 2",
        "3.084999, 1",
        // 2.91 − (70.800 − 70.020)/2 − 0.02 = 2.5
        "2.96, 1",
        "2.959999, 0",
        ", ",
    })
    void aWallOfTheBlockCountsAsSurveyedAndNotAtAllWhereItWasNot(String least, Integer byMetal) {
        TwinShop shop = new TwinShop();
        shop.wall = new WallShape(
                Optional.empty(), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());
        Wall wall = wall(Optional.empty(), Optional.ofNullable(least).map(TwinShop::mm), false);

        assertThat(leftAt050(shop, hole(wall))).isEqualTo(left(byMetal));
    }

    @Test
    void afterTheLastSizeNoneIsLeftWhateverTheWall() {
        TwinShop shop = new TwinShop();
        List<SizeRow> table = shop.ask(shop.request(
                        Condition.WORN,
                        "standard",
                        List.of(hole(wall(Optional.empty(), Optional.empty(), true)), survey("2", "70.020"))))
                .table();

        assertThat(table.get(4).left()).contains(new RebuildsLeft(0, 0));
        assertThat(table.get(3).left()).isEmpty();
    }

    @Test
    void aSizeNeverMadeIsLeftByMetalAlone() {
        TwinShop shop = new TwinShop();
        shop.pistons.removeIf(piston -> piston.size().equals("+0.75"));

        assertThat(leftAt050(shop, survey("1", "70.020"))).contains(new RebuildsLeft(2, 1));
    }

    private static Optional<RebuildsLeft> leftAt050(TwinShop shop, CylinderSurvey first) {
        CylinderSurvey second = new CylinderSurvey(
                "2",
                new SingleDiameter(mm("70.020")),
                wall(Optional.empty(), first.wall().least(), false),
                List.of());
        return shop.ask(shop.request(Condition.WORN, "standard", List.of(first, second)))
                .table()
                .get(AT_050)
                .left();
    }

    private static Optional<RebuildsLeft> left(Integer count) {
        return Optional.ofNullable(count).map(both -> new RebuildsLeft(both, both));
    }

    private static CylinderSurvey hole(Wall wall) {
        return new CylinderSurvey("1", new SingleDiameter(mm("70.020")), wall, List.of());
    }

    private static Wall wall(Optional<Length> outside, Optional<Length> least, boolean sleevedBefore) {
        return new Wall(Optional.empty(), Optional.empty(), Optional.empty(), outside, least, sleevedBefore);
    }
}
