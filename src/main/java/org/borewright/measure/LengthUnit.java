package org.borewright.measure;

import java.math.BigDecimal;

/** A unit in which lengths are typed and shown. One inch is 25.4 mm exactly (international inch, 1959). */
public enum LengthUnit {
    /** Millimetre: six decimals are whole nanometres, so every length is shown exactly. */
    MILLIMETRE("mm", 1_000_000, 6, 6),
    /** Inch: five decimals are the most that are always whole nanometres (0.000 01 in = 254 nm). */
    INCH("in", 25_400_000, 5, 6);

    private final String symbol;
    private final long nanometres;
    private final int typedDecimals;
    private final int shownDecimals;

    LengthUnit(String symbol, long nanometres, int typedDecimals, int shownDecimals) {
        this.symbol = symbol;
        this.nanometres = nanometres;
        this.typedDecimals = typedDecimals;
        this.shownDecimals = shownDecimals;
    }

    /** The symbol as written after a number: {@code mm} or {@code in}. */
    public String symbol() {
        return symbol;
    }

    /** How many nanometres one of this unit is, exactly. */
    public long nanometres() {
        return nanometres;
    }

    /** The most decimals a typed length may have in this unit. */
    public int typedDecimals() {
        return typedDecimals;
    }

    /** The decimals a length is shown with in this unit. */
    public int shownDecimals() {
        return shownDecimals;
    }

    /** One of this unit in nanometres, as a decimal. */
    BigDecimal inNanometres() {
        return BigDecimal.valueOf(nanometres);
    }
}
