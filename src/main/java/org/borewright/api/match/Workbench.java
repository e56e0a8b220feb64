package org.borewright.api.match;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.borewright.api.match.answer.Stencils;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PartNumber;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.LengthUnit;

/**
 * What is laid out for one engine, at one revision and with one set of prices and stock, when somebody first asks for it.
 *
 * @param fits what fits each size
 * @param offers the prices and stock
 * @param kits finds and remembers kits
 * @param json cuts the stencils
 * @param cut what answers in a unit repeat word for word, once somebody asked in that unit: most shops ask in one only
 */
public record Workbench(
        FitTable fits, Offers offers, KitFinder kits, ObjectMapper json, Map<LengthUnit, Stencils> cut) {

    static Workbench lay(FitTable fits, Offers offers, ObjectMapper json) {
        return new Workbench(fits, offers, new KitFinder(fits.shelf(), offers), json, new ConcurrentHashMap<>());
    }

    /** The same for somebody who has these numbers already. */
    public Workbench having(Set<PartNumber> numbers) {
        FitTable theirs = fits.having(numbers);
        return isFor(theirs, offers) ? this : lay(theirs, offers, json);
    }

    /** The same for an owner who brings these pistons. */
    public Workbench withOwn(Choice pistons) {
        return new Workbench(fits.with(pistons), offers, kits.withOwn(pistons), json, new ConcurrentHashMap<>());
    }

    /** The same for somebody for whom so many more of some numbers lie on the shelf than for all others. */
    public Workbench withMore(Map<PartNumber, Integer> onHand) {
        Offers theirs = offers.withMore(onHand);
        return new Workbench(fits, theirs, new KitFinder(fits.shelf(), theirs), json, new ConcurrentHashMap<>());
    }

    /** Whether it is laid out for just these; another table or other offers with the same content are another revision's. */
    @SuppressWarnings("ReferenceEquality") // comparing whole catalogues by content would cost more than laying out anew
    boolean isFor(FitTable otherFits, Offers otherOffers) {
        return fits == otherFits && offers == otherOffers;
    }

    /** What answers in this unit repeat. */
    public Stencils in(LengthUnit unit) {
        return cut.computeIfAbsent(unit, first -> new Stencils(json, fits, first));
    }
}
