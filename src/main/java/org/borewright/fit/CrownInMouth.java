package org.borewright.fit;

import java.util.Optional;
import org.borewright.fit.shape.HeadShape;
import org.borewright.measure.Length;

/** The crown of the largest piston clears the chamber mouth or the register of the head. Source: geometry. */
public final class CrownInMouth {

    private CrownInMouth() {}

    /** The mouth against the largest piston; empty where the crown cannot reach it. */
    public static Optional<Comparison> check(HeadShape head, Length largestPiston) {
        return head.mouth().map(mouth -> Rule.CROWN_IN_MOUTH.atLeast("", mouth, largestPiston));
    }
}
