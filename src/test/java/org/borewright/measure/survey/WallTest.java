package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WallTest {

    @Test
    void ofAnUnknownWallNothingIsFilledIn() {
        assertThat(Wall.UNKNOWN)
                .isEqualTo(new Wall(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false));
    }

    @ParameterizedTest(name = "told {0}, recalled {1}: {2}")
    @CsvSource({", 70.260, 70.260", "70.500, 70.260, 70.500"})
    void theLastVisitIsRecalledOnlyWhereNobodyToldOfIt(Length told, Length recalled, Length lastFinish) {
        Wall wall = new Wall(
                Optional.ofNullable(told),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);

        assertThat(wall.recalling(recalled).lastFinish()).contains(lastFinish);
    }
}
