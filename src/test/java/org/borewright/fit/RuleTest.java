package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RuleTest {

    @ParameterizedTest
    @EnumSource
    void everyRuleSaysWhatItAsksWhereItComesFromAndWhatToDo(Rule rule) {
        assertThat(rule.title()).isNotBlank();
        assertThat(rule.source()).matches(".*(ISO|JCGM|\\.csv|common practice|geometry|standard).*");
        assertThat(rule.wayOut()).isNotBlank();
    }

    @Test
    void noTwoRulesShareATitle() {
        assertThat(Arrays.stream(Rule.values()).map(Rule::title)).doesNotHaveDuplicates();
    }

    /** The order in which a machinist asks: hole, piston, rings, pin, clips, gasket, deck, set, torque. */
    @ParameterizedTest
    @CsvSource({
        "CLEAN_UP, CLEARANCE_LEAST",
        "BRIDGE, CLEARANCE_LEAST",
        "CLEARANCE_GREATEST, RING_BORE",
        "RING_BACK, PIN_IN_PISTON_LEAST",
        "PIN_IN_ROD_GREATEST, CLIP_FLOAT_LEAST",
        "CLIP_PLAY_GREATEST, GASKET_OPENING",
        "CROWN_IN_MOUTH, PISTON_TO_HEAD_LEAST",
        "COMPRESSION_RATIO, MASS_SPREAD",
        "MASS_SPREAD, PRELOAD"
    })
    void theRulesStandInTheOrderOfTheWork(Rule earlier, Rule later) {
        assertThat(earlier).isLessThan(later);
    }

    @ParameterizedTest
    @CsvSource({"true, NOT_CHECKED", "false, UNKNOWN"})
    void aRuleThatCouldNotBeAskedSaysWhy(boolean doesNotApply, Outcome outcome) {
        Unchecked unchecked = doesNotApply
                ? Rule.PRELOAD.notChecked("head bolt", "because")
                : Rule.PRELOAD.unknown("head bolt", "because");
        assertThat(unchecked).isEqualTo(new Unchecked(Rule.PRELOAD, "head bolt", outcome, "because"));
    }
}
