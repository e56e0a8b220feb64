package org.borewright.fit;

import org.borewright.fit.shape.BoreSurface;
import org.borewright.fit.shape.RingFace;

/** Which ring face may run on which surface: no chromium on chromium, and on bare silicon no chromium either (common practice). */
public final class RingFaceOnBore {

    private RingFaceOnBore() {}

    /** Whether the face may run on the surface. */
    public static Suitability check(String groove, RingFace face, BoreSurface surface) {
        return new Suitability(
                Rule.RING_FACE,
                groove,
                face.label() + " on " + surface.label(),
                "a face that suits " + surface.label(),
                suits(face, surface));
    }

    private static boolean suits(RingFace face, BoreSurface surface) {
        return switch (surface) {
            case IRON, NICKEL -> true;
            case CHROME, SILICON -> face != RingFace.CHROME;
        };
    }
}
