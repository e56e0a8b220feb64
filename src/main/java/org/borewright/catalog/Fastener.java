package org.borewright.catalog;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.BoltShape;

/**
 * A group of like fasteners and how they are tightened.
 *
 * @param name such as {@code cylinder head nuts}
 * @param count how many
 * @param bolt thread, strength, condition
 * @param singleUse the bolt to renew; empty where they are used again
 * @param stages in order, at least one
 * @param sequence the order in words
 * @param operations the codes of the shop operations that touch them, in the order of the file
 */
public record Fastener(
        String name,
        int count,
        BoltShape bolt,
        Optional<Bolt> singleUse,
        List<TorqueStage> stages,
        String sequence,
        List<String> operations) {

    /** Copies stages and operations. */
    public Fastener {
        stages = List.copyOf(stages);
        operations = List.copyOf(operations);
    }
}
