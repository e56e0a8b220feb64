package org.borewright.catalog;

import java.util.List;
import java.util.Optional;

/**
 * What is known of one number, apart from its price and stock.
 *
 * @param number which
 * @param part what it is; empty for a box, and for a number of which no more than its withdrawal is known
 * @param box what it contains; empty where it is not a box
 * @param withdrawal why it is not supplied; empty where it is
 * @param uses where it is used, sorted by engine, then in the order of the sizes
 * @param soldIn the boxes that hold it, sorted
 */
public record Listing(
        PartNumber number,
        Optional<Part> part,
        Optional<Box> box,
        Optional<Withdrawal> withdrawal,
        List<Use> uses,
        List<PartNumber> soldIn) {

    /** Copies the lists. */
    public Listing {
        uses = List.copyOf(uses);
        soldIn = List.copyOf(soldIn);
    }

    /**
     * Where a number is used.
     *
     * @param engine the code of the engine
     * @param size the label of the size; empty where it serves every size
     */
    public record Use(String engine, Optional<String> size) {}
}
