package org.borewright.kit.choice;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Bearing;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Pin;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Check;

/**
 * Rings, pin and clips that go with the pistons of a choice, and what was checked between them.
 *
 * @param rings one set for each piston
 * @param pin one for each piston
 * @param clip two for each piston; empty where pins are pressed into the rod
 * @param bearing one for each piston; empty where the engine has none to renew
 * @param checks part against part
 */
public record Outfit(RingSet rings, Pin pin, Optional<Clip> clip, Optional<Bearing> bearing, List<Check> checks) {

    /** Whether every check passed. */
    public boolean fits() {
        return Check.allPass(checks);
    }
}
