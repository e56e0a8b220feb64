package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SenseTest {

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SENSE,    LABEL,    AT LIMIT, ABOVE, BELOW
            AT_LEAST, at least, 0,        7,     -7
            AT_MOST,  at most,  0,        -7,    7
            EXACTLY,  exactly,  0,        -7,    -7
            """)
    void theMarginIsCountedInward(Sense sense, String label, long atLimit, long above, long below) {
        assertThat(sense.label()).isEqualTo(label);
        assertThat(sense.margin(100, 100)).isEqualTo(atLimit);
        assertThat(sense.margin(107, 100)).isEqualTo(above);
        assertThat(sense.margin(93, 100)).isEqualTo(below);
    }

    @Property
    boolean whatIsInsideOneWayIsAsFarOutsideTheOther(
            @ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long value,
            @ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long limit) {
        return Sense.AT_LEAST.margin(value, limit) == -Sense.AT_MOST.margin(value, limit)
                && Sense.EXACTLY.margin(value, limit) == -Math.abs(value - limit);
    }

    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 9223372036854775807, -1",
        "AT_MOST, -2, 9223372036854775807",
        "EXACTLY, 9223372036854775807, -1"
    })
    void aMarginBeyondTheRangeIsAFault(Sense sense, long value, long limit) {
        assertThatThrownBy(() -> sense.margin(value, limit)).isInstanceOf(ArithmeticException.class);
    }
}
