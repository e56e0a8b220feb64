package org.borewright.kit.choice;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.GasketKit;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.CompressionRatio;
import org.borewright.fit.CrownInMouth;
import org.borewright.fit.GasketOpening;
import org.borewright.fit.PistonToHead;
import org.borewright.measure.Length;

/**
 * A gasket kit over pistons of a size, and what was checked of hole, deck and head.
 *
 * @param kit the gasket kit
 * @param checks opening, land, mouth, piston to head, ratio
 */
public record GasketFit(GasketKit kit, List<Check> checks) {

    /** The checks of a gasket kit over the largest piston of a choice, the deck skimmed by so much. */
    public static GasketFit of(Engine engine, GasketKit kit, Piston largest, Length skim) {
        var shape = largest.shape();
        var deck = engine.deck();
        List<Check> checks = Stream.of(
                        GasketOpening.check(kit.shape(), shape.largestFinish(), deck.head()).stream(),
                        CrownInMouth.check(deck.head(), shape.diameter().greatest()).stream(),
                        PistonToHead.check(deck, kit.shape(), shape.crown(), skim).stream(),
                        Stream.of(CompressionRatio.check(
                                shape.finishForCleanUp(), deck, kit.shape(), shape.crown(), skim)))
                .<Check>flatMap(stream -> stream)
                .toList();
        return new GasketFit(kit, checks);
    }

    /** Whether every check passed. */
    public boolean fits() {
        return Check.allPass(checks);
    }

    /** Those that fit; the list itself when all do. */
    public static List<GasketFit> fitting(List<GasketFit> fits) {
        for (GasketFit fit : fits) {
            if (!fit.fits()) {
                return fits.stream().filter(GasketFit::fits).toList();
            }
        }
        return fits;
    }
}
