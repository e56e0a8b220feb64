package org.borewright.kit.ladder;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.Certainty;
import org.borewright.kit.table.Settling;
import org.borewright.kit.table.SizeRow;

/**
 * One way to restore an engine, and how certain it is.
 *
 * @param way what is done
 * @param row the size it goes to; empty for rings only and for a sleeve
 * @param certainty whether it will do, in the least certain hole
 * @param open what is not known, or stands against it
 * @param readings that would settle it; empty where it is settled, or other things than readings of the hole are open
 */
public record Rung(
        Way way, Optional<SizeRow> row, Certainty certainty, List<String> open, List<Settling.Reading> readings) {

    /** Copies the lists. */
    public Rung {
        open = List.copyOf(open);
        readings = List.copyOf(readings);
    }
}
