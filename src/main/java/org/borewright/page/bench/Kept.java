package org.borewright.page.bench;

import java.time.Instant;
import java.util.Optional;
import org.borewright.page.bench.paper.Folder;

/**
 * A survey that stands with its order: whoever sent it is told so, and where it goes on.
 *
 * @param paper its number
 * @param by who surveyed
 * @param at when
 * @param quotable whether the order can be quoted from here
 */
record Kept(long paper, String by, Instant at, boolean quotable) {

    /** The last survey of an order; empty before the first. */
    static Optional<Kept> of(Folder folder) {
        return folder.last("survey").map(paper -> new Kept(paper.id(), paper.by(), paper.at(), folder.may("quote")));
    }
}
