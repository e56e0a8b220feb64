package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoxTest {

    private static final PartNumber CLIP = new PartNumber("CLIP-1");

    private static Box pack(Map<PartNumber, Integer> contents) {
        return new Box(new PartNumber("PACK-1"), Box.Kind.PACK, new TreeMap<>(contents));
    }

    @Test
    void aLoosePartIsABoxOfOne() {
        assertThat(Box.loose(CLIP)).isEqualTo(new Box(CLIP, Box.Kind.LOOSE, new TreeMap<>(Map.of(CLIP, 1))));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 100})
    void aPackHoldsOneOrMore(int count) {
        assertThat(pack(Map.of(CLIP, count)).contents()).containsEntry(CLIP, count);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1})
    void aBoxThatHoldsNoneOfAPartIsRefused(int count) {
        Map<PartNumber, Integer> contents = Map.of(CLIP, count, new PartNumber("PIN-1"), 1);
        assertThatIllegalArgumentException().isThrownBy(() -> pack(contents)).withMessage("box PACK-1 holds nothing");
    }

    /** What catalog-data/README.md promises whoever packs the boxes. */
    @Test
    void thereIsAMostOfBoxesThatAreTriedTogether() {
        assertThat(Box.mostWays()).isEqualTo(50_000);
        assertThat(Box.mostPacks()).isEqualTo(10);
    }

    @Test
    void anEmptyBoxIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> pack(Map.of())).withMessage("box PACK-1 holds nothing");
    }
}
