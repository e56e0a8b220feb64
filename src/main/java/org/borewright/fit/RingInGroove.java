package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.RingSection;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * A ring in its groove: axial play and the room behind it, each at its worst. A wedge-shaped ring fits by part number only, its play
 * cannot be reckoned from widths. Source: definitions of ISO 6621-2; limits from the piston maker.
 */
public final class RingInGroove {

    private RingInGroove() {}

    /** All checks of one ring in its groove; {@code smallestHole} is the smallest finish the piston may run in. */
    public static List<Check> check(RingShape ring, GrooveShape groove, Length smallestHole) {
        String place = groove.name();
        Suitability section = new Suitability(
                Rule.RING_SECTION,
                place,
                ring.section().label(),
                groove.section().label(),
                ring.section() == groove.section());
        if (!section.suits() || ring.section() == RingSection.KEYSTONE) {
            return List.of(
                    section,
                    Rule.RING_PLAY_LEAST.notChecked(
                            place, "a keystone section fits by part number, not by its widths"));
        }
        Limits play = groove.width().minus(ring.axialWidth());
        return List.of(
                section,
                Rule.RING_PLAY_LEAST.atLeast(
                        place, play.least(), groove.axialPlay().least()),
                Rule.RING_PLAY_GREATEST.atMost(
                        place, play.greatest(), groove.axialPlay().greatest()),
                Rule.RING_BACK.atLeast(place, behind(ring, groove, smallestHole), groove.backClearanceLeast()));
    }

    /** The least room behind a ring: (hole − root)/2 − radial wall, rounded down. */
    static Length behind(RingShape ring, GrooveShape groove, Length smallestHole) {
        return smallestHole
                .minus(groove.root().greatest())
                .halfRoundedDown()
                .minus(ring.radialWall().greatest());
    }
}
