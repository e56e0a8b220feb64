package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WithdrawalTest {

    private static Withdrawal withdrawal(Withdrawal.State state, String successor) {
        return new Withdrawal(
                new PartNumber("OLD-1"), state, Optional.ofNullable(successor).map(PartNumber::new), "");
    }

    @ParameterizedTest
    @CsvSource({"REPLACED, NEW-1", "DISCONTINUED, ", "NEVER_MADE, "})
    void onlyWhatWasReplacedHasASuccessor(Withdrawal.State state, String successor) {
        assertThat(withdrawal(state, successor).replacedBy().map(PartNumber::text))
                .isEqualTo(Optional.ofNullable(successor));
    }

    @ParameterizedTest
    @CsvSource({"REPLACED, ", "DISCONTINUED, NEW-1", "NEVER_MADE, NEW-1"})
    void aSuccessorAmissIsRefused(Withdrawal.State state, String successor) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> withdrawal(state, successor))
                .withMessageContaining("OLD-1 is " + state.label());
    }
}
