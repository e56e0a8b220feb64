package org.borewright.kit.rings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.catalog.PistonDesign;
import org.borewright.fit.Check;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.choice.Outfit;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;

/**
 * Tries rings on pistons that stay where they are.
 *
 * @param fits what fits the engine
 * @param kits finds kits
 * @param request what is asked
 * @param holes as surveyed
 */
record RingsTrial(FitTable fits, KitFinder kits, MatchRequest request, List<Hole> holes) {

    /** With the set that suits the pistons of a choice best. */
    RingsOnly of(Choice choice) {
        Conditions conditions = new Conditions(fits, request, Optional.of(choice.design()), Optional.of(choice));
        List<GasketFit> gaskets = fits.gaskets(choice, request.deck().lowered());
        return choice.outfits().stream()
                .filter(outfit -> request.rings().mayBe(outfit.rings()))
                .map(outfit -> of(choice, outfit, conditions, gaskets))
                .min(RingsOnly.PREFERENCE)
                .orElseGet(() -> nothing(conditions));
    }

    /** With no set at all, for want of pistons that anybody knows. */
    RingsOnly without(Optional<PistonDesign> design) {
        return nothing(new Conditions(fits, request, design, Optional.empty()));
    }

    private RingsOnly nothing(Conditions conditions) {
        return new RingsOnly(
                conditions.of(holes, Optional.empty()),
                deck(),
                Optional.empty(),
                new Job(Optional.empty(), new ShopWork(List.of())));
    }

    private RingsOnly of(Choice choice, Outfit outfit, Conditions conditions, List<GasketFit> gaskets) {
        List<RingsInHole> asked = conditions.of(holes, Optional.of(outfit.rings()));
        List<HoleAtSize> stay = stay(choice, asked);
        Length skim = request.deck().skim();
        List<GasketFit> fitting = GasketFit.fitting(gaskets);
        List<Check> deck = new ArrayList<>(deck());
        if (fitting.isEmpty()) {
            gaskets.stream().findFirst().ifPresent(preferred -> deck.addAll(Check.holding(preferred.checks())));
        }
        return new RingsOnly(
                asked,
                deck,
                Optional.of(outfit.rings()),
                new Job(kits.ofRings(outfit, stay, fitting, skim), ShopWork.of(fits.shelf(), stay, skim)));
    }

    private List<Check> deck() {
        return request.deck().checks(fits.shelf().engine().limits());
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
