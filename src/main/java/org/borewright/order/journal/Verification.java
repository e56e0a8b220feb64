package org.borewright.order.journal;

import java.util.Optional;

/**
 * The journal read from its first line, each held against the seal of the line before, and against the rows it tells of. Whoever noted position and seal of a day
 * elsewhere, on paper say, can prove later that nothing up to there was changed, not even by rewriting all of it.
 *
 * @param lines that hold together, from the first
 * @param seal of the last of them
 * @param broken the first line that was changed, does not follow, or tells of rows that are otherwise by now; empty where all hold
 */
public record Verification(long lines, String seal, Optional<Entry> broken) {

    /** Nothing was read yet. */
    public static final Verification BEGUN = new Verification(0, Entry.NO_SEAL, Optional.empty());

    /** With the next line; after a broken one nothing more is proven. */
    public Verification with(Entry next) {
        if (broken.isPresent()) {
            return this;
        }
        return next.follows(lines, seal)
                ? new Verification(next.position(), next.seal(), Optional.empty())
                : new Verification(lines, seal, Optional.of(next));
    }

    /**
     * With the next line, and what was written with it as it lies in the tables now.
     *
     * @param written digest of those rows
     */
    public Verification with(Entry next, String written) {
        boolean changed =
                next.matter().filter(of -> !of.written().equals(written)).isPresent();
        return changed && broken.isEmpty() ? new Verification(lines, seal, Optional.of(next)) : with(next);
    }

    /**
     * As far as a line that is found not to hold by what lies in the tables now; the same where it ends before it anyway.
     *
     * @param before the seal of the line before it
     */
    public Verification upTo(Entry line, String before) {
        return line.position() > lines ? this : new Verification(line.position() - 1, before, Optional.of(line));
    }

    /** Whether every line holds, up to the one that the head of the journal names. */
    public boolean holds(long headPosition, String headSeal) {
        return broken.isEmpty() && lines == headPosition && seal.equals(headSeal);
    }
}
