package org.borewright.api.shown;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.borewright.measure.Torque;

/**
 * A torque on the wire, in three units side by side.
 *
 * @param newtonMetres N·m, exact
 * @param poundForceFeet lbf·ft, rounded to a tenth
 * @param kilogramForceMetres kgf·m, rounded to a hundredth
 */
public record ShownTorque(
        @JsonProperty("N·m") BigDecimal newtonMetres,
        @JsonProperty("lbf·ft") BigDecimal poundForceFeet,
        @JsonProperty("kgf·m") BigDecimal kilogramForceMetres) {

    /** A torque. */
    public static ShownTorque of(Torque torque) {
        return new ShownTorque(
                BigDecimal.valueOf(torque.millinewtonMetres(), 3).setScale(1, RoundingMode.HALF_EVEN),
                BigDecimal.valueOf(torque.poundForceFeet()).setScale(1, RoundingMode.HALF_EVEN),
                BigDecimal.valueOf(torque.kilogramForceMetres()).setScale(2, RoundingMode.HALF_EVEN));
    }
}
