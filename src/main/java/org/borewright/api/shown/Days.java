package org.borewright.api.shown;

/** Days in words. */
public final class Days {

    private Days() {}

    /** {@code 1 day}, {@code 21 days}. */
    public static String inWords(int days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
