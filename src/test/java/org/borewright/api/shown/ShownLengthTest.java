package org.borewright.api.shown;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.Quantity;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownLengthTest {

    private static final long TEN_METRES = 10_000_000_000L;
    private static final BigDecimal INCH = new BigDecimal("25400000");

    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @CsvSource(textBlock = """
            70260000,    mm, '{"value":70.260,"nm":70260000}'
            70260001,    mm, '{"value":70.260001,"nm":70260001}'
            70260010,    mm, '{"value":70.26001,"nm":70260010}'
            0,           mm, '{"value":0.000,"nm":0}'
            -5000,       mm, '{"value":-0.005,"nm":-5000}'
            -1,          mm, '{"value":-0.000001,"nm":-1}'
            25400000,    in, '{"value":1.000,"nm":25400000}'
            254,         in, '{"value":0.00001,"nm":254}'
            10000000000, mm, '{"value":10000.000,"nm":10000000000}'
            """)
    void isWrittenWithItsExactNanometresBeside(long nanometres, String unit, String written)
            throws JsonProcessingException {
        LengthUnit in = unit.equals("mm") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;

        assertThat(JSON.writeValueAsString(ShownLength.of(Length.ofNanometres(nanometres), in)))
                .isEqualTo(written);
    }

    @Property
    void millimetresAreExact(@ForAll @LongRange(min = -TEN_METRES, max = TEN_METRES) long nanometres)
            throws JsonProcessingException {
        JsonNode written = written(ShownLength.of(Length.ofNanometres(nanometres), LengthUnit.MILLIMETRE));

        assertThat(written.get("value").decimalValue()).isEqualByComparingTo(BigDecimal.valueOf(nanometres, 6));
        assertThat(written.get("nm").longValue()).isEqualTo(nanometres);
    }

    /** Against the exact quotient of decimals; one inch is 25.4 mm exactly (NIST SP 811, B.8). */
    @Property
    void inchesNeverFlatter(
            @ForAll @LongRange(min = -TEN_METRES, max = TEN_METRES) long nanometres, @ForAll Flattery kind)
            throws JsonProcessingException {
        BigDecimal exact = BigDecimal.valueOf(nanometres).divide(INCH, MathContext.DECIMAL128);

        JsonNode written = written(ShownLength.of(Length.ofNanometres(nanometres), LengthUnit.INCH, kind));

        assertThat(written.get("value").decimalValue()).isEqualByComparingTo(exact.setScale(6, kind.rounding()));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            LENGTH,   75000,    '{"value":0.075,"unit":"mm","nm":75000}'
            RATIO,    9390001,  '{"value":9.390001,"unit":"1"}'
            RATIO,    9390000,  '{"value":9.390000,"unit":"1"}'
            MASS,     1500,     '{"value":1.500,"unit":"g"}'
            PER_CENT, 843750,   '{"value":84.3750,"unit":"%"}'
            """)
    void amountsAreWrittenWithTheirUnit(Quantity quantity, long units, String written) throws JsonProcessingException {
        ShownAmount amount = ShownAmount.of(units, quantity, LengthUnit.MILLIMETRE, Flattery.VALUE);

        assertThat(JSON.writeValueAsString(amount)).isEqualTo(written);
    }

    private static JsonNode written(ShownLength length) throws JsonProcessingException {
        return JSON.reader()
                .with(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .readTree(JSON.writeValueAsString(length));
    }
}
