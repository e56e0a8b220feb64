package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChokeTest {

    /** The mean of the hole is 70.000. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            LEAST,  GREATEST, TOP,       BOTTOM,    EACH WAY, AT THE LEAST
            0.010,  0.030,    69.990,    70.010,    0.010,    0.010
            0.020,  0.020,    69.990,    70.010,    0.010,    0.020
            0,      0.020,    69.995,    70.005,    0.005,    0
            -0.010, 0.010,    70.000,    70.000,    0,        0
            -0.030, -0.010,   70.010,    69.990,    0.010,    0.010
            0.010,  0.010003, 69.995,    70.005,    0.005,    0.010
            """)
    void theEndsLieToEachSideOfTheMean(
            Length least, Length greatest, Length top, Length bottom, Length eachWay, Length difference) {
        Choke choke = new Choke(new Limits(least, greatest));
        Length mean = Length.parseMillimetres("70");

        assertThat(choke.atTop(mean)).isEqualTo(top);
        assertThat(choke.atBottom(mean)).isEqualTo(bottom);
        assertThat(choke.eachWay()).isEqualTo(eachWay);
        assertThat(choke.leastDifference()).isEqualTo(difference);
    }
}
