package org.borewright.catalog;

import java.util.Optional;
import org.borewright.measure.Expansion;
import org.borewright.measure.Length;

/**
 * What all sizes of one maker's piston for one engine share.
 *
 * @param code such as {@code NORHEIM-OS4}
 * @param maker who makes it
 * @param expansion of its alloy
 * @param gaugeHeight from the lower edge of the skirt, where its diameter is taken
 * @param coating how its diameter is stated on a coated skirt
 * @param wearLimit the greatest clearance in service
 */
public record PistonDesign(
        String code,
        String maker,
        Expansion expansion,
        Length gaugeHeight,
        Coating coating,
        Optional<Length> wearLimit) {

    /** Where a piston's diameter is taken on its coating. */
    public enum Coating {
        /** No coating. */
        NONE("none"),
        /** The diameter is taken over the coating. */
        OVER("over"),
        /** The diameter is taken beside the coating. */
        BESIDE("beside");

        private final String label;

        Coating(String label) {
            this.label = label;
        }

        /** The word as typed and shown. */
        public String label() {
            return label;
        }
    }
}
