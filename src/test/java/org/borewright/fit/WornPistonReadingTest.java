package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WornPistonReadingTest {

    /** 69.940 to 69.950 mm: more than 0.05 mm small is across the pin (common practice), more than U large is another piston. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            READING,   U,     DOUBTED
            69.890000, 0.003, false
            69.889999, 0.003, true
            69.953000, 0.003, false
            69.953001, 0.003, true
            69.950001, 0,     true
            """)
    void aReadingThatNoPistonOfItsNumberCanHaveIsDoubted(Length reading, Length uncertainty, boolean doubted) {
        assertThat(WornPistonReading.doubted(reading, uncertainty, Shapes.limits("69.940", "69.950"))
                        .isPresent())
                .isEqualTo(doubted);
    }
}
