package org.borewright.api.problem;

import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * What a text may hold: whole characters that are seen. Refused are halves of a character, which no database keeps, control characters, and the
 * marks that turn the direction of writing (Unicode Standard Annex 9, explicit formatting), by which a text shows another than it holds.
 */
public final class Legible {

    /** What to do about what is not. */
    public static final String WAY_OUT =
            "Leave that character out; all other characters of Unicode are kept as they are sent.";

    private Legible() {}

    /** Whether a text can be kept on one line, and what is wrong if not. */
    public static Optional<String> flaw(String text) {
        return flaw(text, character -> false);
    }

    /** The same of a text of several lines. */
    public static Optional<String> flawOfLines(String text) {
        return flaw(text, character -> character == '\n' || character == '\r' || character == '\t');
    }

    private static Optional<String> flaw(String text, IntPredicate besides) {
        int before = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int character = text.codePointAt(at);
            String what = what(character);
            if (!what.isEmpty() && !besides.test(character)) {
                return Optional.of(
                        String.format(Locale.ROOT, "Character %d is U+%04X, %s.", before + 1, character, what));
            }
            before++;
        }
        return Optional.empty();
    }

    /** What a character is that is not to be kept; empty for all others. */
    private static String what(int character) {
        if (Character.getType(character) == Character.SURROGATE) {
            return "half of a character";
        } else if (Character.isISOControl(character)) {
            return "a control character";
        }
        boolean turns = (character >= 0x202A && character <= 0x202E) || (character >= 0x2066 && character <= 0x2069);
        return turns ? "a mark that turns the direction of writing" : "";
    }

    /** The first characters of a text, none of them cut in half. */
    public static String first(int most, String text) {
        return text.codePointCount(0, text.length()) <= most
                ? text
                : text.substring(0, text.offsetByCodePoints(0, most)) + "…";
    }
}
