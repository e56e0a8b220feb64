package org.borewright.page.bench.picture;

import java.util.List;

/**
 * How a hole runs from the deck down, its diameter across the picture, against the sizes. Places are those of an SVG of 240 × 220.
 *
 * @param index of the hole, from 0
 * @param cylinder its name
 * @param lines the sizes, as far as they are near
 * @param worn the corners of what the hole is wider than at its narrowest; empty where too little was read
 * @param traces one for each axis
 * @param alone where its one diameter lies that was taken at no known place; empty where it was read in a grid, or not at all
 * @param says the same in one sentence
 * @param told its lines for the script that draws while somebody types
 */
public record Profile(
        int index,
        String cylinder,
        List<Profile.Line> lines,
        String worn,
        List<Profile.Trace> traces,
        String alone,
        String says,
        String told) {

    /** Copies the lists. */
    public Profile {
        lines = List.copyOf(lines);
        traces = List.copyOf(traces);
    }

    /**
     * A size.
     *
     * @param label of it
     * @param x where it lies
     * @param labelX the middle of its label, so far from the edge that it is read whole
     * @param labelY where its label stands
     */
    public record Line(String label, String x, String labelX, String labelY) {}

    /**
     * The readings along one axis.
     *
     * @param axis its name
     * @param order which axis it is, from 0: dashed and marked so
     * @param points joined
     * @param marks one for each reading
     */
    public record Trace(String axis, int order, String points, List<Profile.Mark> marks) {

        /** Copies the marks. */
        public Trace {
            marks = List.copyOf(marks);
        }
    }

    /**
     * A reading.
     *
     * @param x its diameter
     * @param y its depth
     * @param largest as typed where it is the largest of the hole, else empty
     */
    public record Mark(String x, String y, String largest) {}
}
