package org.borewright.api.shown;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** A short piece of JSON with figures in it, put together without a decimal object for each figure. */
final class Figure {

    private static final int DECIMALS = 6;
    private static final int MILLION = 1_000_000;
    private static final int LONGEST = 80;

    private final char[] text = new char[LONGEST];
    private int length;

    /** The beginning of an object: its value in millionths, with so many decimals at least. */
    static Figure ofValue(long millionths, int leastDecimals) {
        Figure figure = new Figure();
        figure.text("{\"value\":");
        figure.decimal(millionths, leastDecimals);
        return figure;
    }

    /** The exact nanometres beside it. */
    void exact(long nanometres) {
        text(",\"nm\":");
        whole(nanometres);
    }

    /** The end of the object, and all of it into the JSON. */
    void closeTo(JsonGenerator json) throws IOException {
        text("}");
        json.writeRawValue(text, 0, length);
    }

    /** Plain text. */
    void text(String piece) {
        piece.getChars(0, piece.length(), text, length);
        length += piece.length();
    }

    /** A whole number. */
    private void whole(long number) {
        if (number < 0) {
            text[length++] = '-';
        }
        long size = Math.abs(number);
        digits(size, count(size));
    }

    /** Millionths as a decimal: so many decimals at least, and no further zeros. */
    void decimal(long millionths, int leastDecimals) {
        if (millionths < 0) {
            text[length++] = '-';
        }
        long size = Math.abs(millionths);
        whole(size / MILLION);
        text[length++] = '.';
        int point = length;
        digits(size % MILLION, DECIMALS);
        while (length > point + leastDecimals && text[length - 1] == '0') {
            length--;
        }
    }

    private static int count(long number) {
        int count = 1;
        for (long above = number / 10; above > 0; above /= 10) {
            count++;
        }
        return count;
    }

    /** So many digits of a number that is not negative, zeros first where it has fewer. */
    private void digits(long number, int count) {
        length += count;
        long rest = number;
        for (int place = length - 1; place >= length - count; place--) {
            text[place] = (char) ('0' + rest % 10);
            rest /= 10;
        }
    }

    @Override
    public String toString() {
        return new String(text, 0, length);
    }
}
