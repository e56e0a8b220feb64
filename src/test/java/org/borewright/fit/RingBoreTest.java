package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingBoreTest {

    /** Oversize piston, matching oversize rings: TM 9-2320-289-34, table 3-1. +0.020 in (0.508 mm) is never +0.50. */
    @ParameterizedTest
    @CsvSource({
        "70.250, 70.250, IN",
        "70.000, 70.250, OUT",
        "70.250001, 70.250, OUT",
        "70.249999, 70.250, OUT",
        "70.508, 70.500, OUT"
    })
    void aRingSetIsMadeForOneBore(Length rings, Length piston, Outcome outcome) {
        Comparison check = RingBore.check(rings, piston);
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.rule()).isEqualTo(Rule.RING_BORE);
    }
}
