package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommonPracticeTest {

    private static final Map<String, Length> FIGURES = Map.ofEntries(
            Map.entry("hone stock", CommonPractice.honeStock()),
            Map.entry("centring error", CommonPractice.centringError()),
            Map.entry("hone clean-up", CommonPractice.honeCleanUp()),
            Map.entry("gasket margin", CommonPractice.gasketMargin()),
            Map.entry("feeler uncertainty", CommonPractice.feelerUncertainty()),
            Map.entry("finished shape", CommonPractice.finishedShape()),
            Map.entry("piston read amiss", CommonPractice.pistonReadAmiss()),
            Map.entry("wall uncertainty", CommonPractice.wallUncertainty()),
            Map.entry("finished tighter", CommonPractice.finishedTighter()),
            Map.entry("believed below", CommonPractice.believedBelow()),
            Map.entry("believed above", CommonPractice.believedAbove()),
            Map.entry("far from neighbours", CommonPractice.farFromNeighbours()),
            Map.entry("clearly oval", CommonPractice.clearlyOval()));

    /** From 5 to 35 °C. */
    @Test
    void aRoomThatPeopleWorkInIsNotFarFromTwentyDegrees() {
        assertThat(CommonPractice.roomWithinKelvins()).isEqualTo(15);
    }

    /** True of the trade without a single source; every one a default. */
    @ParameterizedTest
    @CsvSource({
        "hone stock, 0.05",
        "centring error, 0.02",
        "hone clean-up, 0.005",
        "gasket margin, 0.5",
        "feeler uncertainty, 0.010",
        "finished shape, 0.010",
        "piston read amiss, 0.05",
        "wall uncertainty, 0.05",
        "finished tighter, 0.02",
        "believed below, 0.10",
        "believed above, 0.50",
        "far from neighbours, 0.15",
        "clearly oval, 0.02"
    })
    void theFiguresOfTheTrade(String figure, Length length) {
        assertThat(FIGURES).containsEntry(figure, length);
    }

    /** 0.040 in = 1.016 mm exactly. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 1.00", "INCH, 1.016"})
    void theLargestOversizeForRoadUseFollowsTheSteps(LengthUnit steps, Length largest) {
        assertThat(CommonPractice.largestOversize(steps)).isEqualTo(largest);
    }
}
