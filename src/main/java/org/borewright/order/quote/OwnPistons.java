package org.borewright.order.quote;

import java.util.List;
import java.util.stream.Collectors;
import org.borewright.kit.bill.Need;
import org.borewright.kit.bill.Needs;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.table.SizeRow;

/**
 * Pistons that the owner brings. They are not sold, and nothing is known of them but what they are said to be.
 *
 * @param choice their design and size
 * @param pistons which go into which holes
 */
public record OwnPistons(Choice choice, List<Need> pistons) {

    /** Copies the list. */
    public OwnPistons {
        pistons = List.copyOf(pistons);
    }

    /** Those of a row of the table, each for the hole it would go into. */
    static OwnPistons of(Choice choice, SizeRow row) {
        return new OwnPistons(choice, Needs.ofPistons(row.holes()));
    }

    /** What must turn out right of them. */
    String condition() {
        return pistons.stream()
                .map(need -> need.count() + " × " + need.number().text())
                .collect(Collectors.joining(
                        ", ",
                        "The pistons are the owner's own (",
                        "): they are measured and weighed by whoever bores, before anything is bored, and size, clearance and"
                                + " what the holes are honed to stand only then."));
    }
}
