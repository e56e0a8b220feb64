package org.borewright.fit;

/** What kind of amount a check compares, and in which whole unit it is counted. */
public enum Quantity {
    /** Nanometres. */
    LENGTH,
    /** Millionths of a ratio. */
    RATIO,
    /** Milligrams. */
    MASS,
    /** Ten-thousandths of a per cent. */
    PER_CENT
}
