package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;

import java.util.List;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.PinShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PinFitTest {

    private static final Limits ANY = limits("-1", "1");

    @ParameterizedTest
    @CsvFileSource(resources = "/fit/iso-286-fits.csv", useHeadersInDisplayName = true)
    void theFitsOfTheStandardComeOut(
            String fit,
            Length nominal,
            long lowerHole,
            long upperHole,
            long lowerPin,
            long upperPin,
            long least,
            long greatest) {
        PinSeat seat = new PinSeat(around(nominal, lowerHole, upperHole), ANY);
        PinShape pin = pin(around(nominal, lowerPin, upperPin));
        assertThat(PinFit.clearance(pin, seat)).as(fit).isEqualTo(around(Length.ZERO, least, greatest));
    }

    /** TM 9-2815-255-24: pin 41.27 to 41.28 in a bore of 41.28 to 41.30 mm: 0 to 0.03. Its 1.624 in is 41.2496 mm, a stray pin. */
    @ParameterizedTest
    @CsvSource({
        "41.27, 41.28, IN, IN",
        "41.2496, 41.2496, IN, OUT",
        "41.27, 41.280001, OUT, IN",
        "41.269999, 41.28, IN, OUT"
    })
    void aPinOfAnotherSizeIsDetected(Length smallest, Length largest, Outcome least, Outcome greatest) {
        PinSeat seat = new PinSeat(limits("41.28", "41.30"), limits("0", "0.03"));
        List<Comparison> checks = PinFit.inPiston(pin(new Limits(smallest, largest)), seat);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(least, greatest);
    }

    /** Pin 18.000 to 18.004, pressed into a rod eye of 17.976 to 17.984: a press of 0.016 to 0.028. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            AT LEAST,  AT MOST,   LEAST, GREATEST
            -0.028,    -0.016,    IN,    IN
            -0.027999, -0.016,    OUT,   IN
            -0.028,    -0.016001, IN,    OUT
            -0.028001, -0.015999, IN,    IN
            """)
    void aPressIsAClearanceBelowZero(Length atLeast, Length atMost, Outcome least, Outcome greatest) {
        PinSeat eye = new PinSeat(limits("17.976", "17.984"), new Limits(atLeast, atMost));
        List<Comparison> checks = PinFit.inRod(pin(limits("18.000", "18.004")), eye);
        assertThat(checks)
                .extracting(Comparison::rule)
                .containsExactly(Rule.PIN_IN_ROD_LEAST, Rule.PIN_IN_ROD_GREATEST);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(least, greatest);
    }

    /** Pin 17.996 to 18.000 in a boss of 18.000 to 18.006: 0 to 0.010. */
    @ParameterizedTest
    @CsvSource({"0, 0.010, IN, IN", "-0.000001, 0.010001, IN, IN", "0.000001, 0.010, OUT, IN", "0, 0.009999, IN, OUT"})
    void thePistonHasItsOwnLimits(Length atLeast, Length atMost, Outcome least, Outcome greatest) {
        PinSeat boss = new PinSeat(limits("18.000", "18.006"), new Limits(atLeast, atMost));
        List<Comparison> checks = PinFit.inPiston(pin(limits("17.996", "18.000")), boss);
        assertThat(checks)
                .extracting(Comparison::rule)
                .containsExactly(Rule.PIN_IN_PISTON_LEAST, Rule.PIN_IN_PISTON_GREATEST);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(least, greatest);
    }

    private static PinShape pin(Limits outside) {
        return new PinShape(outside, Limits.exactly(mm("50.000")));
    }

    private static Limits around(Length nominal, long lowerMicrometres, long upperMicrometres) {
        return new Limits(
                nominal.plus(Length.ofMicrometres(lowerMicrometres)),
                nominal.plus(Length.ofMicrometres(upperMicrometres)));
    }
}
