package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.GasketKit;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.CompressionRatio;
import org.borewright.fit.CrownInMouth;
import org.borewright.fit.DeckSkim;
import org.borewright.fit.GasketOpening;
import org.borewright.fit.Outcome;
import org.borewright.fit.PistonToHead;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;

/**
 * A gasket kit over pistons of a size, and what was checked of hole, deck and head.
 *
 * @param kit the gasket kit
 * @param checks opening, land, mouth, piston to head, ratio; the skim where there is one and the kit bears one at all
 */
public record GasketFit(GasketKit kit, List<Check> checks) {

    /** The checks of a gasket kit over each piston of a choice, the deck skimmed by so much. */
    public static GasketFit of(Engine engine, GasketKit kit, List<Piston> pistons, Length skim) {
        return new GasketFit(kit, EveryPiston.asked(pistons, piston -> over(engine, kit, piston, skim)));
    }

    private static List<Check> over(Engine engine, GasketKit kit, PistonShape piston, Length skim) {
        var deck = engine.deck();
        return Stream.of(
                        GasketOpening.check(kit.shape(), piston.largestFinish(), deck.head()).stream(),
                        CrownInMouth.check(deck.head(), piston.diameter().greatest()).stream(),
                        PistonToHead.check(deck, kit.shape(), piston.crown(), skim).stream(),
                        Stream.of(CompressionRatio.check(
                                piston.finishForCleanUp(), deck, kit.shape(), piston.crown(), skim)))
                .<Check>flatMap(stream -> stream)
                .toList();
    }

    /** The checks of a gasket kit over each piston of a choice, and of the skim itself: what the engine bears, or this kit. */
    public static GasketFit skimmed(Engine engine, GasketKit kit, List<Piston> pistons, Length skim) {
        GasketFit fit = of(engine, kit, pistons, skim);
        Optional<Length> most = fit.fits()
                ? Optional.of(engine.limits().skimGreatest())
                : mostSkim(engine, kit, pistons, skim.min(engine.limits().skimGreatest()));
        List<Check> checks = new ArrayList<>(fit.checks);
        most.ifPresent(bears -> checks.add(DeckSkim.check(kit.number().text(), skim, bears)));
        return new GasketFit(kit, List.copyOf(checks));
    }

    /** The most that may be skimmed, to the nanometre; empty where the kit does not fit however little is. */
    private static Optional<Length> mostSkim(Engine engine, GasketKit kit, List<Piston> pistons, Length upTo) {
        long fits = 0;
        long most = upTo.nanometres();
        // A skim only brings the piston nearer and the ratio up: what bears one bears any that is less.
        while (fits < most) {
            long middle = most - (most - fits) / 2;
            if (of(engine, kit, pistons, Length.ofNanometres(middle)).bearsSkim()) {
                fits = middle;
            } else {
                most = middle - 1;
            }
        }
        Length found = Length.ofNanometres(fits);
        return of(engine, kit, pistons, found).fits() ? Optional.of(found) : Optional.empty();
    }

    private boolean bearsSkim() {
        return checks.stream()
                .filter(check -> check.rule() == Rule.PISTON_TO_HEAD_LEAST || check.rule() == Rule.COMPRESSION_RATIO)
                .noneMatch(check -> check.outcome().holds());
    }

    /** Whether it would fit a deck that is skimmed less. */
    boolean isSkimmedTooFar() {
        return checks.stream().anyMatch(check -> check.rule() == Rule.DECK_SKIM && check.outcome() == Outcome.OUT);
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
