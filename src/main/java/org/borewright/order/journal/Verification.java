package org.borewright.order.journal;

/**
 * The journal read from its first line, each held against the seal of the line before, and against the rows it tells of. Whoever noted
 * position and seal of a day elsewhere, on paper say, can prove later that nothing up to there was changed, not even by rewriting all of
 * it.
 *
 * @param lines that hold together, from the first
 * @param seal of the last of them
 * @param broken whether the line after them does not hold: it is missing, was changed, does not follow, or tells of rows that are otherwise by now
 */
public record Verification(long lines, String seal, boolean broken) {

    /** Nothing was read yet. */
    public static final Verification BEGUN = new Verification(0, Entry.NO_SEAL, false);

    /**
     * With the next line, and what was written with it as it lies in the tables now; after a broken one nothing more is proven.
     *
     * @param written digest of those rows
     */
    public Verification with(Entry next, String written) {
        boolean asWritten = next.matter().stream().allMatch(of -> of.written().equals(written));
        return !broken && asWritten && next.follows(lines, seal)
                ? new Verification(next.position(), next.seal(), false)
                : brokenOff();
    }

    /** Up to here, for the line that follows does not hold. */
    public Verification brokenOff() {
        return new Verification(lines, seal, true);
    }

    /** At the end: broken unless its last line is the one that the head of the journal names. */
    public Verification endingAt(long headPosition, String headSeal) {
        return lines == headPosition && seal.equals(headSeal) ? this : brokenOff();
    }
}
