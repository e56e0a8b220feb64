package org.borewright.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The pistons that a quote sells.
 *
 * @param design of its maker
 * @param size their label
 * @param numbers of all pistons that its boxes hold
 */
public record PistonsSold(String design, String size, SortedSet<String> numbers) {

    private static final String NOT_SOLD =
            "Set it aside: it did not come out of the boxes of this quote. Where its like is wanted, survey and quote anew.";

    /** Copies the numbers. */
    public PistonsSold {
        numbers = Collections.unmodifiableSortedSet(new TreeSet<>(numbers));
    }

    /** Where pistons that are to go in are not those sold; none where all are. */
    public List<Difference> from(PistonsFitted fitted) {
        List<Difference> found = new ArrayList<>(fitted.fromJob(design, size));
        fitted.byCylinder().forEach((cylinder, piston) -> {
            if (!numbers.contains(piston.number())) {
                found.add(new Difference(
                        "/pistons",
                        "piston of cylinder " + cylinder,
                        piston.says(),
                        String.join(" or ", numbers),
                        NOT_SOLD));
            }
        });
        return found;
    }
}
