package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.ClipShape;
import org.borewright.fit.shape.PinShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The pin between its clips and the clips in their grooves. End float = span of the grooves − 2 × wire − pin, each at its worst.
 * Source: geometry; limits from the piston maker. A pin without float breaks a clip, and a loose clip ruins the hole.
 */
public final class ClipFloat {

    private ClipFloat() {}

    /** The least and the greatest end float. */
    public static Limits of(ClipSeat seat, ClipShape clip, PinShape pin) {
        Limits wires =
                new Limits(clip.wire().least().doubled(), clip.wire().greatest().doubled());
        return seat.span().minus(wires).minus(pin.length());
    }

    /** Float and side play against their limits. */
    public static List<Comparison> check(ClipSeat seat, ClipShape clip, PinShape pin) {
        Limits endFloat = of(seat, clip, pin);
        Limits sidePlay = seat.width().minus(clip.wire());
        return List.of(
                Rule.CLIP_FLOAT_LEAST.atLeast(
                        "", endFloat.least(), seat.endFloat().least()),
                Rule.CLIP_FLOAT_GREATEST.atMost(
                        "", endFloat.greatest(), seat.endFloat().greatest()),
                Rule.CLIP_PLAY_LEAST.atLeast("", sidePlay.least(), Length.ZERO),
                Rule.CLIP_PLAY_GREATEST.atMost("", sidePlay.greatest(), seat.sidePlayGreatest()));
    }
}
