package org.borewright.api.lookup.engine;

import java.util.List;
import org.borewright.api.guard.Parameters;

/**
 * A part of a list.
 *
 * @param page counted from 1
 * @param size how many are on a page
 */
record Paging(int page, int size) {

    private static final int MOST_PAGES = 100_000;
    private static final int LARGEST = 100;
    private static final int USUAL = 20;

    static Paging read(Parameters parameters) {
        return new Paging(parameters.whole("page", 1, MOST_PAGES, 1), parameters.whole("size", 1, LARGEST, USUAL));
    }

    <T> List<T> of(List<T> all) {
        return all.stream().skip((page - 1L) * size).limit(size).toList();
    }

    boolean isFollowed(int total) {
        return (long) page * size < total;
    }

    /** The page before, or the last there is where this one lies beyond the end. */
    int before(int total) {
        int last = Math.max(1, (total + size - 1) / size);
        return Math.min(page - 1, last);
    }
}
