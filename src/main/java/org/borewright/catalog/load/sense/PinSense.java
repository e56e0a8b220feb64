package org.borewright.catalog.load.sense;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.Check;
import org.borewright.fit.ClipFloat;
import org.borewright.fit.Comparison;
import org.borewright.fit.PinFit;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.PistonShape;

/**
 * Pins and clips against the pistons they are made for, and pins against the rod. A pin is refused where it fits neither piston nor
 * rod, or no clip of its design; a clip where it goes with no pin of its design that has one. A pin and a clip that do not go together
 * are no slip while each goes with another: a match takes the pair that fits.
 */
final class PinSense {

    private PinSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        return shelf.parts().designs().stream()
                .flatMap(design -> shelf.parts().pistons().stream()
                        .filter(piston -> piston.design().equals(design.code()))
                        .limit(1)
                        .flatMap(piston -> new Seats(shelf, design.code(), piston.shape()).objections()));
    }

    /** All pistons of a design have the same pin bore and clip grooves; one of them stands for all. */
    private record Seats(Shelf shelf, String design, PistonShape piston) {

        Stream<Objection> objections() {
            return Stream.concat(
                    pins().stream().flatMap(this::pin),
                    piston.clipSeat().stream()
                            .flatMap(seat -> Stream.concat(
                                    pins().stream().flatMap(pin -> clipsOf(pin, seat)),
                                    clips().stream().flatMap(clip -> clip(clip, seat)))));
        }

        private Stream<Objection> pin(Pin pin) {
            return Stream.concat(
                    Objection.against(
                            line(pin),
                            "the rod of " + shelf.engine().code(),
                            PinFit.inRod(pin.shape(), shelf.engine().rodEnd().seat())),
                    Objection.against(line(pin), design, PinFit.inPiston(pin.shape(), piston.pinSeat())));
        }

        /** The float is looked for in the pin, the play in the clip. */
        private Stream<Objection> clipsOf(Pin pin, ClipSeat seat) {
            return hasAClip(pin, seat)
                    ? Stream.empty()
                    : clips().stream()
                            .flatMap(clip -> ClipFloat.check(seat, clip.shape(), pin.shape()).stream()
                                    .flatMap(check -> isFloat(check)
                                            ? Objection.against(
                                                    line(pin), clip.number().text(), List.of(check))
                                            : Objection.against(line(clip), design, List.of(check))));
        }

        /** A clip against the pins that have another. */
        private Stream<Objection> clip(Clip clip, ClipSeat seat) {
            List<Pin> others =
                    pins().stream().filter(pin -> hasAClip(pin, seat)).toList();
            return others.stream().anyMatch(pin -> goes(pin, clip, seat))
                    ? Stream.empty()
                    : others.stream()
                            .flatMap(pin -> ClipFloat.check(seat, clip.shape(), pin.shape()).stream()
                                    .flatMap(check -> Objection.against(
                                            line(clip),
                                            isFloat(check) ? pin.number().text() : design,
                                            List.of(check))));
        }

        private boolean hasAClip(Pin pin, ClipSeat seat) {
            return clips().stream().anyMatch(clip -> goes(pin, clip, seat));
        }

        private List<Pin> pins() {
            return shelf.parts().pins().stream()
                    .filter(pin -> pin.design().equals(design))
                    .toList();
        }

        private List<Clip> clips() {
            return shelf.parts().clips().stream()
                    .filter(clip -> clip.design().equals(design))
                    .toList();
        }
    }

    private static boolean goes(Pin pin, Clip clip, ClipSeat seat) {
        return Check.allPass(ClipFloat.check(seat, clip.shape(), pin.shape()));
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
