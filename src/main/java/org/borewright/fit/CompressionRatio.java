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
        return Math.max(
                highest(finishes.least(), deck, gasket, crown, skim),
                highest(finishes.greatest(), deck, gasket, crown, skim));
    }

    private static double highest(Length finish, DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        Limits height = PistonToHead.deck(deck, gasket, crown, skim);
        double clear = deck.head().chamberVolume()
                - crown.domeVolume()
                + Displacement.ofOne(finish, height.least())
                + Displacement.ofOne(
                        gasket.opening().least(), gasket.headThickness().least());
        return of(Displacement.ofOne(finish, deck.stroke()), clear);
    }

    /** The lowest ratio: highest deck, thickest gasket, largest opening, at the finish where it is lowest. */
    public static double lowest(Limits finishes, DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        return Math.min(
                lowest(finishes.least(), deck, gasket, crown, skim),
                lowest(finishes.greatest(), deck, gasket, crown, skim));
    }

    private static double lowest(Length finish, DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        Limits height = PistonToHead.deck(deck, gasket, crown, skim);
        double clear = deck.head().chamberVolume()
                - crown.domeVolume()
                + Displacement.ofOne(finish, height.greatest())
                + Displacement.ofOne(
                        gasket.opening().greatest(), gasket.headThickness().greatest());
        return of(Displacement.ofOne(finish, deck.stroke()), clear);
    }

    /** The highest ratio against the engine's limit. */
    public static Comparison check(Limits finishes, DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        return Rule.COMPRESSION_RATIO.atMost(
                "",
                Amount.ratioRoundedUp(highest(finishes, deck, gasket, crown, skim)),
                new Amount(deck.head().ratioGreatest(), Quantity.RATIO));
    }
}
