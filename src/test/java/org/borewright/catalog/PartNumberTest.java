package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartNumberTest {

    @ParameterizedTest
    @ValueSource(strings = {"P-1", "ABC", "123", "A23456789-123456789-1234"})
    void threeToTwentyFourCapitalsDigitsAndHyphensMakeANumber(String text) {
        assertThat(new PartNumber(text)).hasToString(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "P1", "p-1", "-P1", "P1-", "P 1", "A23456789-123456789-12345", "P-1\n"})
    void anythingElseIsNoNumber(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PartNumber(text))
                .withMessageContaining("3 to 24 capital letters");
    }

    @ParameterizedTest
    @CsvSource({"P-1, P-2, -1", "P-2, P-1, 1", "P-1, P-1, 0", "P-10, P-9, -1"})
    void numbersAreListedInTheOrderOfTheirLetters(String one, String other, int order) {
        assertThat(Integer.signum(new PartNumber(one).compareTo(new PartNumber(other))))
                .isEqualTo(order);
    }
}
