package org.borewright.fit.shape;

/** The running surface of a ring. */
public enum RingFace {
    /** Bare cast iron. */
    PLAIN("plain"),
    /** Hard chromium: never in a chromium-plated hole. */
    CHROME("chrome"),
    /** Nitrided steel. */
    NITRIDED("nitrided"),
    /** Molybdenum. */
    MOLYBDENUM("molybdenum");

    private final String label;

    RingFace(String label) {
        this.label = label;
    }

    /** The word as typed and shown. */
    public String label() {
        return label;
    }
}
