package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.Bearing;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Part;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Check;
import org.borewright.fit.ClipFloat;
import org.borewright.fit.Outcome;
import org.borewright.fit.PinFit;
import org.borewright.fit.Rule;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.PistonShape;

/** Finds the rings, pins and clips made for a piston design, and checks each combination part against part. */
final class OutfitFinder {

    private OutfitFinder() {}

    /** Every outfit made for the pistons, whether it fits or not; empty if a part is not made at all. */
    static List<Outfit> find(Shelf shelf, List<Piston> pistons) {
        Piston first = pistons.get(0);
        List<Outfit> outfits = new ArrayList<>();
        for (RingSet rings : supplied(shelf, shelf.parts().ringSets())
                .filter(set -> set.design().equals(first.design()) && set.size().equals(first.size()))
                .toList()) {
            for (Pin pin : supplied(shelf, shelf.parts().pins())
                    .filter(each -> each.design().equals(first.design()))
                    .toList()) {
                for (Optional<Clip> clip : clips(shelf, first)) {
                    bearings(shelf)
                            .map(bearing -> new Outfit(
                                    rings,
                                    pin,
                                    clip,
                                    bearing,
                                    EveryPiston.asked(
                                            pistons, piston -> checks(shelf.engine(), piston, rings, pin, clip))))
                            .forEach(outfits::add);
                }
            }
        }
        return outfits;
    }

    /** What became of the rings, pins, clips and bearings made for a piston, kind by kind where none of them is supplied. */
    static List<Withdrawal> withdrawn(Shelf shelf, Piston piston) {
        Parts parts = shelf.parts();
        boolean pressed = shelf.engine().rodEnd().pressed();
        return Stream.<Stream<? extends Part>>of(
                        parts.ringSets().stream()
                                .filter(set -> set.design().equals(piston.design())
                                        && set.size().equals(piston.size())),
                        parts.pins().stream().filter(pin -> pin.design().equals(piston.design())),
                        parts.clips().stream()
                                .filter(clip -> !pressed && clip.design().equals(piston.design())),
                        parts.bearings().stream()
                                .filter(bearing -> shelf.engine().rodEnd().bearing()))
                .map(kind -> kind.map(Part::number).toList())
                .filter(numbers -> numbers.stream().noneMatch(number -> Supply.isSupplied(shelf, number)))
                .flatMap(List::stream)
                .flatMap(number -> Optional.ofNullable(shelf.withdrawals().get(number)).stream())
                .toList();
    }

    private static List<Optional<Clip>> clips(Shelf shelf, Piston piston) {
        if (shelf.engine().rodEnd().pressed()) {
            return List.of(Optional.empty());
        }
        return supplied(shelf, shelf.parts().clips())
                .filter(clip -> clip.design().equals(piston.design()))
                .map(Optional::of)
                .toList();
    }

    private static Stream<Optional<Bearing>> bearings(Shelf shelf) {
        return shelf.engine().rodEnd().bearing()
                ? supplied(shelf, shelf.parts().bearings()).map(Optional::of)
                : Stream.of(Optional.empty());
    }

    private static <T extends Part> Stream<T> supplied(Shelf shelf, List<T> parts) {
        return parts.stream().filter(part -> Supply.isSupplied(shelf, part.number()));
    }

    private static List<Check> checks(Engine engine, PistonShape piston, RingSet rings, Pin pin, Optional<Clip> clip) {
        List<Check> checks =
                new ArrayList<>(RingChecks.between(rings, piston, engine.build().surface()));
        checks.addAll(PinFit.inPiston(pin.shape(), piston.pinSeat()));
        checks.addAll(PinFit.inRod(pin.shape(), engine.rodEnd().seat()));
        clip.ifPresent(fitted -> checks.addAll(clipFloat(piston, fitted, pin)));
        return checks;
    }

    /** A clip of which nobody says where it sits is not known to hold the pin: a hold. */
    private static List<? extends Check> clipFloat(PistonShape piston, Clip clip, Pin pin) {
        return piston.clipSeat().isPresent()
                ? ClipFloat.check(piston.clipSeat().get(), clip.shape(), pin.shape())
                : List.of(new Unchecked(
                        Rule.CLIP_FLOAT_LEAST,
                        "",
                        Outcome.UNKNOWN,
                        "the clip grooves of this piston are not known; measure them"));
    }
}
