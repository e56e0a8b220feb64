package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckTest {

    /** Checks by how they ended; those that hold, and those that are out, by their place in the list. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            CHECKS,                      ALL PASS, HOLDING, OUT
            '',                          true,     '',      ''
            IN,                          true,     '',      ''
            IN NOT_CHECKED IN,           true,     '',      ''
            IN OUT IN,                   false,    1,       1
            TOO_CLOSE IN,                false,    0,       ''
            IN UNKNOWN,                  false,    1,       ''
            OUT IN TOO_CLOSE OUT UNKNOWN,false,    0 2 3 4, 0 3
            """)
    void aListPassesWhereNothingInItHolds(String outcomes, boolean allPass, String holding, String out) {
        List<Check> checks = words(outcomes).map(CheckTest::ended).toList();
        assertThat(Check.allPass(checks)).isEqualTo(allPass);
        assertThat(Check.holding(checks)).isEqualTo(at(checks, holding));
        assertThat(Check.ended(checks, Outcome.OUT)).isEqualTo(at(checks, out));
    }

    private static List<Check> at(List<Check> checks, String places) {
        return words(places).map(Integer::parseInt).map(checks::get).toList();
    }

    private static Check ended(String word) {
        Outcome outcome = Outcome.valueOf(word);
        return switch (outcome) {
            case IN -> measured(10);
            case OUT -> measured(-10);
            case TOO_CLOSE -> measured(1);
            case UNKNOWN, NOT_CHECKED -> new Unchecked(Rule.WALL_LEFT, "", outcome, "measure it");
        };
    }

    private static Comparison measured(long margin) {
        return Rule.BRIDGE
                .atLeast("1 and 2", Length.ofNanometres(margin), Length.ZERO)
                .within(Length.ofNanometres(5));
    }

    private static Stream<String> words(String text) {
        return Arrays.stream(text.split(" ")).filter(word -> !word.isEmpty());
    }
}
