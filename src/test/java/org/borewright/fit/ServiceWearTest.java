package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ServiceWearTest {

    /** 70.000 mm and 0.100 mm more: a reading of U 0.005 mm must stay 0.005 below. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            LARGEST,   U,     OUTCOME
            70.095000, 0.005, IN
            70.095001, 0.005, TOO_CLOSE
            70.100000, 0.005, TOO_CLOSE
            70.104999, 0.005, TOO_CLOSE
            70.105000, 0.005, OUT
            70.100000, 0,     IN
            70.100001, 0,     OUT
            """)
    void aHoleRunsOnUpToItsAllowanceOverThePresentSize(Length largest, Length uncertainty, Outcome outcome) {
        Comparison check =
                ServiceWear.check(largest, Shapes.worth(uncertainty), Shapes.mm("70.000"), Shapes.mm("0.100"));
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.rule()).isEqualTo(Rule.SERVICE_WEAR);
        assertThat(check.limit()).isEqualTo(Amount.of(Shapes.mm("70.100")));
    }
}
