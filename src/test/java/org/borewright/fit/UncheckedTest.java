package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

class UncheckedTest {

    @ParameterizedTest
    @EnumSource(names = {"UNKNOWN", "NOT_CHECKED"})
    void whatWasNotAskedClaimsNoResult(Outcome outcome) {
        assertThat(new Unchecked(Rule.WALL_LEFT, "", outcome, "measure it").outcome())
                .isEqualTo(outcome);
    }

    @ParameterizedTest
    @EnumSource(
            mode = Mode.EXCLUDE,
            names = {"UNKNOWN", "NOT_CHECKED"})
    void aResultWithoutAValueIsRefused(Outcome outcome) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Unchecked(Rule.WALL_LEFT, "", outcome, "measure it"))
                .withMessageContaining("WALL_LEFT has no result, not " + outcome);
    }
}
