package org.borewright.page;

import io.quarkus.qute.TemplateExtension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * Lengths of an answer to the last step that a gauge is read to, 0.001 mm or 0.0001 in, for whoever holds it: limits come no nearer than
 * they are, and what is expected is never shown better than it is. Where no step lies between two limits they stay as they were told.
 */
@TemplateExtension(namespace = "gauge")
public final class Gauged {

    private Gauged() {}

    /** What lies between two limits that were told, so that nothing is within that was not: the window of a hole. */
    static String inward(Map<String, Object> limits, String unit) {
        BigDecimal least = read(limits.get("least"), unit, RoundingMode.CEILING);
        BigDecimal greatest = read(limits.get("greatest"), unit, RoundingMode.FLOOR);
        return least.compareTo(greatest) > 0
                ? told(limits.get("least")) + " to " + told(limits.get("greatest"))
                : between(least, greatest);
    }

    /** All that may come of it, and no less: a ring gap, a clearance. */
    static String outward(Map<String, Object> limits, String unit) {
        return between(
                read(limits.get("least"), unit, RoundingMode.FLOOR),
                read(limits.get("greatest"), unit, RoundingMode.CEILING));
    }

    private static String between(BigDecimal least, BigDecimal greatest) {
        return least.compareTo(greatest) == 0 ? least.toPlainString() : least.toPlainString() + " to " + greatest;
    }

    /** A lower limit. */
    static String least(Object length, String unit) {
        return read(length, unit, RoundingMode.CEILING).toPlainString();
    }

    /** An upper limit. */
    static String most(Object length, String unit) {
        return read(length, unit, RoundingMode.FLOOR).toPlainString();
    }

    /** What is aimed at without a window of its own, to the nearest step. */
    static String target(Object length, String unit) {
        return target(length, null, unit);
    }

    /** One end of a hole with choke: a decimal more where the other end is another size, for the choke itself is a step or a few. */
    static String end(Object length, @Nullable Object other, @Nullable Map<String, Object> window, String unit) {
        boolean straight = other == null || told(length).compareTo(told(other)) == 0;
        return target(length, window, straight ? decimals(unit) : decimals(unit) + 1);
    }

    /** What is aimed at, to the nearest step; as it was told where that step lies outside of its window. */
    static String target(Object length, @Nullable Map<String, Object> window, String unit) {
        return target(length, window, decimals(unit));
    }

    private static String target(Object length, @Nullable Map<String, Object> window, int decimals) {
        BigDecimal nearest = told(length).setScale(decimals, RoundingMode.HALF_EVEN);
        boolean isWithin = window == null
                || (nearest.compareTo(told(window.get("least"))) >= 0
                        && nearest.compareTo(told(window.get("greatest"))) <= 0);
        return (isWithin ? nearest : told(length)).toPlainString();
    }

    private static BigDecimal read(@Nullable Object length, String unit, RoundingMode rounded) {
        return told(length).setScale(decimals(unit), rounded);
    }

    private static int decimals(String unit) {
        return (unit.equals(LengthUnit.INCH.symbol()) ? LengthUnit.INCH : LengthUnit.MILLIMETRE).gaugeDecimals();
    }

    private static BigDecimal told(@Nullable Object length) {
        if (length instanceof Map<?, ?> told && told.get("value") instanceof String value) {
            return new BigDecimal(value);
        }
        throw new IllegalArgumentException("no length of an answer: " + length);
    }
}
