package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hold says where: the holes that stand in the way, and no other. */
class HoldsMatchTest {

    @ParameterizedTest(name = "present {0}, {1} and {2}: {3} in {4}")
    @CsvSource({
        // +0.75 is possible for both, and certain for neither
        "standard, 70.480, 70.480, WALL_NOT_PROBED, 1 2",
        // the same, and hole 2 is certain there
        "standard, 70.480, 70.300, WALL_NOT_PROBED, 1",
        "standard, 70.300, 70.480, WALL_NOT_PROBED, 2",
        "standard, -, 70.050, NOT_MEASURED, 1",
        "unknown, 70.050, 70.050, SIZE_WHEN_NEW_NOT_KNOWN, 1 2",
    })
    void only_the_holes_in_the_way_are_named(
            String present, String first, String second, Hold.Reason reason, String cylinders) {
        Match match = new TwinShop().worn(present, first, second);

        assertThat(match.ruling().holds()).extracting(Hold::reason).contains(reason);
        assertThat(match.ruling().holds())
                .filteredOn(hold -> hold.reason() == reason)
                .extracting(hold -> String.join(" ", hold.cylinders()))
                .isEqualTo(List.of(cylinders));
    }
}
