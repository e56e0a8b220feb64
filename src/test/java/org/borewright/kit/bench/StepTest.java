package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Hand;
import org.borewright.catalog.RodEnd;
import org.borewright.catalog.Strokes;
import org.borewright.kit.TwinShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepTest {

    private static final Set<Step> OF_SOME = EnumSet.of(
            Step.TORQUE_PLATE,
            Step.CHAMFER,
            Step.CHAMFER_PORTS,
            Step.CHOKE,
            Step.GAPS_APART,
            Step.PEGS,
            Step.HANDS,
            Step.CLIPS);

    /** Torque plate and choke have cases of their own. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            CONSTRUCTION, STROKES, PRESSED, RIGHT, STEPS
            IRON_BARREL,  FOUR,    false,   ANY,   CHAMFER GAPS_APART CLIPS
            IRON_BARREL,  FOUR,    true,    ANY,   CHAMFER GAPS_APART
            IRON_BARREL,  FOUR,    false,   RIGHT, CHAMFER GAPS_APART HANDS CLIPS
            IRON_BARREL,  TWO,     false,   ANY,   CHAMFER_PORTS PEGS CLIPS
            PLATED,       TWO,     false,   ANY,   PEGS CLIPS
            """)
    void anEngineIsToldTheStepsThatConcernIt(
            Construction construction, Strokes strokes, boolean pressed, Hand right, String steps) {
        TwinShop shop = new TwinShop();
        shop.construction = construction;
        shop.strokes = strokes;
        shop.hands = List.of(Hand.ANY, right);
        shop.rodEnd = new RodEnd(shop.rodEnd.seat(), pressed, shop.rodEnd.bearing());

        List<Step> told = Step.of(shop.shelf().engine());

        assertThat(told).filteredOn(OF_SOME::contains).extracting(Step::name).containsExactly(steps.split(" ", -1));
        assertThat(told)
                .filteredOn(step -> !OF_SOME.contains(step))
                .containsExactlyElementsOf(Arrays.stream(Step.values())
                        .filter(step -> !OF_SOME.contains(step))
                        .toList());
    }

    @Test
    void everyStepIsASentenceOfItsOwn() {
        assertThat(Step.values()).extracting(Step::text).doesNotHaveDuplicates().allMatch(text -> text.endsWith("."));
    }
}
