package org.borewright.catalog;

import org.borewright.fit.shape.ClipShape;

/**
 * A clip that keeps a wrist pin in; always new.
 *
 * @param number its number
 * @param design the piston design it is made for
 * @param shape its dimensions
 */
public record Clip(PartNumber number, String design, ClipShape shape) implements Part {

    @Override
    public Kind kind() {
        return Kind.CLIP;
    }
}
