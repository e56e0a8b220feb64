package org.borewright.kit.bill;

import java.util.List;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;

/**
 * Parts of one number that a kit needs.
 *
 * @param part the part
 * @param holes the hole each one goes to, one entry for each; the engine's own parts say {@code engine}
 */
public record Need(Part part, List<String> holes) {

    /** The place of a part that belongs to no hole. */
    public static final String ENGINE = "engine";

    /** Copies the holes. */
    public Need {
        holes = List.copyOf(holes);
    }

    /** How many. */
    public int count() {
        return holes.size();
    }

    /** The number. */
    public PartNumber number() {
        return part.number();
    }
}
