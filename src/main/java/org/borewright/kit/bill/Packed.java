package org.borewright.kit.bill;

import java.util.List;
import org.borewright.catalog.Box;

/**
 * A box that can be had, and how many it holds of each need.
 *
 * @param box the box
 * @param holds for each need, in the order of the needs, how many parts are in it
 */
record Packed(Box box, List<Integer> holds) {

    /** How many parts are in it that no need asks for. */
    int strangers() {
        int all = box.contents().values().stream().mapToInt(Integer::intValue).sum();
        return all - holds.stream().mapToInt(Integer::intValue).sum();
    }

    boolean isOfUse() {
        return holds.stream().anyMatch(count -> count > 0);
    }
}
