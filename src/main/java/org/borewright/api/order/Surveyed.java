package org.borewright.api.order;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.borewright.api.match.request.Asked;
import org.borewright.catalog.Size;
import org.borewright.kit.Match;
import org.borewright.kit.table.LeftInHole;
import org.borewright.kit.table.SizeRow;
import org.borewright.order.HoleRecord;
import org.borewright.order.desk.Paper;

/**
 * A survey and what came of it.
 *
 * @param asked the question of a match
 * @param match its answer
 * @param supplied every size with what anybody is supplied with: rebuilds are left to parts that can be had, and not to the last that lie here
 * @param paper both, as they are kept
 * @param finishTold the holes whose last finish the sender told, and nobody had to look up
 */
record Surveyed(Asked asked, Match match, List<SizeRow> supplied, Paper paper, Set<String> finishTold) {

    /** Copies the table and the names. */
    Surveyed {
        supplied = List.copyOf(supplied);
        finishTold = Collections.unmodifiableSet(new TreeSet<>(finishTold));
    }

    /** The engine that was surveyed. */
    String engine() {
        return asked.fits().shelf().engine().code();
    }

    /** Each hole as it was found. */
    List<HoleRecord> holes() {
        Optional<Size> present = asked.request().present().size();
        return match.surveyed().stream()
                .map(hole -> Measured.with(asked.request().measuring())
                        .record(
                                hole,
                                present.map(Size::label),
                                LeftInHole.of(
                                        supplied,
                                        hole.name(),
                                        present,
                                        asked.request().condition()),
                                finishTold.contains(hole.name())))
                .toList();
    }
}
