package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.survey;

import java.util.List;
import java.util.Optional;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.request.Condition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The twin is made as standard, +0.25, +0.50, +0.75 and +1.00: a size leaves as many rebuilds as there are sizes above it. */
class LeftInHoleTest {

    private final TwinShop shop = new TwinShop();

    /** The bar comes to 0.05 mm below the finish and may clean up what is read so large less U, the hone to 0.005 mm below it. */
    @ParameterizedTest(name = "{0} read as {1}: {2}")
    @CsvSource({
        // a hone at the present size may do: none is taken
        "standard, 69.980, 4",
        // +0.25 may do: it is the first of the four
        "standard, 70.110, 4",
        // +0.25 is eaten by wear: 70.200 < 70.300
        "standard, 70.300, 3",
        "standard, 70.500, 2",
        "standard, 70.900, 1",
        // 70.950 at +1.00, and beyond it
        "standard, 70.960, 0",
        "+0.50, 70.480, 2",
        "+0.50, 70.560, 2",
        "+0.50, 70.720, 1",
    })
    void whatWearHasEatenIsNoLongerLeftInAWornHole(String present, String read, int left) {
        List<SizeRow> table = shop.worn(present, read, "69.990").table();

        assertThat(LeftInHole.of(table, "1", shop.size(present), Condition.WORN))
                .contains(new RebuildsLeft(left, left));
    }

    @Test
    void eachHoleCountsByItself() {
        List<SizeRow> table = shop.worn("standard", "70.300", "69.980").table();

        assertThat(LeftInHole.of(table, "2", shop.size("standard"), Condition.WORN))
                .contains(new RebuildsLeft(4, 4));
    }

    @Test
    void ofAWornHoleWhoseSizeNobodyKnowsNothingIsTold() {
        List<SizeRow> table = shop.worn("standard", "70.110", "70.020").table();

        assertThat(LeftInHole.of(table, "1", Optional.empty(), Condition.WORN)).isEmpty();
    }

    /** Finished to a target: 70.250 is +0.25, and what lies between two sizes is of none. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"70.000, 4", "70.250, 3", "71.000, 0", "71.300, "})
    void aFinishedHoleHasWhatItsSizeLeaves(String read, Integer left) {
        List<SizeRow> table = shop.ask(
                        shop.request(Condition.FINISHED, "standard", List.of(survey("1", read), survey("2", read))))
                .table();

        assertThat(LeftInHole.of(table, "1", Optional.empty(), Condition.FINISHED))
                .isEqualTo(Optional.ofNullable(left).map(count -> new RebuildsLeft(count, count)));
    }
}
