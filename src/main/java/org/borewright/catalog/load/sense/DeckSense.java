package org.borewright.catalog.load.sense;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Part;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.CompressionRatio;
import org.borewright.fit.GasketOpening;
import org.borewright.fit.PistonToHead;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;

/**
 * Gaskets over crowns, at the {@linkplain SmallestOffered smallest size} of each design: a larger hole only asks for a larger opening and
 * raises the ratio, so it blocks its own size in a match and refuses nothing here.
 *
 * <p>A design is refused where it comes too near to the head, too far from it, or to too high a ratio with every kit and every loose
 * gasket, the deck as made: a maker cuts his pistons for that. A kit as it comes is refused where it goes with no design at all, at
 * whatever skim the engine allows: a thick gasket is made for a skimmed deck, and one too small for a large size serves the smaller ones.
 * A loose gasket is refused where it goes so in no kit, whatever loose gasket goes on beside it.
 */
final class DeckSense {

    private final Shelf shelf;
    private final List<Gaskets> sets;
    private final List<SmallestOffered> designs;

    private DeckSense(Shelf shelf) {
        this.shelf = shelf;
        this.sets = Gaskets.of(shelf.parts());
        this.designs = SmallestOffered.of(shelf);
    }

    static Stream<Objection> objections(Shelf shelf) {
        DeckSense sense = new DeckSense(shelf);
        return Stream.of(
                        sense.designs.stream().flatMap(sense::design),
                        shelf.parts().gasketKits().stream().flatMap(kit -> sense.kit(Gaskets.of(kit))),
                        shelf.parts().headGaskets().stream().flatMap(sense::loose),
                        shelf.parts().baseGaskets().stream().flatMap(sense::loose))
                .flatMap(objections -> objections);
    }

    private Stream<Objection> design(SmallestOffered first) {
        if (goesWithGaskets(first)) {
            return Stream.empty();
        }
        Place line = new Place(
                "piston_designs.csv", List.of("design"), List.of(first.design().code()));
        return sets.stream().flatMap(set -> Objection.against(line, set.words(), deck(set, first, Length.ZERO)));
    }

    private boolean goesWithGaskets(SmallestOffered first) {
        return sets.stream().anyMatch(set -> Check.allPass(deck(set, first, Length.ZERO)));
    }

    private Stream<Objection> kit(Gaskets asItComes) {
        return goesWithADesign(asItComes)
                ? Stream.empty()
                : designs.stream()
                        .flatMap(first -> Objection.against(
                                Place.of("gasket_kits.csv", "gasket_kit", asItComes.kit()),
                                first.words() + skimmed(skim(asItComes, first)),
                                over(asItComes, first)));
    }

    private Stream<Objection> loose(Part gasket) {
        List<Gaskets> with = sets.stream()
                .filter(set -> set.parts().anyMatch(gasket::equals))
                .toList();
        if (with.stream().anyMatch(this::goesWithADesign)) {
            return Stream.empty();
        }
        Place line = Place.of("gaskets.csv", "gasket", gasket);
        return with.stream()
                .filter(set -> set.loose() == 1)
                .flatMap(set -> designs.stream()
                        .flatMap(first -> Objection.against(
                                line,
                                set.kit().number().text() + ", " + first.words() + skimmed(skim(set, first)),
                                over(set, first))));
    }

    private boolean goesWithADesign(Gaskets set) {
        return designs.stream().anyMatch(first -> Check.allPass(over(set, first)));
    }

    /**
     * The whole set over a design. A design that goes with no set is told itself, and its deck is not held against any; nor is the
     * opening of a kit held against a base gasket.
     */
    private List<Comparison> over(Gaskets set, SmallestOffered first) {
        Engine engine = shelf.engine();
        List<Comparison> checks = new ArrayList<>();
        if (set.head().isPresent() || set.base().isEmpty()) {
            checks.addAll(GasketOpening.check(
                    set.shape(), first.largest().largestFinish(), engine.deck().head()));
        }
        if (goesWithGaskets(first)) {
            checks.addAll(deck(set, first, skim(set, first)));
        }
        return checks;
    }

    private List<Comparison> deck(Gaskets set, SmallestOffered first, Length skim) {
        PistonShape piston = first.largest();
        Engine engine = shelf.engine();
        List<Comparison> checks = new ArrayList<>(PistonToHead.check(engine.deck(), set.shape(), piston.crown(), skim));
        checks.add(CompressionRatio.check(piston.finishesOnTarget(), engine.deck(), set.shape(), piston.crown(), skim));
        return checks;
    }

    /** The least skim that brings the piston near enough under a set; more would only bring it too near. */
    private Length skim(Gaskets set, SmallestOffered first) {
        Engine engine = shelf.engine();
        Length greatest = PistonToHead.of(
                        engine.deck(), set.shape(), first.largest().crown(), Length.ZERO)
                .greatest();
        Length tooFar = greatest.minus(engine.deck().pistonToHead().greatest()).max(Length.ZERO);
        return tooFar.min(engine.limits().skimGreatest());
    }

    private static String skimmed(Length skim) {
        return skim.equals(Length.ZERO) ? "" : ", the deck skimmed by " + skim;
    }
}
