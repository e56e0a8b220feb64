package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.GasketShape;
import org.borewright.fit.shape.HeadShape;
import org.borewright.measure.Length;

/**
 * The head gasket around the hole: its smallest opening stands back from the largest finish by the margin all round, and its largest
 * still sits on its land; the chamber mouth clears the crown. Source: geometry; margin 0.5 mm unless the kit says otherwise.
 */
public final class GasketOpening {

    private GasketOpening() {}

    /** The opening a hole needs: largest finish + 2 × margin. */
    public static Length needed(Length largestFinish, Length margin) {
        return largestFinish.plus(margin.doubled());
    }

    /** Opening and land. */
    public static List<Comparison> check(GasketShape gasket, Length largestFinish, HeadShape head) {
        return List.of(
                Rule.GASKET_OPENING.atLeast("", gasket.opening().least(), needed(largestFinish, gasket.margin())),
                Rule.GASKET_LAND.atMost("", gasket.opening().greatest(), head.gasketLand()));
    }
}
