package org.borewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * A length or a difference of lengths: a whole number of nanometres, so that 0.001 mm (1 000 nm) and 0.0001 in (2 540 nm) are
 * both exact.
 *
 * @param nanometres the length in nanometres; negative for a difference that falls short
 */
public record Length(long nanometres) implements Comparable<Length> {

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    /** The longest length that can be typed: 10 m, far beyond any engine. */
    public static final Length LONGEST_TYPED = new Length(10_000_000_000L);

    /** A length of so many nanometres. */
    public static Length ofNanometres(long nanometres) {
        return nanometres == 0 ? ZERO : new Length(nanometres);
    }

    /** A length of so many micrometres, for figures of the trade written in the source. */
    public static Length ofMicrometres(long micrometres) {
        return ofNanometres(Math.multiplyExact(micrometres, 1_000L));
    }

    /**
     * The length a person typed, exactly.
     *
     * @throws IllegalArgumentException if it has more decimals than the unit allows, or is beyond ±10 m
     */
    public static Length parse(BigDecimal value, LengthUnit unit) {
        if (value.signum() == 0) {
            return ZERO;
        }
        if ((long) value.precision() - value.scale() > 6) {
            throw tooLong(value, unit);
        }
        BigDecimal steps = value.scaleByPowerOfTen(unit.typedDecimals());
        if (steps.scale() > 0 && steps.stripTrailingZeros().scale() > 0) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s has more than the %d decimals that %s can be typed with",
                    value,
                    unit.typedDecimals(),
                    unit.symbol()));
        }
        Length length = ofNanometres(steps.longValueExact() * unit.typedStep());
        if (length.absolute().isMoreThan(LONGEST_TYPED)) {
            throw tooLong(value, unit);
        }
        return length;
    }

    private static IllegalArgumentException tooLong(BigDecimal value, LengthUnit unit) {
        return new IllegalArgumentException(
                String.format(Locale.ROOT, "%s %s is longer than 10 m", value, unit.symbol()));
    }

    /** This length in millimetres: the text of a catalogue column or of a message; always exact. */
    public static Length parseMillimetres(String millimetres) {
        return parse(new BigDecimal(millimetres), LengthUnit.MILLIMETRE);
    }

    /** The sum. */
    public Length plus(Length other) {
        return ofNanometres(Math.addExact(nanometres, other.nanometres));
    }

    /** The difference. */
    public Length minus(Length other) {
        return ofNanometres(Math.subtractExact(nanometres, other.nanometres));
    }

    /** This length so many times. */
    public Length times(int count) {
        return ofNanometres(Math.multiplyExact(nanometres, count));
    }

    /** Twice this length. */
    public Length doubled() {
        return times(2);
    }

    /** Half of this length, an odd nanometre rounded down: for what must not be shown larger than it is. */
    public Length halfRoundedDown() {
        return ofNanometres(Math.floorDiv(nanometres, 2L));
    }

    /** Half of this length, an odd nanometre rounded up: for what must not be shown smaller than it is. */
    public Length halfRoundedUp() {
        return minus(halfRoundedDown());
    }

    /** The length without its sign. */
    public Length absolute() {
        return nanometres < 0 ? ofNanometres(Math.negateExact(nanometres)) : this;
    }

    /** The larger of the two. */
    public Length max(Length other) {
        return isLessThan(other) ? other : this;
    }

    /** The smaller of the two. */
    public Length min(Length other) {
        return isMoreThan(other) ? other : this;
    }

    /** Whether this length is less than the other, to the nanometre. */
    public boolean isLessThan(Length other) {
        return nanometres < other.nanometres;
    }

    /** Whether this length is more than the other, to the nanometre. */
    public boolean isMoreThan(Length other) {
        return nanometres > other.nanometres;
    }

    /** Whether this is below zero. */
    public boolean isNegative() {
        return nanometres < 0;
    }

    /** The length in a unit, rounded to the unit's shown decimals in the direction that does not flatter. */
    public BigDecimal to(LengthUnit unit, RoundingMode rounding) {
        return BigDecimal.valueOf(toMillionths(unit, rounding), unit.shownDecimals());
    }

    /**
     * The length in millionths of a unit: of a millimetre exactly, of an inch rounded.
     *
     * @throws ArithmeticException beyond 9 000 km, or when no rounding is allowed and it is needed
     */
    public long toMillionths(LengthUnit unit, RoundingMode rounding) {
        return unit == LengthUnit.MILLIMETRE ? nanometres : millionthsOfAnInch(rounding);
    }

    /** 0.000 001 in is 25.4 nm. */
    private long millionthsOfAnInch(RoundingMode rounding) {
        long fifths = Math.multiplyExact(nanometres, 5L);
        long below = Math.floorDiv(fifths, 127L);
        long rest = fifths - below * 127L;
        if (rest == 0) {
            return below;
        }
        return switch (rounding) {
            case FLOOR -> below;
            case CEILING -> below + 1;
            case DOWN -> nanometres < 0 ? below + 1 : below;
            case UP -> nanometres < 0 ? below : below + 1;
            // 127 is odd, so that no rest is ever a half.
            case HALF_EVEN, HALF_UP, HALF_DOWN -> 2 * rest < 127 ? below : below + 1;
            case UNNECESSARY -> throw new ArithmeticException("rounding is needed");
        };
    }

    /** The length in millimetres as a binary fraction: for volumes and ratios only, never to compare with a limit. */
    public double toMillimetres() {
        return nanometres / 1e6;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }

    /** The exact length in millimetres, such as {@code 70.260 mm}: three decimals or as many as it needs. */
    @Override
    public String toString() {
        BigDecimal shown = BigDecimal.valueOf(nanometres, 6).stripTrailingZeros();
        return (shown.scale() < 3 ? shown.setScale(3, RoundingMode.UNNECESSARY) : shown).toPlainString() + " mm";
    }
}
