package org.borewright.catalog.load.sheet;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Currency;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.borewright.catalog.PartNumber;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;

/** The kinds of cell that catalogue files have. */
public final class CellTypes {

    /** The code of an engine or a piston design. */
    public static final CellType<String> CODE =
            form("[A-Z0-9][A-Z0-9-]{1,22}[A-Z0-9]", "a code is 3 to 24 capital letters, digits and hyphens");

    /** The code of a shop operation. */
    public static final CellType<String> OPERATION =
            form("[a-z](-?[a-z])*", 40, "the code of an operation is small letters and hyphens, up to 40");

    /** One or more codes of shop operations. */
    public static final CellType<String> OPERATIONS =
            form("[a-z](-?[a-z])*( [a-z](-?[a-z])*)*", 1000, "codes of operations, with one blank between them");

    /** The number of a part or a box. */
    public static final CellType<String> NUMBER = text -> new PartNumber(text).text();

    /** A name. */
    public static final CellType<String> TEXT = text(200);

    /** A remark or an instruction. */
    public static final CellType<String> LONG_TEXT = text(1000);

    public static final CellType<Boolean> YES_NO = words(new Boolean[] {true, false}, yes -> yes ? "yes" : "no");

    public static final CellType<Currency> CURRENCY = CellTypes::currency;

    /** A day, as 2026-12-01. */
    public static final CellType<LocalDate> DAY = CellTypes::day;

    /** A length that cannot be below zero. */
    public static final CellType<Length> LENGTH = lengths("0", "10000");

    /** A fit: negative for a press. */
    public static final CellType<Length> FIT = lengths("-10", "10");

    private static final LocalDate EARLIEST = LocalDate.of(2000, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2099, 12, 31);
    private static final Pattern NUMERAL = Pattern.compile("-?\\d{1,20}(\\.\\d{1,20})?");
    private static final Pattern UNCLEAN = Pattern.compile("^\\s.*|.*\\s$|.*\\p{Cntrl}.*", Pattern.DOTALL);

    private CellTypes() {}

    public static CellType<String> form(String pattern, int longest, String rule) {
        Pattern form = Pattern.compile(pattern);
        return text -> {
            check(text.length() <= longest && form.matcher(text).matches(), () -> rule);
            return text;
        };
    }

    private static CellType<String> form(String pattern, String rule) {
        return form(pattern, Integer.MAX_VALUE, rule);
    }

    private static CellType<String> text(int longest) {
        return text -> {
            check(text.length() <= longest, () -> "is longer than %s characters".formatted(longest));
            check(!UNCLEAN.matcher(text).matches(), () -> "begins or ends with a blank, or holds a control character");
            return text;
        };
    }

    /** One of the trade's words. */
    public static <E> CellType<E> words(E[] allowed, Function<E, String> label) {
        return text -> Arrays.stream(allowed)
                .filter(word -> label.apply(word).equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "is none of " + Arrays.stream(allowed).map(label).collect(joining(", "))));
    }

    /** A length from one to another, both in millimetres and inclusive. */
    public static CellType<Length> lengths(String least, String greatest) {
        Length from = Length.parseMillimetres(least);
        Length to = Length.parseMillimetres(greatest);
        return text -> {
            Length length = Length.parse(decimal(text), LengthUnit.MILLIMETRE);
            check(
                    !length.isLessThan(from) && !length.isMoreThan(to),
                    () -> "is outside %s to %s mm".formatted(least, greatest));
            return length;
        };
    }

    /** A whole number from one to another, both inclusive, typed plainly: lines are found by it. */
    public static CellType<Integer> wholes(int least, int greatest) {
        CellType<Integer> whole =
                decimals(0, Integer.toString(least), Integer.toString(greatest)).as(BigDecimal::intValueExact);
        return text -> {
            int number = whole.read(text);
            check(text.equals(Integer.toString(number)), () -> "is not typed plainly, as " + number);
            return number;
        };
    }

    /** A number with up to so many decimals from one to another, both inclusive, as a whole count of the last decimal. */
    public static CellType<Long> counts(int decimals, String least, String greatest) {
        return decimals(decimals, least, greatest)
                .as(number -> number.movePointRight(decimals).longValueExact());
    }

    /** A figure that nothing is compared with to the last digit: a volume, a coefficient. */
    public static CellType<Double> figures(String least, String greatest) {
        return decimals(6, least, greatest).as(BigDecimal::doubleValue);
    }

    /** A number with up to so many decimals from one to another, both inclusive. */
    public static CellType<BigDecimal> decimals(int decimals, String least, String greatest) {
        BigDecimal from = new BigDecimal(least);
        BigDecimal to = new BigDecimal(greatest);
        return text -> {
            BigDecimal number = decimal(text);
            check(
                    number.stripTrailingZeros().scale() <= decimals,
                    () -> decimals == 0 ? "is not a whole number" : "has more than %s decimals".formatted(decimals));
            check(
                    number.compareTo(from) >= 0 && number.compareTo(to) <= 0,
                    () -> "is outside %s to %s".formatted(least, greatest));
            return number;
        };
    }

    private static BigDecimal decimal(String text) {
        check(
                NUMERAL.matcher(text).matches(),
                () -> "is not a number; a number is digits, with a point before decimals");
        return new BigDecimal(text);
    }

    private static Currency currency(String text) {
        return Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getCurrencyCode().equals(text))
                .filter(currency -> currency.getDefaultFractionDigits() >= 0)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("is not the code of a currency (ISO 4217)"));
    }

    private static LocalDate day(String text) {
        LocalDate day = parsedDay(text);
        check(!day.isBefore(EARLIEST) && !day.isAfter(LATEST), () -> "is outside %s to %s".formatted(EARLIEST, LATEST));
        return day;
    }

    private static LocalDate parsedDay(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException none) {
            throw new IllegalArgumentException("is not a day of the calendar, typed as 2026-12-01", none);
        }
    }

    private static void check(boolean holds, Supplier<String> reason) {
        if (!holds) {
            throw new IllegalArgumentException(reason.get());
        }
    }
}
