package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Piston;
import org.borewright.fit.Amount;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.CompressionRatio;
import org.borewright.fit.CrownInMouth;
import org.borewright.fit.DeckSkim;
import org.borewright.fit.GasketOpening;
import org.borewright.fit.Outcome;
import org.borewright.fit.PistonToHead;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * A set of gaskets over the pistons of a size: what it makes of deck and ratio, and what was checked of hole, deck and head. The figures
 * are the least and the greatest with any of the pistons.
 *
 * @param gaskets a gasket kit, and what is loose in place of its own
 * @param deckHeight from the crown's edge at top dead centre up to the deck; negative where the crown stands proud of it
 * @param pistonToHead the distance at top dead centre, gasket compressed
 * @param lowestRatio as the tolerances allow, rounded down
 * @param highestRatio as the tolerances allow, rounded up; {@linkplain Amount#isEndless without end} where no room is left above the piston
 * @param checks opening, land, mouth, piston to head, ratio; all skims where there are any and the set bears one at all
 */
public record GasketFit(
        Gaskets gaskets,
        Limits deckHeight,
        Limits pistonToHead,
        Amount lowestRatio,
        Amount highestRatio,
        List<Check> checks) {

    /** What less skim mends, and so what more skim breaks. */
    private static final Set<Rule> OF_THE_SKIM = EnumSet.of(Rule.PISTON_TO_HEAD_LEAST, Rule.COMPRESSION_RATIO);

    /** A set of gaskets over each piston of a choice, all skims together taking so much off the deck. */
    public static GasketFit of(Engine engine, Gaskets gaskets, List<Piston> pistons, Length skims) {
        DeckShape deck = engine.deck();
        GasketShape shape = gaskets.shape();
        return new GasketFit(
                gaskets,
                spread(pistons, piston -> PistonToHead.deck(deck, shape, piston.crown(), skims)),
                spread(pistons, piston -> PistonToHead.of(deck, shape, piston.crown(), skims)),
                Amount.ratioRoundedDown(pistons.stream()
                        .map(Piston::shape)
                        .mapToDouble(piston ->
                                CompressionRatio.lowest(piston.finishesOnTarget(), deck, shape, piston.crown(), skims))
                        .min()
                        .orElseThrow()),
                Amount.ratioRoundedUp(pistons.stream()
                        .map(Piston::shape)
                        .mapToDouble(piston ->
                                CompressionRatio.highest(piston.finishesOnTarget(), deck, shape, piston.crown(), skims))
                        .max()
                        .orElseThrow()),
                EveryPiston.asked(pistons, piston -> over(deck, shape, piston, skims)));
    }

    private static Limits spread(List<Piston> pistons, Function<PistonShape, Limits> figure) {
        return Limits.around(pistons.stream()
                .map(Piston::shape)
                .map(figure)
                .flatMap(limits -> Stream.of(limits.least(), limits.greatest()))
                .toList());
    }

    private static List<Check> over(DeckShape deck, GasketShape gaskets, PistonShape piston, Length skims) {
        return Stream.of(
                        GasketOpening.check(gaskets, piston.largestFinish(), deck.head()).stream(),
                        CrownInMouth.check(deck.head(), piston.diameter().greatest()).stream(),
                        PistonToHead.check(deck, gaskets, piston.crown(), skims).stream(),
                        Stream.of(CompressionRatio.check(
                                piston.finishesOnTarget(), deck, gaskets, piston.crown(), skims)))
                .<Check>flatMap(stream -> stream)
                .toList();
    }

    /** The same with the skims themselves judged: by what the engine bears, or this set. */
    public static GasketFit skimmed(Engine engine, Gaskets gaskets, List<Piston> pistons, Length skims) {
        GasketFit fit = of(engine, gaskets, pistons, skims);
        Optional<Length> most = fit.fits()
                ? Optional.of(engine.limits().skimGreatest())
                : fit.mostSkim(engine, pistons, skims.min(engine.limits().skimGreatest()));
        List<Check> checks = new ArrayList<>(fit.checks);
        most.ifPresent(bears -> checks.add(DeckSkim.check(gaskets.words(), skims, bears)));
        return new GasketFit(
                gaskets, fit.deckHeight, fit.pistonToHead, fit.lowestRatio, fit.highestRatio, List.copyOf(checks));
    }

    /** The most that all skims may take, to the nanometre; empty where the set does not fit however little they do. */
    private Optional<Length> mostSkim(Engine engine, List<Piston> pistons, Length upTo) {
        if (!OF_THE_SKIM.containsAll(
                Check.holding(checks).stream().map(Check::rule).toList())) {
            return Optional.empty();
        }
        long fits = 0;
        long most = upTo.nanometres();
        // A skim only brings the piston nearer and the ratio up: what bears one bears any that is less.
        while (fits < most) {
            long middle = most - (most - fits) / 2;
            if (bears(engine.deck(), gaskets.shape(), pistons, Length.ofNanometres(middle))) {
                fits = middle;
            } else {
                most = middle - 1;
            }
        }
        Length found = Length.ofNanometres(fits);
        return of(engine, gaskets, pistons, found).fits() ? Optional.of(found) : Optional.empty();
    }

    private static boolean bears(DeckShape deck, GasketShape gaskets, List<Piston> pistons, Length skims) {
        return pistons.stream()
                .map(Piston::shape)
                .allMatch(piston -> Check.allPass(Stream.concat(
                                PistonToHead.check(deck, gaskets, piston.crown(), skims).stream(),
                                Stream.of(CompressionRatio.check(
                                        piston.finishesOnTarget(), deck, gaskets, piston.crown(), skims)))
                        .filter(check -> OF_THE_SKIM.contains(check.rule()))
                        .toList()));
    }

    /** All skims where they take too much: it would fit a deck that is skimmed less. */
    private Stream<Comparison> tooFar() {
        return checks.stream()
                .filter(check -> check.rule() == Rule.DECK_SKIM && check.outcome() == Outcome.OUT)
                .map(Comparison.class::cast);
    }

    /** Whether every check passed. */
    public boolean fits() {
        return Check.allPass(checks);
    }

    /** Those that fit, of several that are ranked and so stand first. */
    public static List<GasketFit> fitting(List<GasketFit> ranked) {
        int fitting = 0;
        while (fitting < ranked.size() && ranked.get(fitting).fits()) {
            fitting++;
        }
        return ranked.subList(0, fitting);
    }

    /**
     * Why none of several fits: what stands against the kits as they come, the most skim that any set bears, and the engine where a thicker
     * gasket would seem to help and the skims are beyond what it bears with any.
     *
     * @param before what earlier skims took off together, for nothing puts that back
     */
    static Block block(Engine engine, List<GasketFit> none, Length before) {
        List<Check> told = new ArrayList<>();
        none.stream().filter(fit -> fit.gaskets.loose() == 0).forEach(fit -> told.addAll(Check.holding(fit.checks)));
        none.stream()
                .filter(fit -> fit.gaskets.loose() > 0)
                .flatMap(GasketFit::tooFar)
                .max(Comparator.comparingLong(Comparison::margin))
                .ifPresent(told::add);
        List<Comparison> tooFar = none.stream().flatMap(GasketFit::tooFar).toList();
        Block.Reason reason = reason(tooFar, before);
        if (told.stream().map(Check::rule).anyMatch(OF_THE_SKIM::contains)) {
            ofEngine(engine, tooFar, reason == Block.Reason.SKIMMED_BEFORE ? Optional.of(before) : Optional.empty())
                    .ifPresent(told::add);
        }
        return Block.of(reason, told);
    }

    /** The engine's own limit of all skims, or of those that nothing puts back, where they are beyond it. */
    private static Optional<Comparison> ofEngine(Engine engine, List<Comparison> tooFar, Optional<Length> before) {
        Length most = engine.limits().skimGreatest();
        return tooFar.stream()
                .findFirst()
                .map(skims -> before.orElse(Length.ofNanometres(skims.value().units())))
                .map(skims -> DeckSkim.ofEngine(skims, most))
                .filter(check -> check.outcome() == Outcome.OUT);
    }

    private static Block.Reason reason(List<Comparison> tooFar, Length before) {
        if (tooFar.isEmpty()) {
            return Block.Reason.GASKET;
        }
        boolean bearsWhatWasSkimmed =
                tooFar.stream().anyMatch(skims -> skims.limit().units() >= before.nanometres());
        return bearsWhatWasSkimmed ? Block.Reason.SKIM : Block.Reason.SKIMMED_BEFORE;
    }
}
