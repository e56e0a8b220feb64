package org.borewright.order.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line of the journal holds 4,000 characters of what stood before, and of what stands now. */
class DeedTest {

    @ParameterizedTest
    @CsvSource({"0, false", "3999, false", "4000, false", "4001, true", "9000, true"})
    void whatIsLongerThanALineHoldsIsShortenedAndSaysSo(int length, boolean shortened) {
        String before = "b".repeat(length);
        String after = "a".repeat(length);

        Deed deed = new Deed("Ada", "order 1", Optional.of(1L), "note", before, after, false, Optional.empty());

        assertThat(deed.before()).isEqualTo(shortened ? "b".repeat(3_999) + "…" : before);
        assertThat(deed.after()).isEqualTo(shortened ? "a".repeat(3_999) + "…" : after);
    }
}
