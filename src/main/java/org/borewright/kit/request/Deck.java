package org.borewright.kit.request;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.ServiceLimits;
import org.borewright.fit.Check;
import org.borewright.fit.DeckFlatness;
import org.borewright.fit.DeckSkim;
import org.borewright.fit.Outcome;
import org.borewright.measure.Length;

/**
 * The deck as it was found, and what is to be skimmed off it. Where there are several barrels, the worst of them.
 *
 * @param flatness how far it is out of flat; empty when not measured
 * @param skim what is to be skimmed off; zero for none
 * @param skimmedBefore what earlier skims took off together; empty when not known
 */
public record Deck(Optional<DeckFlatness> flatness, Length skim, Optional<Length> skimmedBefore) {

    /** What a later look at it tells, and where that tells nothing what an earlier one told: one order skims it once. */
    public Deck after(Deck earlier) {
        return new Deck(
                flatness.or(earlier::flatness),
                isToBeSkimmed() ? skim : earlier.skim,
                skimmedBefore.or(earlier::skimmedBefore));
    }

    /** Whether anything is to be skimmed off. */
    public boolean isToBeSkimmed() {
        return skim.isMoreThan(Length.ZERO);
    }

    /** How much lower it will stand than it was made; earlier skims that are not known count as none. */
    public Length lowered() {
        return skimmedBefore.orElse(Length.ZERO).plus(skim);
    }

    /** Whether it is proven flat as it is. */
    public boolean isFlat(ServiceLimits limits) {
        return outcome(limits).filter(outcome -> outcome == Outcome.IN).isPresent();
    }

    /** The least skim that makes it flat; empty where it is proven flat, or was not measured. */
    public Optional<Length> leastSkim(ServiceLimits limits) {
        return isFlat(limits) ? Optional.empty() : flatness.map(DeckFlatness::leastSkim);
    }

    /** The same deck skimmed as it must be: by the least that makes it flat, where it is not proven flat and less is asked. */
    public Deck skimmedFlat(ServiceLimits limits) {
        return leastSkim(limits)
                .map(least -> new Deck(flatness, skim.max(least), skimmedBefore))
                .orElse(this);
    }

    private Optional<Outcome> outcome(ServiceLimits limits) {
        return flatness.map(found -> found.check(limits.deckFlatness()).outcome());
    }

    /**
     * Its flatness; where that is not proven, whether the skim asked for makes it flat, or whether it still bears the least skim that
     * would. Once it is to be skimmed, how flat it was stands in nobody's way.
     */
    public List<Check> checks(ServiceLimits limits) {
        if (flatness.isEmpty()) {
            return List.of(DeckFlatness.NOT_MEASURED);
        }
        DeckFlatness found = flatness.get();
        if (isFlat(limits)) {
            return List.of(found.check(limits.deckFlatness()));
        }
        return isToBeSkimmed()
                ? List.of(found.checkSkim(skim))
                : List.of(
                        found.check(limits.deckFlatness()),
                        DeckSkim.check("to make it flat", lowered().plus(found.leastSkim()), limits.skimGreatest()));
    }
}
