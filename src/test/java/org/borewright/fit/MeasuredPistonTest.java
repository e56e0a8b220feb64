package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.worth;

import org.borewright.fit.shape.MassRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredPistonTest {

    /** Tolerance 69.960 to 69.970: across the pin it would read less than 69.910. */
    @ParameterizedTest
    @CsvSource({"69.910000, IN", "69.909999, OUT", "69.960, IN", "69.980, IN"})
    void aReadingFarTooSmallWasTakenElsewhere(Length diameter, Outcome outcome) {
        Comparison reading = MeasuredPiston.reading("A", diameter, limits("69.960", "69.970"));
        assertThat(reading.rule()).isEqualTo(Rule.PISTON_READING);
        assertThat(reading.place()).isEqualTo("A");
        assertThat(reading.outcome()).isEqualTo(outcome);
    }

    /** Listed from 318.8 to 321.8 g: a tenth beside it, or with pin and clips twice as much, is no slip; a digit that slipped is farther off. */
    @ParameterizedTest
    @CsvSource({
        "286920,  true,  AT_LEAST, IN",
        "286919,  true,  AT_LEAST, OUT",
        "320449,  true,  AT_LEAST, IN",
        "320450,  true,  AT_MOST,  IN",
        "353980,  true,  AT_MOST,  IN",
        "353981,  true,  AT_MOST,  OUT",
        "31900,   true,  AT_LEAST, OUT",
        "3190000, true,  AT_MOST,  OUT",
        "420000,  false, AT_LEAST, IN",
        "643600,  false, AT_MOST,  IN",
        "643601,  false, AT_MOST,  OUT",
        "286919,  false, AT_LEAST, OUT",
    })
    void aMassFarFromWhatIsListedWasMisread(long milligrams, boolean bare, Sense nearer, Outcome outcome) {
        Comparison mass = MeasuredPiston.mass("A", milligrams, new MassRange(318_800, 321_800), bare);

        assertThat(mass.rule()).isEqualTo(Rule.PISTON_MASS);
        assertThat(mass.place()).isEqualTo("A");
        assertThat(mass.sense()).isEqualTo(nearer);
        assertThat(mass.outcome()).isEqualTo(outcome);
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            DIAMETER,  U,     LEAST,     GREATEST
            69.963000, 0.003, IN,        IN
            69.962999, 0.003, TOO_CLOSE, IN
            69.957001, 0.003, TOO_CLOSE, IN
            69.957000, 0.003, OUT,       IN
            69.967000, 0.003, IN,        IN
            69.967001, 0.003, IN,        TOO_CLOSE
            69.972999, 0.003, IN,        TOO_CLOSE
            69.973000, 0.003, IN,        OUT
            69.965000, 0.006, TOO_CLOSE, TOO_CLOSE
            """)
    void bothLimitsOfTheToleranceAreGuarded(Length diameter, Length uncertainty, Outcome least, Outcome greatest) {
        assertThat(MeasuredPiston.check("A", diameter, worth(uncertainty), limits("69.960", "69.970")))
                .extracting(Comparison::rule, Comparison::place, Comparison::outcome)
                .containsExactly(tuple(Rule.PISTON_LEAST, "A", least), tuple(Rule.PISTON_GREATEST, "A", greatest));
    }
}
