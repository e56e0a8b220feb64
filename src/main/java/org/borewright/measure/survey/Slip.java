package org.borewright.measure.survey;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;

/**
 * A slip of the pen or the keyboard in a reading outside the plausible range. A correction is only ever suggested, and only if exactly
 * one fits (common practice).
 *
 * @param value what may have been meant, in the unit typed, to the last decimal that may be typed in it: it can be sent as it stands
 * @param slip what may have gone wrong
 */
public record Slip(BigDecimal value, String slip) {

    private static final BigDecimal INCH = new BigDecimal("25.4");
    private static final int MOST_DIGITS = 20;

    /**
     * The one correction of a typed value that lies in the plausible range; empty when none or several do, and for a number of more
     * than twenty digits.
     */
    public static Optional<Slip> suggest(BigDecimal typed, LengthUnit unit, Limits plausible) {
        if (!isOfUsualLength(typed)) {
            return Optional.empty();
        }
        Map<BigDecimal, String> candidates = new LinkedHashMap<>();
        offer(candidates, sendable(typed.movePointRight(1), unit), "the decimal point one place too far left");
        offer(candidates, sendable(typed.movePointLeft(1), unit), "the decimal point one place too far right");
        offer(candidates, sendable(typed.multiply(INCH), unit), "inches typed as millimetres");
        offer(candidates, sendable(typed.divide(INCH, MathContext.DECIMAL64), unit), "millimetres typed as inches");
        exchanges(typed).forEach(exchanged -> offer(candidates, sendable(exchanged, unit), "two digits exchanged"));
        List<Slip> fitting = candidates.entrySet().stream()
                .filter(candidate -> isPlausible(candidate.getKey(), unit, plausible))
                .map(candidate -> new Slip(candidate.getKey(), candidate.getValue()))
                .toList();
        return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    /** A number nobody types would be written out in full, a billion noughts if need be, to exchange its digits. */
    private static boolean isOfUsualLength(BigDecimal typed) {
        return typed.precision() <= MOST_DIGITS && Math.abs((long) typed.scale()) <= MOST_DIGITS;
    }

    private static void offer(Map<BigDecimal, String> candidates, BigDecimal value, String slip) {
        candidates.putIfAbsent(value.stripTrailingZeros(), slip);
    }

    /** A quotient may have more decimals than can be typed. */
    private static BigDecimal sendable(BigDecimal value, LengthUnit unit) {
        return value.setScale(Math.min(value.scale(), unit.typedDecimals()), RoundingMode.HALF_EVEN);
    }

    private static List<BigDecimal> exchanges(BigDecimal typed) {
        String text = typed.toPlainString();
        return IntStream.range(0, text.length())
                .boxed()
                .flatMap(first -> IntStream.range(first + 1, text.length())
                        .filter(second -> isExchange(text, first, second))
                        .mapToObj(second -> exchanged(text, first, second)))
                .filter(exchanged -> !hasLeadingNought(exchanged))
                .map(BigDecimal::new)
                .toList();
    }

    private static boolean isExchange(String text, int first, int second) {
        return Character.isDigit(text.charAt(first))
                && Character.isDigit(text.charAt(second))
                && text.charAt(first) != text.charAt(second);
    }

    /** Nobody means 071.10, so it must not make 70.11 doubtful. */
    private static boolean hasLeadingNought(String text) {
        return text.charAt(0) == '0' && text.charAt(1) != '.';
    }

    private static String exchanged(String text, int first, int second) {
        StringBuilder digits = new StringBuilder(text);
        digits.setCharAt(first, text.charAt(second));
        digits.setCharAt(second, text.charAt(first));
        return digits.toString();
    }

    private static boolean isPlausible(BigDecimal value, LengthUnit unit, Limits plausible) {
        BigDecimal nanometres = value.multiply(BigDecimal.valueOf(unit.nanometres()));
        return nanometres.compareTo(BigDecimal.valueOf(plausible.least().nanometres())) >= 0
                && nanometres.compareTo(BigDecimal.valueOf(plausible.greatest().nanometres())) <= 0
                && nanometres.compareTo(BigDecimal.valueOf(Length.LONGEST_TYPED.nanometres())) <= 0;
    }
}
