package org.borewright.order;

import java.util.Optional;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.measure.Length;

/**
 * What one hole was when it was surveyed or signed.
 *
 * @param cylinder its name
 * @param size of its pistons; empty where nobody knew
 * @param smallest diameter at 20 °C; empty where it was not measured
 * @param largest likewise
 * @param left the rebuilds left from here; empty where that is not known
 * @param says with what and how warm it was measured, and what was found
 * @param finishTold whether it was told what it was last finished to: after boring, what the bar reached
 */
public record HoleRecord(
        String cylinder,
        Optional<String> size,
        Optional<Length> smallest,
        Optional<Length> largest,
        Optional<RebuildsLeft> left,
        String says,
        boolean finishTold) {}
