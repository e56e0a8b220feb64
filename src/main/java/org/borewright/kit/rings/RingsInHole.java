package org.borewright.kit.rings;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.kit.choice.RingGapIn;

/**
 * Whether new rings alone will do in one hole.
 *
 * @param cylinder its name
 * @param piston the present one as measured; empty where nobody measured it, or nobody knows its design and so its alloy
 * @param ringGaps at the smallest and the largest place that was read; none where the rings are not known, or too little was read
 * @param checks every condition, in the order a machinist asks them
 */
public record RingsInHole(
        String cylinder, Optional<PresentPistonMeasured> piston, List<RingGapIn> ringGaps, List<Check> checks) {

    private static final Set<Rule> MENDED =
            Collections.unmodifiableSet(EnumSet.of(Rule.RIDGE, Rule.GLAZE, Rule.RING_FILED));

    /** Copies the lists. */
    public RingsInHole {
        ringGaps = List.copyOf(ringGaps);
        checks = List.copyOf(checks);
    }

    /** Certain when every condition is met, no when one is proven not to be and cannot be put right without cutting. */
    public Certainty certainty() {
        if (!ruledOut().isEmpty()) {
            return Certainty.NO;
        }
        return Check.allPass(checks) ? Certainty.CERTAIN : Certainty.POSSIBLE;
    }

    /** The conditions that are proven not to be met; a ridge is taken off, a glaze broken and a ring filed, and they rule nothing out. */
    List<Check> ruledOut() {
        List<Check> out = Check.ended(checks, Outcome.OUT);
        out.removeIf(check -> MENDED.contains(check.rule()));
        return out;
    }
}
