package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.nm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarriedTest {

    @ParameterizedTest
    @CsvSource({
        "ONCE, 5000, 5000, 5000",
        "TWICE, 5000, 10000, 2500",
        "TWICE, 5001, 10002, 2500",
        "PI_TIMES, 5000, 15708, 1591",
        "PI_TIMES, 1, 4, 0",
        "PI_TIMES, 0, 0, 0"
    })
    void theUncertaintyOfTheValueGoesUpAndThatOfTheReadingDown(Carried carried, long given, long from, long reading) {
        assertThat(carried.from(nm(given))).isEqualTo(nm(from));
        assertThat(carried.readingWithin(nm(given))).isEqualTo(nm(reading));
    }

    @Property
    boolean aReadingWithinItsBoundsKeepsTheValueWithinItsOwn(
            @ForAll Carried carried, @ForAll @LongRange(min = 0, max = 10_000_000) long ofValue) {
        return !carried.from(carried.readingWithin(nm(ofValue))).isMoreThan(nm(ofValue));
    }
}
