package org.borewright.catalog.load.sense;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.ClipFloat;
import org.borewright.fit.Comparison;
import org.borewright.fit.PinFit;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.PistonShape;

/** Pins and clips against the pistons they are made for, and pins against the rod. */
final class PinSense {

    private PinSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        return shelf.parts().pins().stream()
                .flatMap(pin -> Stream.concat(
                        Objection.against(
                                line(pin),
                                "the rod of " + shelf.engine().code(),
                                PinFit.inRod(
                                        pin.shape(), shelf.engine().rodEnd().seat())),
                        inPiston(shelf, pin)));
    }

    /** All pistons of a design have the same pin bore and clip grooves; one of them stands for all. */
    private static Stream<Objection> inPiston(Shelf shelf, Pin pin) {
        return shelf.parts().pistons().stream()
                .filter(piston -> piston.design().equals(pin.design()))
                .limit(1)
                .flatMap(piston -> inPiston(shelf, pin, piston.shape()));
    }

    private static Stream<Objection> inPiston(Shelf shelf, Pin pin, PistonShape piston) {
        return Stream.concat(
                Objection.against(line(pin), pin.design(), PinFit.inPiston(pin.shape(), piston.pinSeat())),
                piston.clipSeat().stream().flatMap(seat -> clips(shelf, pin, seat)));
    }

    private static Stream<Objection> clips(Shelf shelf, Pin pin, ClipSeat seat) {
        return shelf.parts().clips().stream()
                .filter(clip -> clip.design().equals(pin.design()))
                .flatMap(clip -> ClipFloat.check(seat, clip.shape(), pin.shape()).stream()
                        .flatMap(check -> clip(check, clip, pin)));
    }

    /** The float is looked for in the pin, the play in the clip. */
    private static Stream<Objection> clip(Comparison check, Clip clip, Pin pin) {
        return isFloat(check)
                ? Objection.against(line(pin), clip.number().text(), List.of(check))
                : Objection.against(line(clip), pin.design(), List.of(check));
    }

    private static boolean isFloat(Comparison check) {
        return check.rule() == Rule.CLIP_FLOAT_LEAST || check.rule() == Rule.CLIP_FLOAT_GREATEST;
    }

    private static Place line(Pin pin) {
        return Place.of("pins.csv", "pin", pin);
    }

    private static Place line(Clip clip) {
        return Place.of("clips.csv", "clip", clip);
    }
}
