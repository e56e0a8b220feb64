package org.borewright.kit.rings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.Rule;
import org.borewright.fit.Unchecked;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.Block;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.MatchRequest;

/**
 * New rings on the pistons that are in the engine: the way to restore it that takes no metal out, and so the first that is tried. What
 * nobody told is not known, and then it is possible at the best.
 *
 * @param holes the conditions of every hole, in the engine's order
 * @param deck its flatness or the skim that is to make it flat, and what keeps every set of gaskets from fitting
 * @param rings the ring set they were asked for; empty where the present pistons are not known, or none is supplied for them
 * @param job rings, clips, gaskets and bolts with the work; none without rings, no kit where no gasket kit fits
 */
public record RingsOnly(List<RingsInHole> holes, List<Check> deck, Optional<RingSet> rings, Job job) {

    /** The more certain first, then what there is a kit for, then the better kit. */
    static final Comparator<RingsOnly> PREFERENCE = Comparator.comparing(RingsOnly::certainty)
            .thenComparing(rings -> rings.job.kit().isEmpty())
            .thenComparing((one, other) -> one.job.kit().isEmpty()
                    ? 0
                    : KitFinder.PREFERENCE.compare(
                            one.job.kit().get(), other.job.kit().orElseThrow()));

    /** Copies the lists. */
    public RingsOnly {
        holes = List.copyOf(holes);
        deck = List.copyOf(deck);
    }

    /**
     * Asks every condition of every hole.
     *
     * @param holes as surveyed
     */
    public static RingsOnly of(FitTable fits, KitFinder kits, MatchRequest request, List<Hole> holes) {
        RingsTrial trial = new RingsTrial(fits, kits, request, holes);
        return present(fits, request).map(trial::of).orElseGet(() -> trial.without(designOf(request)));
    }

    /**
     * What it would come to where nobody knows yet whose pistons are in the engine: with those of the present size for which rings are best
     * to be had; empty where the present size is not known, no rings are supplied for it, or they are ruled out.
     */
    public static Optional<RingsOnly> supposing(FitTable fits, KitFinder kits, MatchRequest request, List<Hole> holes) {
        RingsTrial trial = new RingsTrial(fits, kits, request, holes);
        return choices(fits, request)
                .map(trial::of)
                .filter(rings -> rings.rings().isPresent() && rings.certainty() != Certainty.NO)
                .min(PREFERENCE);
    }

    /** Certain when it is in every hole, and nothing is open of the deck, which new pistons would not put right either. */
    public Certainty certainty() {
        Certainty least = Check.allPass(deck) ? Certainty.CERTAIN : Certainty.POSSIBLE;
        for (RingsInHole hole : holes) {
            least = least.and(hole.certainty());
        }
        return least;
    }

    /** What rules it out in some hole, else what is not met or not known, each once, in the order it is asked. */
    public List<String> open() {
        boolean ruledOut = certainty() == Certainty.NO;
        Stream<Check> ofDeck = ruledOut ? Stream.of() : Check.holding(deck).stream();
        Stream<Check> ofHoles =
                holes.stream().flatMap(hole -> (ruledOut ? hole.ruledOut() : Check.holding(hole.checks())).stream());
        return Stream.concat(ofHoles, ofDeck)
                .map(Check::rule)
                .distinct()
                .sorted()
                .map(Rule::title)
                .toList();
    }

    /** The parts that cannot be had for it, in words: a ring set, a set of gaskets, or what its kit is short of; none where it is ruled out. */
    public List<String> lacking() {
        if (certainty() == Certainty.NO) {
            return List.of();
        }
        if (rings.isEmpty()) {
            return holes.stream()
                    .flatMap(hole -> hole.checks().stream())
                    .filter(check ->
                            check.equals(Conditions.NO_RING_SUPPLIED) || check.equals(Conditions.NO_RING_AT_ALL))
                    .map(Unchecked.class::cast)
                    .map(Unchecked::reason)
                    .distinct()
                    .toList();
        }
        return job.kit()
                .map(kit -> kit.missing().stream().map(Kit.Missing::says).toList())
                .orElse(List.of(Block.Reason.GASKET.sentence()));
    }

    /** What is not told of any hole where nothing was told: the same in every answer. */
    public static List<Check> untold() {
        return Conditions.UNTOLD;
    }

    /** The design of the present pistons, where any is known; those that differ from the first are found out by their check. */
    private static Optional<PistonDesign> designOf(MatchRequest request) {
        for (AsFound found : request.asFound()) {
            if (found.piston().design().isPresent()) {
                return found.piston().design();
            }
        }
        return Optional.empty();
    }

    /** The present pistons at the present size; empty where either is not known. */
    static Optional<Choice> present(FitTable fits, MatchRequest request) {
        return designOf(request)
                .flatMap(known -> choices(fits, request)
                        .filter(choice -> choice.design().equals(known))
                        .findFirst());
    }

    private static Stream<Choice> choices(FitTable fits, MatchRequest request) {
        return request.present().reliable().stream().flatMap(size -> fits.at(size).stream());
    }
}
