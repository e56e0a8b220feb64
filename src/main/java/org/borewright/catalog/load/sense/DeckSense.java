package org.borewright.catalog.load.sense;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.GasketKit;
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
 * Gasket kits over crowns, at the {@linkplain SmallestOffered smallest size} of each design: a larger hole only asks for a larger
 * opening and raises the ratio, so it blocks its own size in a match and refuses nothing here.
 *
 * <p>A design is refused where it comes too near to the head, too far from it, or to too high a ratio with every kit, the deck as made:
 * a maker cuts his pistons for that. A kit is refused where it goes with no design at all, at whatever skim the engine allows: a thick
 * gasket is made for a skimmed deck, and one too small for a large size serves the smaller ones.
 */
final class DeckSense {

    private DeckSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        List<SmallestOffered> designs = SmallestOffered.of(shelf);
        return Stream.concat(
                designs.stream().flatMap(first -> design(shelf, first)),
                shelf.parts().gasketKits().stream().flatMap(kit -> kit(shelf, kit, designs)));
    }

    private static Stream<Objection> design(Shelf shelf, SmallestOffered first) {
        if (goesWithAKit(shelf, first)) {
            return Stream.empty();
        }
        Place line = new Place(
                "piston_designs.csv", List.of("design"), List.of(first.design().code()));
        return shelf.parts().gasketKits().stream()
                .flatMap(kit ->
                        Objection.against(line, kit.number().text(), deck(shelf.engine(), kit, first, Length.ZERO)));
    }

    private static boolean goesWithAKit(Shelf shelf, SmallestOffered first) {
        return shelf.parts().gasketKits().stream()
                .anyMatch(kit -> Check.allPass(deck(shelf.engine(), kit, first, Length.ZERO)));
    }

    private static Stream<Objection> kit(Shelf shelf, GasketKit kit, List<SmallestOffered> designs) {
        if (designs.stream().anyMatch(first -> Check.allPass(over(shelf, kit, first)))) {
            return Stream.empty();
        }
        Place line = Place.of("gasket_kits.csv", "gasket_kit", kit);
        return designs.stream()
                .flatMap(first -> Objection.against(
                        line, first.words() + skimmed(skim(shelf.engine(), kit, first)), over(shelf, kit, first)));
    }

    /** The whole kit over a design; a design that goes with no kit is told itself, and its deck is not held against a kit. */
    private static List<Comparison> over(Shelf shelf, GasketKit kit, SmallestOffered first) {
        Engine engine = shelf.engine();
        List<Comparison> checks = new ArrayList<>(GasketOpening.check(
                kit.shape(), first.largest().largestFinish(), engine.deck().head()));
        if (goesWithAKit(shelf, first)) {
            checks.addAll(deck(engine, kit, first, skim(engine, kit, first)));
        }
        return checks;
    }

    private static List<Comparison> deck(Engine engine, GasketKit kit, SmallestOffered first, Length skim) {
        PistonShape piston = first.largest();
        List<Comparison> checks = new ArrayList<>(PistonToHead.check(engine.deck(), kit.shape(), piston.crown(), skim));
        checks.add(CompressionRatio.check(piston.finishForCleanUp(), engine.deck(), kit.shape(), piston.crown(), skim));
        return checks;
    }

    /** The least skim that brings the piston near enough under a kit; more would only bring it too near. */
    private static Length skim(Engine engine, GasketKit kit, SmallestOffered first) {
        Length greatest = PistonToHead.of(
                        engine.deck(), kit.shape(), first.largest().crown(), Length.ZERO)
                .greatest();
        Length tooFar = greatest.minus(engine.deck().pistonToHead().greatest()).max(Length.ZERO);
        Length most = engine.limits().skimGreatest();
        return tooFar.min(most);
    }

    private static String skimmed(Length skim) {
        return skim.equals(Length.ZERO) ? "" : ", the deck skimmed by " + skim;
    }
}
