package org.borewright.kit.rings;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.Rule;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.survey.BoreShape;

/**
 * New rings on the pistons that are in the engine: the way to restore it that takes no metal out, and so the first that is tried. What
 * nobody told is not known, and then it is possible at the best.
 *
 * @param holes the conditions of every hole, in the engine's order
 * @param rings the ring set they were asked for; empty where the present pistons are not known, or none is supplied for them
 * @param job rings, gaskets and bolts with the work; none without rings, no kit where no gasket kit fits
 */
public record RingsOnly(List<RingsInHole> holes, Optional<RingSet> rings, Job job) {

    /** The more certain first, then the better kit; the gasket kits are the same for all, so that all have one or none. */
    private static final Comparator<RingsOnly> PREFERENCE = Comparator.comparing(RingsOnly::certainty)
            .thenComparing((one, other) -> one.job.kit().isEmpty()
                    ? 0
                    : KitFinder.PREFERENCE.compare(
                            one.job.kit().get(), other.job.kit().orElseThrow()));

    /** Copies the holes. */
    public RingsOnly {
        holes = List.copyOf(holes);
    }

    /**
     * Asks every condition of every hole.
     *
     * @param holes as surveyed
     * @param shapes of the holes; empty for one without a grid
     */
    public static RingsOnly of(
            FitTable fits, KitFinder kits, MatchRequest request, List<Hole> holes, List<Optional<BoreShape>> shapes) {
        Optional<PistonDesign> design = designOf(request);
        Optional<Choice> choice = design.flatMap(known -> choice(fits, request, known));
        Conditions conditions = new Conditions(fits, request, design, choice);
        if (choice.isEmpty() || choice.get().outfits().isEmpty()) {
            return new RingsOnly(
                    conditions.of(holes, shapes, Optional.empty()),
                    Optional.empty(),
                    new Job(Optional.empty(), new ShopWork(List.of())));
        }
        List<GasketFit> gaskets =
                GasketFit.fitting(fits.gaskets(choice.get(), request.deck().lowered()));
        return choice.get().outfits().stream()
                .map(outfit -> {
                    List<RingsInHole> asked = conditions.of(holes, shapes, Optional.of(outfit.rings()));
                    List<HoleAtSize> stay = stay(choice.get(), asked);
                    return new RingsOnly(
                            asked,
                            Optional.of(outfit.rings()),
                            new Job(
                                    kits.ofRings(
                                            outfit,
                                            stay,
                                            gaskets,
                                            request.deck().skim()),
                                    ShopWork.of(
                                            fits.shelf(), stay, request.deck().skim())));
                })
                .min(PREFERENCE)
                .orElseThrow();
    }

    /** Certain when it is in every hole. */
    public Certainty certainty() {
        Certainty least = Certainty.CERTAIN;
        for (RingsInHole hole : holes) {
            least = least.and(hole.certainty());
        }
        return least;
    }

    /** What rules it out in some hole, else what is not met or not known, each once, in the order it is asked. */
    public List<String> open() {
        boolean ruledOut = certainty() == Certainty.NO;
        return holes.stream()
                .flatMap(hole -> (ruledOut ? hole.ruledOut() : Check.holding(hole.checks())).stream())
                .map(Check::rule)
                .distinct()
                .sorted()
                .map(Rule::title)
                .toList();
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

    private static Optional<Choice> choice(FitTable fits, MatchRequest request, PistonDesign design) {
        return request.present()
                .reliable()
                .flatMap(size -> fits.at(size).stream()
                        .filter(choice -> choice.design().equals(design))
                        .findFirst());
    }

    /** The holes as they are, with the pistons that are in them. */
    private static List<HoleAtSize> stay(Choice choice, List<RingsInHole> holes) {
        return IntStream.range(0, holes.size())
                .mapToObj(i -> new HoleAtSize(
                        holes.get(i).cylinder(),
                        Work.AS_IS,
                        holes.get(i).certainty(),
                        choice.pistons().get(i).get(0),
                        Optional.of(Length.ZERO)))
                .toList();
    }
}
