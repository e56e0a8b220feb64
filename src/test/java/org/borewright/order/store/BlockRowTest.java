package org.borewright.order.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever holds some tags holds them in one order, however they were typed. */
class BlockRowTest {

    private static List<String> inTurn(String... tags) {
        return Stream.of(tags).sorted(BlockRow.IN_TURN).toList();
    }

    @Test
    void tagsAreHeldInOneOrderWhateverTheirCase() {
        assertThat(inTurn("B-2", "a-1", "C-3")).containsExactly("a-1", "B-2", "C-3");
        assertThat(inTurn("c-3", "A-1", "b-2")).containsExactly("A-1", "b-2", "c-3");
    }

    /** Long ago two blocks could be told apart by case alone. */
    @Test
    void tagsThatDifferByCaseAloneAreTwo() {
        assertThat(inTurn("b-17", "B-17")).containsExactly("B-17", "b-17");
    }
}
