package org.borewright.measure;

/** A unit in which lengths are typed and shown. One inch is 25.4 mm exactly (international inch, 1959). */
public enum LengthUnit {
    /** Millimetre: six decimals are whole nanometres, so every length is shown exactly. */
    MILLIMETRE("mm", 1_000_000, 6, 1, 3),
    /** Inch: five decimals are the most that are always whole nanometres (0.000 01 in = 254 nm). */
    INCH("in", 25_400_000, 5, 254, 4);

    private final String symbol;
    private final long nanometres;
    private final int typedDecimals;
    private final long typedStep;
    private final int gaugeDecimals;

    LengthUnit(String symbol, long nanometres, int typedDecimals, long typedStep, int gaugeDecimals) {
        this.symbol = symbol;
        this.nanometres = nanometres;
        this.typedDecimals = typedDecimals;
        this.typedStep = typedStep;
        this.gaugeDecimals = gaugeDecimals;
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

    /** The decimals a length is shown with: millionths of the unit, finer than any gauge of a shop. */
    public int shownDecimals() {
        return 6;
    }

    /** The decimals a gauge of a shop is read to: 0.001 mm, or 0.0001 in (common practice). */
    public int gaugeDecimals() {
        return gaugeDecimals;
    }

    /** How many nanometres the last decimal that may be typed is, exactly. */
    public long typedStep() {
        return typedStep;
    }
}
