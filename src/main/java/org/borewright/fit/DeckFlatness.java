package org.borewright.fit;

import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/**
 * How far a deck is out of flat: the thickest feeler blade that goes in anywhere under a straight edge laid along, across and from corner
 * to corner. Judged as any reading is (ISO 14253-1); a deck that is not proven flat is skimmed as needed, and no deeper.
 *
 * @param found the greatest out-of-flat found; not negative
 * @param stated U of that with k = 2; empty when not stated, and then that of feeler and straight edge (common practice)
 */
public record DeckFlatness(Length found, Optional<Length> stated) {

    /** Nobody laid a straight edge on it. */
    public static final Unchecked NOT_MEASURED = Rule.DECK_FLATNESS.notChecked(
            "", "not measured; try feeler blades under a straight edge along, across and from corner to corner");

    /** U of what was found. */
    public Length uncertainty() {
        return stated.orElseGet(CommonPractice::feelerUncertainty);
    }

    /** The out-of-flat against the engine's limit. */
    public Comparison check(Length limit) {
        return Rule.DECK_FLATNESS.atMost("", found, limit).within(Uncertainty.ofCalibration(uncertainty()));
    }

    /** The least skim that surely makes it flat: what was found, and the uncertainty of that. Source: geometry. */
    public Length leastSkim() {
        return found.plus(uncertainty());
    }

    /** A skim against the least that makes it flat. */
    public Comparison checkSkim(Length skim) {
        return Rule.SKIM_TO_FLAT.atLeast("", skim, leastSkim());
    }
}
