package org.borewright.api.shown;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** A short piece of JSON with figures in it, put together without a decimal object for each figure. */
final class Figure {

    private static final int DECIMALS = 6;
    private static final int LONGEST = 96;

    private final char[] text = new char[LONGEST];
    private int length;

    /** Plain text. */
    void text(String piece) {
        piece.getChars(0, piece.length(), text, length);
        length += piece.length();
    }

    /** A whole number. */
    void whole(long number) {
        text(Long.toString(number));
    }

    /** Millionths as a decimal: so many decimals at least, and no further zeros. */
    void decimal(long millionths, int leastDecimals) {
        if (millionths < 0) {
            text[length++] = '-';
        }
        long size = Math.abs(millionths);
        whole(size / 1_000_000);
        text[length++] = '.';
        int rest = (int) (size % 1_000_000);
        int point = length;
        for (int place = DECIMALS - 1; place >= 0; place--) {
            text[point + place] = (char) ('0' + rest % 10);
            rest /= 10;
        }
        length = point + DECIMALS;
        while (length > point + leastDecimals && text[length - 1] == '0') {
            length--;
        }
    }

    /** Into the JSON, as one value. */
    void writeTo(JsonGenerator json) throws IOException {
        json.writeRawValue(text, 0, length);
    }

    @Override
    public String toString() {
        return new String(text, 0, length);
    }
}
