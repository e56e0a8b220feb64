package org.borewright.kit.choice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.Amount;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The order in which sets of gaskets are preferred where the shelf does not decide: what fits before what does not, a kit as it comes
 * before one loose gasket and that before two, then the highest ratio nearest to that of the engine as made, then the numbers (common
 * practice: the engine is to run as its maker meant it to).
 *
 * @param ratioAsMade the highest ratio at standard with the first pistons and the first gasket kit of the engine, the deck as made; empty
 *     where there are none such, or they leave no room, and then the distance from piston to head decides that lies nearest the middle
 * @param pistonToHead the distance the engine allows
 */
public record GasketRanking(Optional<Amount> ratioAsMade, Limits pistonToHead) {

    /** The ranking for an engine. */
    static GasketRanking of(Shelf shelf) {
        return new GasketRanking(
                shelf.parts().gasketKits().stream()
                        .findFirst()
                        .filter(kit -> !firstPistons(shelf).isEmpty())
                        .map(kit -> GasketFit.of(shelf.engine(), Gaskets.of(kit), firstPistons(shelf), Length.ZERO)
                                .highestRatio())
                        .filter(ratio -> !ratio.isEndless()),
                shelf.engine().deck().pistonToHead());
    }

    /** The pistons at standard of the first design that has any, whatever became of their numbers. */
    private static List<Piston> firstPistons(Shelf shelf) {
        Parts parts = shelf.parts();
        List<String> standard = shelf.sizes().stream()
                .filter(size -> size.oversize().equals(Length.ZERO))
                .map(Size::label)
                .toList();
        return parts.designs().stream()
                .map(design -> parts.pistons().stream()
                        .filter(piston -> piston.design().equals(design.code()) && standard.contains(piston.size()))
                        .toList())
                .filter(pistons -> !pistons.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    /** The same fits, the preferred first. */
    List<GasketFit> ranked(List<GasketFit> fits) {
        return fits.stream()
                .sorted(Comparator.comparing((GasketFit fit) -> !fit.fits())
                        .thenComparing(fit -> fit.gaskets().loose())
                        .thenComparing(this::away)
                        .thenComparing(fit -> fit.gaskets().words()))
                .toList();
    }

    /** How far a fit is from the engine as made: in millionths of the ratio, or in nanometres from the middle, counted twice. */
    private long away(GasketFit fit) {
        return ratioAsMade
                .map(made -> Math.abs(fit.highestRatio().units() - made.units()))
                .orElseGet(() -> Math.abs(middle(fit.pistonToHead()) - middle(pistonToHead)));
    }

    private static long middle(Limits limits) {
        return limits.least().plus(limits.greatest()).nanometres();
    }
}
