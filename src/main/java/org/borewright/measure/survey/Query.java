package org.borewright.measure.survey;

import java.util.List;

/**
 * A question to whoever took the readings of a grid: this may be a slip. A query corrects nothing and suggests nothing; the person reads
 * the place again, and either corrects it or stands by it.
 *
 * @param kind what is odd
 * @param readings the readings in question; empty when it is the whole grid
 * @param beside the readings they were held against
 * @param sameAs the other cylinders with the same grid; empty for any other kind
 */
public record Query(Kind kind, List<Reading> readings, List<Reading> beside, List<String> sameAs) {

    /** What is odd about readings that each could be true. */
    public enum Kind {
        /** No wear reaches one place and spares all places around it. */
        STRAY("far from every reading beside it"),
        /** The piston presses to the same side over the whole stroke. */
        OPPOSED("thrust and pin the other way round than in every other row"),
        /** No two holes wear alike in every place. */
        SAME_GRID("the same grid as another cylinder");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The words as shown. */
        public String label() {
            return label;
        }
    }

    /** Copies the lists. */
    public Query {
        readings = List.copyOf(readings);
        beside = List.copyOf(beside);
        sameAs = List.copyOf(sameAs);
    }

    /** Readings that do not go with others of their grid. */
    public static Query of(Kind kind, List<Reading> readings, List<Reading> beside) {
        return new Query(kind, readings, beside, List.of());
    }

    /** A whole grid that other cylinders have too. */
    public static Query sameGridAs(List<String> cylinders) {
        return new Query(Kind.SAME_GRID, List.of(), List.of(), cylinders);
    }
}
