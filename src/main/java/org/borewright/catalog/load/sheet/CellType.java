package org.borewright.catalog.load.sheet;

import java.util.function.Function;

/**
 * How the text of a cell is read.
 *
 * @param <T> what it is read as
 */
@FunctionalInterface
public interface CellType<T> {

    /**
     * Reads a cell that is not empty.
     *
     * @throws IllegalArgumentException if the text cannot stand, with the reason as its message
     */
    T read(String text);

    /** The same cell read on into something else. */
    default <U> CellType<U> as(Function<T, U> into) {
        return text -> into.apply(read(text));
    }
}
