package org.borewright.fit;

/** On which side of its limit a value must lie. */
public enum Sense {
    /** Not below the limit. */
    AT_LEAST("at least"),
    /** Not above the limit. */
    AT_MOST("at most"),
    /** On the limit. */
    EXACTLY("exactly");

    private final String label;

    Sense(String label) {
        this.label = label;
    }

    /** The words as shown. */
    public String label() {
        return label;
    }

    /** How far inside the limit a value lies; negative when beyond it. */
    public long margin(long value, long limit) {
        return switch (this) {
            case AT_LEAST -> Math.subtractExact(value, limit);
            case AT_MOST -> Math.subtractExact(limit, value);
            case EXACTLY -> -Math.abs(Math.subtractExact(value, limit));
        };
    }
}
