package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;

import java.util.List;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.ClipShape;
import org.borewright.fit.shape.PinShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClipFloatTest {

    private static final Limits SPAN = limits("50.000", "50.100");
    private static final Limits WIRE = limits("1.000", "1.020");
    private static final Limits PIN_LENGTH = limits("47.600", "47.800");

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SPAN,            WIRE,        PIN,             LEAST,  GREATEST
            50.000 50.100,   1.000 1.020, 47.600 47.800,   0.160,  0.500
            50.000 50.000,   1.000 1.000, 48.000 48.000,   0,      0
            50.000 50.100,   1.000 1.020, 47.900 48.000,   -0.040, 0.200
            50.000 50.000,   1.000 1.001, 47.000 47.000,   0.998,  1.000
            49.999999 50.1,  1.000 1.020, 47.600 47.800,   0.159999, 0.500
            """)
    void isTheSpanLessTwoWiresLessThePin(String span, String wire, String pin, Length least, Length greatest) {
        ClipSeat seat = seat(range(span), limits("0", "1"), mm("0.1"));
        assertThat(ClipFloat.of(seat, new ClipShape(range(wire)), pin(range(pin))))
                .isEqualTo(new Limits(least, greatest));
    }

    /** Span 50.000 to 50.100, wire 1.000 to 1.020, pin 47.600 to 47.800: float 0.160 to 0.500. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            AT LEAST, AT MOST,  LEAST, GREATEST
            0.160,    0.500,    IN,    IN
            0.160001, 0.500,    OUT,   IN
            0.160,    0.499999, IN,    OUT
            0.159999, 0.500001, IN,    IN
            """)
    void theFloatAllowedIsInclusive(Length atLeast, Length atMost, Outcome least, Outcome greatest) {
        ClipSeat seat = seat(SPAN, new Limits(atLeast, atMost), mm("0.1"));
        List<Comparison> checks = ClipFloat.check(seat, new ClipShape(WIRE), pin(PIN_LENGTH));
        assertThat(checks)
                .extracting(Comparison::rule)
                .containsExactly(
                        Rule.CLIP_FLOAT_LEAST, Rule.CLIP_FLOAT_GREATEST, Rule.CLIP_PLAY_LEAST, Rule.CLIP_PLAY_GREATEST);
        assertThat(checks.subList(0, 2)).extracting(Comparison::outcome).containsExactly(least, greatest);
    }

    /** A pin without float breaks a clip: with no float allowed below zero, one nanometre too long is out. */
    @ParameterizedTest
    @CsvSource({"47.960, IN", "47.960001, OUT", "47.959999, IN"})
    void aPinLongerThanTheRoomIsOut(Length longest, Outcome outcome) {
        ClipSeat seat = seat(SPAN, limits("0", "1"), mm("0.1"));
        Limits length = new Limits(mm("47.600"), longest);
        assertThat(ClipFloat.check(seat, new ClipShape(WIRE), pin(length))
                        .get(0)
                        .outcome())
                .isEqualTo(outcome);
    }

    /** Groove 1.020 to 1.100 wide. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            WIRE,           PLAY AT MOST, LEAST, GREATEST
            1.000 1.020,    0.100,        IN,    IN
            1.000001 1.019999, 0.100,     IN,    IN
            1.000 1.020001, 0.100,        OUT,   IN
            1.000 1.020,    0.099999,     IN,    OUT
            0.999999 1.020, 0.100,        IN,    OUT
            1.020 1.020,    0.080,        IN,    IN
            """)
    void theWireGoesIntoItsGrooveAndDoesNotRattle(String wire, Length playAtMost, Outcome least, Outcome greatest) {
        ClipSeat seat = seat(SPAN, limits("0", "1"), playAtMost);
        List<Comparison> checks = ClipFloat.check(seat, new ClipShape(range(wire)), pin(PIN_LENGTH));
        assertThat(checks.subList(2, 4)).extracting(Comparison::outcome).containsExactly(least, greatest);
    }

    private static ClipSeat seat(Limits span, Limits endFloat, Length playAtMost) {
        return new ClipSeat(span, limits("1.020", "1.100"), endFloat, playAtMost);
    }

    private static PinShape pin(Limits length) {
        return new PinShape(limits("17.996", "18.000"), length);
    }

    private static Limits range(String text) {
        int gap = text.indexOf(' ');
        return limits(text.substring(0, gap), text.substring(gap + 1).strip());
    }
}
