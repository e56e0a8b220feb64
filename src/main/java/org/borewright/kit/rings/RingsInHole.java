package org.borewright.kit.rings;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;

/**
 * Whether new rings alone will do in one hole.
 *
 * @param cylinder its name
 * @param piston the present one as measured; empty where nobody measured it, or nobody knows its design and so its alloy
 * @param checks every condition, in the order a machinist asks them
 */
public record RingsInHole(String cylinder, Optional<PresentPistonMeasured> piston, List<Check> checks) {

    /** Copies the checks. */
    public RingsInHole {
        checks = List.copyOf(checks);
    }

    /** Certain when every condition is met, no when one is proven not to be and cannot be put right without cutting. */
    public Certainty certainty() {
        if (!ruledOut().isEmpty()) {
            return Certainty.NO;
        }
        return Check.allPass(checks) ? Certainty.CERTAIN : Certainty.POSSIBLE;
    }

    /** The conditions that are proven not to be met; a ridge is taken off and a glaze broken, and they rule nothing out. */
    List<Check> ruledOut() {
        List<Check> out = Check.ended(checks, Outcome.OUT);
        out.removeIf(check -> check.rule() == Rule.RIDGE || check.rule() == Rule.GLAZE);
        return out;
    }
}
