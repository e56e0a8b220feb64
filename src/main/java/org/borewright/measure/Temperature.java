package org.borewright.measure;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * A temperature, exact as typed in °C or °F to three decimals: one °F step is 5/9 °C, so the value is kept in ninths of a
 * millikelvin above 0 °C.
 *
 * @param ninths ninths of a millikelvin above 0 °C
 */
public record Temperature(long ninths) implements Comparable<Temperature> {

    /** The reference temperature of all dimensions, 20 °C (ISO 1). */
    public static final Temperature REFERENCE = new Temperature(20_000L * 9);

    /** The coldest that can be typed, −60 °C: below it a gauge does not work. */
    public static final Temperature COLDEST = new Temperature(-60_000L * 9);

    /** The hottest that can be typed, 200 °C: above it nothing is measured. */
    public static final Temperature HOTTEST = new Temperature(200_000L * 9);

    /** A scale on which a temperature is typed. */
    public enum Scale {
        /** Degrees Celsius. */
        CELSIUS("C"),
        /** Degrees Fahrenheit; 32 °F = 0 °C, 1.8 °F = 1 K exactly. */
        FAHRENHEIT("F");

        private final String symbol;

        Scale(String symbol) {
            this.symbol = symbol;
        }

        /** {@code C} or {@code F}. */
        public String symbol() {
            return symbol;
        }
    }

    /**
     * The temperature a person typed.
     *
     * @throws IllegalArgumentException if it has more than three decimals or lies outside −60 to 200 °C
     */
    public static Temperature parse(BigDecimal value, Scale scale) {
        if (value.stripTrailingZeros().scale() > 3) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s °%s has more than three decimals", value, scale.symbol()));
        }
        if (value.abs().compareTo(BigDecimal.valueOf(1000)) > 0) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s °%s is outside −60 to 200 °C", value, scale.symbol()));
        }
        long thousandths = value.movePointRight(3).longValueExact();
        Temperature typed =
                scale == Scale.CELSIUS ? new Temperature(thousandths * 9) : new Temperature((thousandths - 32_000) * 5);
        if (typed.compareTo(COLDEST) < 0 || typed.compareTo(HOTTEST) > 0) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s °%s is outside −60 to 200 °C", value, scale.symbol()));
        }
        return typed;
    }

    /** Kelvins above 20 °C, negative below: for the size of a correction, never to compare with a limit. */
    public double kelvinsAboveReference() {
        return (ninths - REFERENCE.ninths) / 9_000.0;
    }

    /** Whether it is more than so many kelvins away from 20 °C. */
    public boolean isFurtherFromReferenceThan(int kelvins) {
        return isFurtherThan(kelvins, REFERENCE);
    }

    /** Whether it is more than so many kelvins away from another. */
    public boolean isFurtherThan(int kelvins, Temperature other) {
        return Math.abs(ninths - other.ninths) > kelvins * 9_000L;
    }

    @Override
    public int compareTo(Temperature other) {
        return Long.compare(ninths, other.ninths);
    }
}
