package org.borewright.fit;

import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The geometric compression ratio of one cylinder: (V_sweep + V_clear)/V_clear, with V_clear = chamber − dome + deck volume at the
 * bore + gasket volume at its opening. Source: geometry. The highest the tolerances allow is judged.
 */
public final class CompressionRatio {

    private CompressionRatio() {}

    /** The ratio for a swept and a clearance volume; without end where no clearance is left and the piston would strike. */
    public static double of(double swept, double clear) {
        return clear > 0 ? (swept + clear) / clear : Double.POSITIVE_INFINITY;
    }

    /** The highest ratio: lowest deck, thinnest gasket, smallest opening, at the finish where it is highest. */
    public static double highest(Limits finishes, DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        Length lowest = PistonToHead.deck(deck, gasket, crown, skim).least();
        double others = others(
                deck, crown, gasket.opening().least(), gasket.headThickness().least());
        return Math.max(at(finishes.least(), deck, lowest, others), at(finishes.greatest(), deck, lowest, others));
    }

    /** The lowest ratio: highest deck, thickest gasket, largest opening, at the finish where it is lowest. */
    public static double lowest(Limits finishes, DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        Length highest = PistonToHead.deck(deck, gasket, crown, skim).greatest();
        double others = others(
                deck, crown, gasket.opening().greatest(), gasket.headThickness().greatest());
        return Math.min(at(finishes.least(), deck, highest, others), at(finishes.greatest(), deck, highest, others));
    }

    /** What is left above the piston but for that in the bore itself. */
    private static double others(DeckShape deck, Crown crown, Length opening, Length thickness) {
        return deck.head().chamberVolume() - crown.domeVolume() + Displacement.ofOne(opening, thickness);
    }

    private static double at(Length finish, DeckShape deck, Length height, double others) {
        return of(Displacement.ofOne(finish, deck.stroke()), others + Displacement.ofOne(finish, height));
    }

    /** The highest ratio against the engine's limit. */
    public static Comparison check(Limits finishes, DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        return Rule.COMPRESSION_RATIO.atMost(
                "",
                Amount.ratioRoundedUp(highest(finishes, deck, gasket, crown, skim)),
                new Amount(deck.head().ratioGreatest(), Quantity.RATIO));
    }
}
