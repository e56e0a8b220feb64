package org.borewright.kit;

import java.util.List;
import org.borewright.catalog.Piston;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.PistonShape;

/** The same piston but for one thing. */
public final class Pistons {

    private Pistons() {}

    /** With another crown. */
    public static Piston crowned(Piston like, Crown crown) {
        return of(like, crown, like.shape().grooves());
    }

    /** With other grooves. */
    public static Piston grooved(Piston like, List<GrooveShape> grooves) {
        return of(like, like.shape().crown(), grooves);
    }

    private static Piston of(Piston like, Crown crown, List<GrooveShape> grooves) {
        PistonShape shape = like.shape();
        return new Piston(
                like.number(),
                like.design(),
                like.size(),
                like.hand(),
                like.grade(),
                new PistonShape(
                        shape.diameter(),
                        shape.nominalBore(),
                        shape.clearance(),
                        crown,
                        grooves,
                        shape.pinSeat(),
                        shape.clipSeat(),
                        shape.mass()));
    }
}
