package org.borewright.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.borewright.order.journal.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The words in which orders, what is tagged for them, and the seals of the journal are told. */
class WordsOfOrdersTest {

    @Test
    void aWordIsWrittenAsInTheTrade() {
        assertThat(Arrays.stream(BlockKind.values()).map(BlockKind::label)).containsExactly("block", "barrel");
        assertThat(Arrays.stream(OrderKind.values()).map(OrderKind::label)).containsExactly("rebuild", "parts alone");
        assertThat(Arrays.stream(Entry.Covers.values()).map(Entry.Covers::label))
                .containsExactly("words", "words and rows");
    }

    /** As it stands in a row or on a paper; nothing else is a state. */
    @ParameterizedTest
    @EnumSource
    void aStateIsFoundByItsWord(State state) {
        assertThat(State.of(state.label())).contains(state);
        assertThat(State.of(state.name())).isEmpty();
    }
}
