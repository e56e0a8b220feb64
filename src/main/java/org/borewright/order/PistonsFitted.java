package org.borewright.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Which piston goes into which hole: as they were paired before honing, or as they were built after it.
 *
 * @param design of their maker
 * @param size their label
 * @param byCylinder each hole that has its piston
 * @param rings the number of the ring set that runs on them; empty before it is built, and where it was not told
 */
public record PistonsFitted(
        String design, String size, SortedMap<String, PistonsFitted.Piston> byCylinder, Optional<String> rings) {

    private static final String NONE = "none";

    private static final String BUILT_OTHERWISE =
            "Each hole was honed to its own piston: build it as it was paired, or confirm the pistons anew as they go in.";

    /**
     * One piston.
     *
     * @param tag what it is marked with; empty where it was not measured
     * @param number it was bought by
     */
    public record Piston(Optional<String> tag, String number) {

        /** As it is told of: {@code A (NH-050)}. */
        public String says() {
            return tag.map(marked -> marked + " (" + number + ")").orElse(number);
        }
    }

    /** Copies the pistons. */
    public PistonsFitted {
        byCylinder = Collections.unmodifiableSortedMap(new TreeMap<>(byCylinder));
    }

    /** Pistons that are to go in. */
    public PistonsFitted(String design, String size, SortedMap<String, PistonsFitted.Piston> byCylinder) {
        this(design, size, byCylinder, Optional.empty());
    }

    /** The same with rings on them. */
    public PistonsFitted with(Optional<String> ringSet) {
        return new PistonsFitted(design, size, byCylinder, ringSet);
    }

    List<Difference> fromJob(String soldDesign, String soldSize) {
        List<Difference> found = new ArrayList<>();
        if (!size.equals(soldSize)) {
            found.add(Difference.ofSize(size, soldSize));
        }
        if (!design.equals(soldDesign)) {
            found.add(Difference.ofDesign(design, soldDesign));
        }
        return found;
    }

    /** Where pistons as built are not as these, which were paired; none where all are. */
    public List<Difference> from(PistonsFitted built) {
        List<Difference> found = new ArrayList<>(built.fromJob(design, size));
        built.byCylinder.forEach((cylinder, piston) -> {
            String paired = told(Optional.ofNullable(byCylinder.get(cylinder)));
            if (!piston.says().equals(paired)) {
                found.add(new Difference(
                        "/cylinders", "piston of cylinder " + cylinder, piston.says(), paired, BUILT_OTHERWISE));
            }
        });
        return found;
    }

    private static String told(Optional<Piston> piston) {
        return piston.map(Piston::says).orElse(NONE);
    }
}
