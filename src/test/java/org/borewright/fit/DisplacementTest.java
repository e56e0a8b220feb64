package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.borewright.fit.Shapes.nm;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplacementTest {

    /** 1 in³ = 16.387 064 cm³ exactly. */
    private static final double CUBIC_INCH = 16.387064;

    /**
     * Printed: 128.29 in³ each and 1026.32 for eight, FAA-H-8083-30; 38.43 and 307.44, worked with π = 3.14, NAVEDTRA 14264; 1829.37
     * for fourteen, FAA-H-8083-32, from memory. Exact: π/4·B²·S.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            BORE in, STROKE in, CYLINDERS, PRINTED, ROUNDING, EXACT
            5.5,     5.4,       1,         128.29,  0.005,    128.294790
            5.5,     5.4,       8,         1026.32, 0.04,     1026.358320
            3.5,     4,         1,         38.43,   0.06,     38.484510
            3.5,     4,         8,         307.44,  0.48,     307.876080
            5.5,     5.5,       14,        1829.37, 0.02,     1829.388672
            """)
    void theExamplesOfTheHandbooksComeOut(
            BigDecimal bore, BigDecimal stroke, int cylinders, double printed, double rounding, double exact) {
        double cubicInches = cylinders
                * Displacement.ofOne(Length.parse(bore, LengthUnit.INCH), Length.parse(stroke, LengthUnit.INCH))
                / CUBIC_INCH;
        assertThat(cubicInches).isCloseTo(exact, within(5e-7));
        assertThat(cubicInches).isCloseTo(printed, within(rounding));
    }

    /** π/4·B²·S worked out in decimals of forty digits. */
    @ParameterizedTest
    @CsvSource({
        "80, 85, 427.256600888",
        "80.5, 85, 432.613998110",
        "81, 85, 438.004774754",
        "90, 100, 636.172512352",
        "70, 0, 0",
        "70, -1, -3.848451001"
    })
    void inMillimetresItIsCubicCentimetres(Length bore, Length height, double volume) {
        assertThat(Displacement.ofOne(bore, height)).isCloseTo(volume, within(5e-10));
    }

    /** (80.5/80)² = 1.012 539 06, (81/80)² = 1.025 156 25. */
    @ParameterizedTest
    @CsvSource({"80.5, 1.0125390625", "81, 1.02515625", "80, 1"})
    void anOverboreGrowsWithTheSquare(Length bore, double times) {
        Length stroke = Length.ofMicrometres(85_000);
        Length standard = Length.ofMicrometres(80_000);
        assertThat(Displacement.ofOne(bore, stroke) / Displacement.ofOne(standard, stroke))
                .isCloseTo(times, within(1e-14));
    }

    @Property
    boolean twoHalfStrokesSweepAsMuchAsOne(
            @ForAll @LongRange(min = 20_000_000, max = 150_000_000) long bore,
            @ForAll @LongRange(min = 20_000_000, max = 75_000_000) long half) {
        double whole = Displacement.ofOne(nm(bore), nm(half).doubled());
        return Math.abs(2 * Displacement.ofOne(nm(bore), nm(half)) - whole) <= whole * 1e-15;
    }
}
