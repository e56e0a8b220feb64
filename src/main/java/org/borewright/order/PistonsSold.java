package org.borewright.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The pistons that a quote sells, or that the owner brings.
 *
 * @param design of their maker; empty on quotes given before it was noted
 * @param size their label
 * @param counts how many of each number its boxes hold, 0 where that was not noted; none of those of the owner: whatever is of
 *     their design and size may go in
 * @param rings the numbers of the ring sets sold to run on them; none where that was not noted
 */
public record PistonsSold(
        Optional<String> design, String size, SortedMap<String, Integer> counts, SortedSet<String> rings) {

    private static final String NOT_SOLD =
            "Set it aside: it did not come out of the boxes of this quote. Where its like is wanted, survey and quote anew.";

    private static final String TOO_MANY =
            "No more of that number came out of the boxes of this quote: look which number each piston bears.";

    private static final String OTHER_RINGS =
            "Run the rings that were sold: the gaps of another set were not quoted. Where others are wanted, survey and quote anew.";

    /** Copies counts and rings. */
    public PistonsSold {
        counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
        rings = Collections.unmodifiableSortedSet(new TreeSet<>(rings));
    }

    /** Pistons that the owner brings. */
    public static PistonsSold ofOwner(String design, String size, SortedSet<String> rings) {
        return new PistonsSold(Optional.of(design), size, new TreeMap<>(), rings);
    }

    /** Whether the owner brings them. */
    public boolean areOwn() {
        return design.isPresent() && counts.isEmpty();
    }

    /** Where pistons that are to go in are not those sold, or more than were; none where all are. */
    public List<Difference> from(PistonsFitted fitted) {
        List<Difference> found = new ArrayList<>(fitted.fromJob(design.orElse(fitted.design()), size));
        SortedMap<String, Integer> taken = new TreeMap<>();
        fitted.byCylinder().forEach((cylinder, piston) -> {
            int nowTaken = taken.merge(piston.number(), 1, Integer::sum);
            of(piston, nowTaken)
                    .ifPresent(sold -> found.add(new Difference(
                            "/pistons",
                            "piston of cylinder " + cylinder,
                            piston.says(),
                            sold,
                            counts.containsKey(piston.number()) ? TOO_MANY : NOT_SOLD)));
        });
        return found;
    }

    /** Where the rings that an engine was built with are not among those sold; none where they are, and where either was not noted. */
    public List<Difference> inRings(PistonsFitted built) {
        return built.rings().filter(set -> !rings.isEmpty() && !rings.contains(set)).stream()
                .map(set -> new Difference("/ringSet", "ring set", set, String.join(" or ", rings), OTHER_RINGS))
                .toList();
    }

    /** What was sold, where it is not so many of that number. */
    private Optional<String> of(PistonsFitted.Piston piston, int wanted) {
        if (counts.isEmpty()) {
            return Optional.empty();
        }
        Optional<Integer> sold = Optional.ofNullable(counts.get(piston.number()));
        return sold.isEmpty()
                ? Optional.of(String.join(" or ", counts.keySet()))
                : sold.filter(count -> count != 0 && count < wanted).map(count -> count + " of " + piston.number());
    }
}
