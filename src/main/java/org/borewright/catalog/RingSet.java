package org.borewright.catalog;

import java.util.List;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;

/**
 * The rings of one piston.
 *
 * @param number its number
 * @param design the piston design it is made for
 * @param size the label of the size it is for
 * @param nominalBore the bore it is made for
 * @param rings from the top
 */
public record RingSet(PartNumber number, String design, String size, Length nominalBore, List<RingShape> rings)
        implements Part {

    /** Copies the rings. */
    public RingSet {
        rings = List.copyOf(rings);
    }

    @Override
    public Kind kind() {
        return Kind.RING_SET;
    }
}
