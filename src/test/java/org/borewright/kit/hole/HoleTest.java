package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What follows from the readings of one hole of the twin alone. */
class HoleTest {

    /** U of a diameter is 0.005 281 mm from 69.971 to 70.115 and 0.005 282 above; a wall alone tells it by twice its radius. */
    @ParameterizedTest(name = "{0}, wall at {1}, new at {2}: worn {3}, known to {4}")
    @CsvSource({
        "70.110, , 70.000, 0.110, 0.005281",
        "70.110, , , , 0.005281",
        "70.000, , 70.000, 0, 0.005281",
        // it was never smaller than it reads
        "69.990, , 70.000, 0, 0.005281",
        "70.110, 35.120, 70.000, 0.110, 0.005281",
        ", 35.055, 70.000, , 0.005281",
        ", 35.060, 70.000, , 0.005282",
        ", , 70.000, , 0",
    })
    void itsWearAndItsUncertaintyAreThoseOfItsReadings(
            Length diameter, Length radius, Length whenNew, Length wear, Length uncertainty) {
        TwinShop shop = new TwinShop();
        Optional<Length> none = Optional.empty();
        Wall wall = new Wall(
                none, none, Optional.ofNullable(radius).map(known -> new Wall.Reach(known, false)), none, none, false);

        Hole hole = Hole.of(
                shop.shelf().engine().bore(),
                shop.shelf().engine().cylinders().get(0),
                new CylinderSurvey(
                        "1", diameter == null ? new NotMeasured() : new SingleDiameter(diameter), wall, List.of()),
                shop.request(Condition.WORN, "standard", List.of()).measuring(),
                Optional.ofNullable(whenNew));

        assertThat(hole.wear()).isEqualTo(Optional.ofNullable(wear));
        assertThat(hole.uncertainty()).isEqualTo(uncertainty);
        assertThat(hole.budget().isPresent()).isEqualTo(!uncertainty.equals(Length.ZERO));
        assertThat(hole.diameters().isPresent()).isEqualTo(diameter != null);
    }
}
