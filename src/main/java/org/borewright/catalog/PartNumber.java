package org.borewright.catalog;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The number a part or a box is ordered by.
 *
 * @param text capital letters, digits and hyphens, 3 to 24 characters
 */
public record PartNumber(String text) implements Comparable<PartNumber> {

    private static final Pattern FORM = Pattern.compile("[A-Z0-9][A-Z0-9-]{1,22}[A-Z0-9]");

    /** @throws IllegalArgumentException if the text is not of that form */
    public PartNumber {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "part number \"%s\" is not 3 to 24 capital letters, digits and hyphens", text));
        }
    }

    @Override
    public int compareTo(PartNumber other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
