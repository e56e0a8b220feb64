package org.borewright.catalog;

import org.borewright.measure.Expansion;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The hole and how it is worked.
 *
 * @param nominal the nominal bore at standard
 * @param asNew the limits of a new hole at standard
 * @param expansion of the wall, with its uncertainty
 * @param labelNames what a size label names
 * @param honeStock left by the bar on the diameter
 * @param honeCleanUp taken by the hone beyond the largest reading, on the diameter, to leave no uncut patch
 * @param centringError how far the bar's axis may miss the original one
 * @param largestOversize the most that may be taken, inclusive
 */
public record BoreSpec(
        Length nominal,
        Limits asNew,
        Expansion expansion,
        LabelNames labelNames,
        Length honeStock,
        Length honeCleanUp,
        Length centringError,
        Length largestOversize) {

    /** What the figure on a size label is of. */
    public enum LabelNames {
        /** The label names the piston's diameter. */
        PISTON("piston"),
        /** The label names the bore's diameter. */
        BORE("bore");

        private final String label;

        LabelNames(String label) {
            this.label = label;
        }

        /** The word as typed and shown. */
        public String label() {
            return label;
        }
    }
}
