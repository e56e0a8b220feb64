package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhenNewTest {

    @ParameterizedTest(name = "recorded {0}, unworn {1}, present size {2}, reading {3}: {4} from {5}")
    @CsvSource({
        // the record before the unworn wall before the present size
        "70.300, 70.200, 69.980, 70.310, 70.300, LAST_FINISH",
        "      , 70.200, 69.980, 70.310, 70.200, UNWORN_WALL",
        "      ,       , 69.980, 70.310, 69.980, PRESENT_SIZE",
        "70.300,       ,       ,       , 70.300, LAST_FINISH",
        // a hole cannot have been larger than it is: a smaller reading replaces what was told
        "70.300,       , 69.980, 70.299999, 70.299999, SMALLEST_READING",
        "      , 70.200, 69.980, 70.199999, 70.199999, SMALLEST_READING",
        "      ,       , 69.980, 69.979999, 69.979999, SMALLEST_READING",
        "      ,       , 69.980, 69.980, 69.980, PRESENT_SIZE",
        // a reading alone tells nothing
        "      ,       ,       , 70.310,       , ",
    })
    void theBestKnowledgeOfTheSizeWhenNewIsTaken(
            String recorded, String unworn, String present, String reading, String diameter, WhenNew.From from) {
        Wall wall =
                new Wall(length(recorded), length(unworn), Optional.empty(), Optional.empty(), Optional.empty(), false);

        assertThat(WhenNew.of(wall, length(present), length(reading)))
                .isEqualTo(length(diameter).map(known -> new WhenNew(known, from)));
    }

    private static Optional<Length> length(String millimetres) {
        return Optional.ofNullable(millimetres).map(Length::parseMillimetres);
    }
}
