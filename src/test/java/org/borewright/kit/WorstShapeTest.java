package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.borewright.kit.request.Condition;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The worst taper and out-of-round of the twin, each in its hole. */
class WorstShapeTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "{0} and {1}: taper {2}, out-of-round {3}")
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                // the first tapers more, the second is less round
                "70.050 70.045 / 70.020 70.015 | 70.030 70.020 / 70.030 70.020 | 1 0.030 | 2 0.010",
                "70.030 70.020 / 70.030 70.020 | 70.050 70.045 / 70.020 70.015 | 2 0.030 | 1 0.010",
                // a nanometre more in the second; and alike in both
                "70.030 70.020 / 70.030 70.020 | 70.030 70.019999 / 70.030 70.019999 | 1 0 | 2 0.010001",
                "70.030 70.020 / 70.030 70.020 | 70.031 70.021 / 70.031 70.021 | 1 0 | 1 0.010",
                // one diameter tells nothing of a shape
                "70.030 | 70.050 70.045 / 70.020 70.015 | 2 0.030 | 2 0.005",
                "70.030 | 70.030 | - | -",
            })
    void eachFigureIsThatOfItsWorstHole(String first, String second, String taper, String outOfRound) {
        Match match = shop.ask(shop.request(Condition.WORN, "standard", List.of(hole("1", first), hole("2", second))));

        assertThat(WorstShape.taper(match.holes())).isEqualTo(worst(taper));
        assertThat(WorstShape.outOfRound(match.holes())).isEqualTo(worst(outOfRound));
    }

    private static Optional<WorstShape> worst(String told) {
        return Optional.ofNullable(told)
                .map(words -> words.split(" "))
                .map(words -> new WorstShape(words[0], TwinShop.mm(words[1])));
    }

    private static CylinderSurvey hole(String cylinder, String rows) {
        return new CylinderSurvey(
                cylinder,
                rows.contains(" ") ? Grids.grid(rows) : new SingleDiameter(TwinShop.mm(rows)),
                Wall.UNKNOWN,
                List.of());
    }
}
