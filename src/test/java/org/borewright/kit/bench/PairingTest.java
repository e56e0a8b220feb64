package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.kit.bench.Pairing.Deviation;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PairingTest {

    /** Rows are holes, columns pistons, a dot forbids, c cuts; the answer names the piston of each hole from 1, and a dash for none. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                // one optimum, and the worst of it is the least worst as well (the first two: [T] of the published
                // matrices)
                "4 1 3 / 2 0 5 / 3 2 2 | 2 1 3",
                "400 150 400 / 400 450 600 / 300 225 300 | 2 1 3",
                // the least total would be 13 with a worst of 8; the least worst is 7, though the total is 18
                "0 7 9 / 6 8 9 / 9 9 5 | 2 1 3",
                "0 7 / 7 8 | 2 1",
                // 0 + 10 is less than 6 + 6, and its worst is more
                "0 6 / 6 10 | 2 1",
                // all alike: the first to the first
                "0 0 0 / 0 0 0 / 0 0 0 | 1 2 3",
                "5 5 / 5 5 | 1 2",
                // two optima of 12 with a worst of 8 and of 5: 5 decides
                "5 9 1 / 10 3 2 / 8 7 4 | 1 2 3",
                // equal worst and total both ways: hole 1 takes the lower
                "1 2 / 1 2 | 1 2",
                "3 1 2 / 3 1 2 / 0 0 3 | 2 3 1",
                "3 2 1 / 2 2 1 | 2 3",
                // hands: each hole its own
                ". 3 / 9 . | 2 1",
                // one of two left pistons stays over, and the right hole stays empty
                "4 5 / . . | 1 -",
                "5 4 / . . | 2 -",
                // fewer pistons than holes: the least deviation, then the first hole
                "3 / 2 / 2 | - 1 -",
                "0 / 0 / 0 | 1 - -",
                // hole 1 keeps the piston it has while those after it are asked
                ". 0 / 1 0 / 1 1 | 2 1 -",
                ". 1 / 1 . / 0 0 | 2 - 1",
                // more pistons than holes
                "3 2 1 | 3",
                "2 2 2 / 1 1 1 | 1 2",
                // as many as ever come before the least worst: hole 1 can have only the piston that hole 2 would like
                // best
                "100 . / 0 50 | 1 2",
                ". . | -",
                // a hole is cut only where it must be, whatever the deviation; then the worst of all counts
                "c0 7 / 9 c0 | 2 1",
                "c0 1 / 9 8 | 2 1",
                "c0 9 / 8 1 | 2 1",
                "c5 c0 / 3 2 | 2 1",
                "c2 c0 / 4 1 | 1 2",
                "c0 c0 / 4 1 | 1 2",
                "c0 c0 / 1 4 | 2 1",
                // and rather than that one is left without
                "c9 . / c9 . | 1 -",
                "c9 . / 5 . | - 1",
                "c9 5 / 4 . | 2 1",
            })
    void theWorstCountsFirstThenTheTotalThenTheOrder(String deviations, String pistons) {
        assertThat(shown(Pairing.of(matrix(deviations)))).isEqualTo(pistons);
    }

    /** A nanometre decides, and the largest deviations are still told from it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1073741822 1073741823 / 1073741823 1073741823 | 1 2",
                "1073741823 1073741822 / 1073741822 1073741823 | 2 1",
                "1073741823 1073741822 / 1073741823 1073741823 | 2 1",
                "c1073741823 c1073741822 / c1073741823 c1073741823 | 2 1",
            })
    void aNanometreDecidesBesideTheLargestDeviations(String deviations, String pistons) {
        assertThat(shown(Pairing.of(matrix(deviations)))).isEqualTo(pistons);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "1073741824"})
    void whatIsNoDeviationIsRefused(String deviation) {
        assertThatIllegalArgumentException().isThrownBy(() -> Pairing.of(matrix(deviation)));
    }

    @ParameterizedTest
    @CsvSource({"24, 1", "1, 24"})
    void asManyAsCanBePairedExactlyAre(int holes, int pistons) {
        assertThat(Pairing.of(alike(holes, pistons)))
                .hasSize(holes)
                .startsWith(Optional.of(0))
                .filteredOn(Optional::isPresent)
                .hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"25, 1", "1, 25"})
    void moreThanCanBePairedExactlyIsRefused(int holes, int pistons) {
        assertThatIllegalArgumentException().isThrownBy(() -> Pairing.of(alike(holes, pistons)));
    }

    private static List<List<Optional<Deviation>>> alike(int holes, int pistons) {
        return Collections.nCopies(holes, Collections.nCopies(pistons, Optional.of(new Deviation(Length.ZERO, false))));
    }

    private static List<List<Optional<Deviation>>> matrix(String text) {
        return Arrays.stream(text.split(" / ", -1))
                .map(row -> Arrays.stream(row.split(" ", -1))
                        .map(cell -> cell.equals(".")
                                ? Optional.<Deviation>empty()
                                : Optional.of(new Deviation(
                                        Length.ofNanometres(Long.parseLong(cell.replace("c", ""))),
                                        cell.startsWith("c"))))
                        .toList())
                .toList();
    }

    private static String shown(List<Optional<Integer>> paired) {
        return paired.stream()
                .map(piston -> piston.map(number -> String.valueOf(number + 1)).orElse("-"))
                .collect(Collectors.joining(" "));
    }
}
