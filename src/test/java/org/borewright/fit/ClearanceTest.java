package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.piston;
import static org.borewright.fit.Shapes.worth;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ClearanceTest {

    private static final ClearanceWindow WINDOW = new ClearanceWindow(mm("0.030"), mm("0.040"), mm("0.060"));
    private static final PistonShape PISTON = piston(limits("69.960", "69.970"), WINDOW);

    @ParameterizedTest
    @CsvFileSource(resources = "/fit/manual-clearances.csv", useHeadersInDisplayName = true)
    void theManualsSubtractAsWeDo(
            LengthUnit unit,
            BigDecimal leastHole,
            BigDecimal greatestHole,
            BigDecimal leastPiston,
            BigDecimal greatestPiston,
            BigDecimal leastClearance,
            BigDecimal greatestClearance) {
        Limits hole = new Limits(Length.parse(leastHole, unit), Length.parse(greatestHole, unit));
        Limits diameter = new Limits(Length.parse(leastPiston, unit), Length.parse(greatestPiston, unit));
        Limits printed = new Limits(Length.parse(leastClearance, unit), Length.parse(greatestClearance, unit));
        assertThat(Clearance.of(hole, piston(diameter, WINDOW))).isEqualTo(printed);
    }

    /** Piston 69.960 to 69.970, window 0.030 to 0.060: exact holes from 70.000 to 70.020. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SMALLEST,  LARGEST,   U,     LEAST,     GREATEST
            70.000000, 70.020000, 0,     IN,        IN
            69.999999, 70.020000, 0,     OUT,       IN
            70.000000, 70.020001, 0,     IN,        OUT
            70.005000, 70.015000, 0.005, IN,        IN
            70.004999, 70.015000, 0.005, TOO_CLOSE, IN
            70.005000, 70.015001, 0.005, IN,        TOO_CLOSE
            70.000000, 70.020000, 0.005, TOO_CLOSE, TOO_CLOSE
            69.995001, 70.024999, 0.005, TOO_CLOSE, TOO_CLOSE
            69.995000, 70.024999, 0.005, OUT,       TOO_CLOSE
            69.995001, 70.025000, 0.005, TOO_CLOSE, OUT
            """)
    void bothEndsAreGuardedByTheUncertainty(
            Length smallest, Length largest, Length uncertainty, Outcome least, Outcome greatest) {
        List<Comparison> checks = Clearance.check(new Limits(smallest, largest), worth(uncertainty), PISTON);
        assertThat(checks).extracting(Comparison::rule).containsExactly(Rule.CLEARANCE_LEAST, Rule.CLEARANCE_GREATEST);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(least, greatest);
    }

    /** Piston 69.965 ± 0.003 in a hole ± 0.004, together 0.005: proven from 70.000 to 70.020. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SMALLEST,  LARGEST,   LEAST,     GREATEST
            70.000000, 70.020000, IN,        IN
            69.999999, 70.020001, TOO_CLOSE, TOO_CLOSE
            69.990001, 70.029999, TOO_CLOSE, TOO_CLOSE
            69.990000, 70.030000, OUT,       OUT
            """)
    void aMeasuredPistonAddsItsOwnUncertainty(Length smallest, Length largest, Outcome least, Outcome greatest) {
        List<Comparison> checks = Clearance.check(
                new Limits(smallest, largest),
                worth(mm("0.004")),
                Limits.exactly(mm("69.965")),
                worth(mm("0.003")),
                WINDOW);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(least, greatest);
        assertThat(checks).extracting(Comparison::uncertainty).containsOnly(5_000L);
    }

    @ParameterizedTest
    @CsvSource({"70.000, 0.5", "70.005, 0.977250", "69.995, 0.022750", "70.0025, 0.841345"})
    void aCloseCallCarriesItsProbability(Length hole, double probability) {
        Comparison least = Clearance.check(Limits.exactly(hole), worth(mm("0.005")), PISTON)
                .get(0);
        assertThat(least.conformance().orElseThrow()).isCloseTo(probability, within(5e-7));
    }

    @Property
    boolean theSameHoleInInchesGetsTheSameAnswer(
            @ForAll @IntRange(min = 275_500, max = 275_750) int smallest,
            @ForAll @IntRange(min = 0, max = 100) int taper) {
        BigDecimal inch = new BigDecimal("25.4");
        BigDecimal least = BigDecimal.valueOf(smallest, 5);
        BigDecimal greatest = BigDecimal.valueOf(smallest + (long) taper, 5);
        Limits inches = new Limits(Length.parse(least, LengthUnit.INCH), Length.parse(greatest, LengthUnit.INCH));
        Limits millimetres = new Limits(
                Length.parse(least.multiply(inch), LengthUnit.MILLIMETRE),
                Length.parse(greatest.multiply(inch), LengthUnit.MILLIMETRE));
        return Clearance.check(inches, worth(mm("0.005")), PISTON)
                .equals(Clearance.check(millimetres, worth(mm("0.005")), PISTON));
    }

    @Property
    boolean everyPistonInEveryHoleRunsWithinTheTwo(
            @ForAll @LongRange(min = 70_000_000, max = 70_030_000) long hole,
            @ForAll @LongRange(min = 0, max = 10_000) long inTolerance) {
        Limits clearance = Clearance.of(limits("70.000", "70.030"), PISTON);
        return clearance.hold(nm(hole).minus(mm("69.960").plus(nm(inTolerance))));
    }
}
