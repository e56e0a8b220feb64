package org.borewright.catalog.load.sense;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.RingBore;
import org.borewright.fit.RingFaceOnBore;
import org.borewright.fit.RingGap;
import org.borewright.fit.RingInGroove;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Uncertainty;

/**
 * Rings against the grooves and the holes of the pistons they are made for, and their faces against the surface of the engine. A set is
 * made for one design at one size, so what does not suit there suits nowhere: each is refused, even beside a set that fits.
 */
final class RingSense {

    private RingSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        return shelf.parts().ringSets().stream()
                .flatMap(set -> Stream.concat(
                        faces(shelf.engine(), set),
                        SmallestOffered.pistons(shelf, set.design(), set.size()).flatMap(piston -> of(set, piston))));
    }

    private static Stream<Objection> faces(Engine engine, RingSet set) {
        return set.rings().stream()
                .flatMap(ring -> Objection.against(
                        line(set, ring),
                        engine.code(),
                        List.of(RingFaceOnBore.check(
                                ring.groove(), ring.face(), engine.build().surface()))));
    }

    private static Stream<Objection> of(RingSet set, Piston piston) {
        String with = piston.number().text();
        PistonShape shape = piston.shape();
        Stream<Objection> bore = Objection.against(
                Place.of("ring_sets.csv", "ring_set", set),
                with,
                List.of(RingBore.check(set.nominalBore(), shape.nominalBore())));
        return Stream.concat(
                bore,
                set.rings().stream()
                        .flatMap(ring -> shape.grooves().stream()
                                .filter(groove -> groove.name().equals(ring.groove()))
                                .flatMap(groove -> of(line(set, ring), with, ring, groove, shape))));
    }

    private static Stream<Objection> of(
            Place line, String with, RingShape ring, GrooveShape groove, PistonShape piston) {
        return Stream.concat(
                Objection.against(line, with, RingInGroove.check(ring, groove, piston.smallestFinish())),
                Objection.against(line, with, RingGap.check(piston.finishes(), Uncertainty.NONE, ring, groove)));
    }

    private static Place line(RingSet set, RingShape ring) {
        return new Place(
                "rings.csv", List.of("ring_set", "groove"), List.of(set.number().text(), ring.groove()));
    }
}
