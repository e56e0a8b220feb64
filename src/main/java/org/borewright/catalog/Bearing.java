package org.borewright.catalog;

/**
 * A small-end bearing or bush that is renewed with the pin.
 *
 * @param number its number
 */
public record Bearing(PartNumber number) implements Part {

    @Override
    public Kind kind() {
        return Kind.BEARING;
    }
}
