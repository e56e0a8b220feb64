package org.borewright.fit.shape;

import java.util.Locale;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The clearance a piston maker asks for: hole less piston, both diameters at 20 °C.
 *
 * @param least the smallest clearance
 * @param target what to hone for
 * @param greatest the largest clearance of a finished hole
 */
public record ClearanceWindow(Length least, Length target, Length greatest) {

    /** @throws IllegalArgumentException unless 0 ≤ least ≤ target ≤ greatest */
    public ClearanceWindow {
        if (least.isNegative() || least.isMoreThan(target) || target.isMoreThan(greatest)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "clearance least %s, target %s, greatest %s do not rise", least, target, greatest));
        }
    }

    /** Least and greatest. */
    public Limits limits() {
        return new Limits(least, greatest);
    }
}
