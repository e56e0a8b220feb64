package org.borewright.catalog;

/**
 * A fastener that is used once and then renewed.
 *
 * @param number its number
 */
public record Bolt(PartNumber number) implements Part {

    @Override
    public Kind kind() {
        return Kind.BOLT;
    }
}
