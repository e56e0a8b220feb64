package org.borewright.api.shown;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.borewright.catalog.Engine;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.jspecify.annotations.Nullable;

/**
 * What readings were brought to 20 °C by.
 *
 * @param celsius the temperature they were corrected from, to a thousandth of a degree
 * @param stated whether it was stated; otherwise 20 °C is taken, known to 5/√3 K
 * @param expansion of the material, in millionths per kelvin
 * @param expansionUncertainty the standard uncertainty of that
 */
public record ShownCorrection(
        BigDecimal celsius, boolean stated, BigDecimal expansion, BigDecimal expansionUncertainty) {

    private static final MathContext FOUR_DIGITS = new MathContext(4);
    private static final BigDecimal NINTHS_OF_A_KELVIN = BigDecimal.valueOf(9_000);

    /** Of the holes of an engine; absent when none was read. */
    public static @Nullable ShownCorrection of(Climate climate, Engine engine, List<Hole> holes) {
        return Hole.isAnyRead(holes) ? of(climate, engine.bore().expansion()) : null;
    }

    /** Of readings taken in a climate of parts of a material. */
    public static ShownCorrection of(Climate climate, Expansion material) {
        BigDecimal celsius = BigDecimal.valueOf(climate.temperature().ninths())
                .divide(NINTHS_OF_A_KELVIN, 3, RoundingMode.HALF_EVEN);
        return new ShownCorrection(
                withDecimal(celsius),
                climate.stated().isPresent(),
                millionths(material.perKelvin()),
                millionths(material.standardUncertainty()));
    }

    /** A coefficient in millionths per kelvin. */
    public static BigDecimal millionths(double perKelvin) {
        return withDecimal(new BigDecimal(perKelvin * 1e6, FOUR_DIGITS));
    }

    private static BigDecimal withDecimal(BigDecimal figure) {
        BigDecimal shown = figure.stripTrailingZeros();
        return shown.scale() < 1 ? shown.setScale(1) : shown;
    }
}
