package org.borewright.kit.request;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;

/**
 * What is stamped on a crown, as a person reads it off: {@code STD}, {@code 0.50}, {@code 020}, {@code +.030}, {@code 2}, {@code B}. A bare
 * figure may mean millimetres, hundredths of them, thousandths of an inch or a number of steps (common practice), so it is held against the
 * sizes the engine has: only a figure that leads to one of them and no other is taken.
 *
 * @param text as stamped
 */
public record Stamp(String text) {

    private static final Pattern STANDARD = Pattern.compile("STD|STANDARD|S|\\+?0*[.,]?0+");
    private static final Pattern FIGURE = Pattern.compile("(\\+?)([0-9]{0,3})(?:[.,]([0-9]{1,4}))?\\s*(MM|IN|\"|″)?");

    /**
     * One way to read a stamp.
     *
     * @param size the size it leads to
     * @param as what it was taken for
     */
    public record Reading(Size size, String as) {}

    /**
     * The ways that lead to a size of the engine, one for each size; empty where none does.
     *
     * @param unit of the figure; empty when nobody knows
     */
    public List<Reading> readings(Shelf shelf, Optional<LengthUnit> unit) {
        String bare = text.strip().toUpperCase(Locale.ROOT);
        Map<Size, Reading> bySize = new LinkedHashMap<>();
        if (STANDARD.matcher(bare).matches()) {
            offer(bySize, shelf, Length.ZERO, "standard");
        } else {
            shelf.size(text.strip()).ifPresent(size -> bySize.put(size, new Reading(size, "the label of the size")));
            grade(bySize, shelf, bare);
            Matcher figure = FIGURE.matcher(bare);
            if (bySize.isEmpty() && figure.matches()) {
                figure(bySize, shelf, figure, unit);
            }
        }
        return List.copyOf(bySize.values());
    }

    /** A grade is no oversize: it leads to the size whose pistons are graded. */
    private static void grade(Map<Size, Reading> bySize, Shelf shelf, String bare) {
        for (Piston piston : shelf.parts().pistons()) {
            if (piston.grade().filter(bare::equals).isPresent()) {
                shelf.size(piston.size())
                        .ifPresent(size -> bySize.putIfAbsent(size, new Reading(size, "grade " + bare)));
            }
        }
    }

    private static void figure(Map<Size, Reading> bySize, Shelf shelf, Matcher figure, Optional<LengthUnit> unit) {
        Optional<LengthUnit> stamped = Optional.ofNullable(figure.group(4))
                .map(mark -> mark.equals("MM") ? LengthUnit.MILLIMETRE : LengthUnit.INCH)
                .or(() -> unit);
        for (Meaning meaning : meanings(figure)) {
            if (stamped.filter(known -> known != meaning.unit).isEmpty()) {
                offer(bySize, shelf, meaning.length(), meaning.as);
            }
        }
        boolean countsSteps = figure.group(1).isEmpty()
                && figure.group(2).length() == 1
                && figure.group(3) == null
                && stamped.isEmpty();
        if (countsSteps) {
            step(bySize, shelf, Integer.parseInt(figure.group(2)));
        }
    }

    /** A length that a figure may mean. */
    private record Meaning(BigDecimal figure, LengthUnit unit, String as) {

        Length length() {
            return Length.parse(figure, unit);
        }
    }

    private static List<Meaning> meanings(Matcher figure) {
        String whole = figure.group(2);
        String decimals = figure.group(3);
        List<Meaning> meanings = new ArrayList<>();
        if (decimals != null) {
            BigDecimal typed = new BigDecimal((whole.isEmpty() ? "0" : whole) + "." + decimals);
            meanings.add(new Meaning(typed, LengthUnit.MILLIMETRE, typed.toPlainString() + " mm"));
            meanings.add(new Meaning(typed, LengthUnit.INCH, typed.toPlainString() + " in"));
        } else if (!whole.isEmpty()) {
            BigDecimal typed = new BigDecimal(whole);
            if (whole.length() == 1) {
                meanings.add(new Meaning(typed, LengthUnit.MILLIMETRE, typed + " mm"));
            } else {
                meanings.add(new Meaning(
                        typed.movePointLeft(2), LengthUnit.MILLIMETRE, typed + " hundredths of a millimetre"));
                meanings.add(new Meaning(typed.movePointLeft(3), LengthUnit.INCH, typed + " thousandths of an inch"));
            }
        }
        return meanings;
    }

    private static void offer(Map<Size, Reading> bySize, Shelf shelf, Length oversize, String as) {
        shelf.sizes().stream()
                .filter(size -> size.oversize().equals(oversize))
                .findFirst()
                .ifPresent(size -> bySize.putIfAbsent(size, new Reading(size, as)));
    }

    private static void step(Map<Size, Reading> bySize, Shelf shelf, int number) {
        if (number < shelf.sizes().size()) {
            Size size = shelf.sizes().get(number);
            bySize.putIfAbsent(size, new Reading(size, "oversize number " + number));
        }
    }
}
