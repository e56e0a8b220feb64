package org.borewright.api.match.answer.size;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.catalog.Construction;
import org.borewright.kit.TwinShop;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What would spare the other hole of the twin: a reading first, where one can tell, and then what a specialist would have to judge. */
class HardestAnswerTest {

    private final TwinShop shop = new TwinShop();

    private HardestAnswer hardest(String first, String second) {
        return HardestAnswer.of(shop.worn("standard", first, second), Construction.BLOCK, LengthUnit.MILLIMETRE);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            70.060 | 70.150 | the readings that could save a step (couldSave)
            70.060 | 70.260 | the readings that could save a step (couldSave): they lessen it, to +0.50, and do not avoid it
            70.060 | 70.900 | the readings that could save a step (couldSave): they may prove +1.00 for all
            """)
    void readingsOfTheHardestHoleAreSaidFirstAndWhatTheyCanDo(String first, String second, String way) {
        assertThat(hardest(first, second).wouldAvoid()).hasSize(2).first().isEqualTo(way);
    }

    @Test
    void whereNoReadingTellsOnlyANewWallDoes() {
        assertThat(hardest("70.060", "71.000").wouldAvoid())
                .singleElement()
                .asString()
                .endsWith(
                        ", for cylinder 2, finished with the others to +0.25: a specialist judges whether it can be had");
    }
}
