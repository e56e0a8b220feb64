package org.borewright.api.lookup.size;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.lookup.part.BoxAnswer;
import org.borewright.api.lookup.part.WithdrawnAnswer;
import org.borewright.api.shown.ShownBlock;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.Size;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * What fits an engine at a size, before any hole is measured: no stock, no price.
 *
 * @param engine its code
 * @param size the label of the size
 * @param oversize over standard
 * @param offered whether there is a set of parts that nothing stands against
 * @param choices each maker's pistons with all that goes with them
 * @param blocks what stands against the size where no piston was made or none is supplied
 * @param rebuildsLeft after it; absent where the wall must be surveyed to know
 * @param boxes that hold parts of this size or of every size
 * @param withdrawn numbers of this size, or of every size, that are not supplied
 * @param unit of all lengths
 * @param revision of the catalogue as to what fits
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record FitAnswer(
        String engine,
        String size,
        ShownLength oversize,
        boolean offered,
        List<ChoiceAnswer> choices,
        List<ShownBlock> blocks,
        @Nullable LeftAnswer rebuildsLeft,
        List<BoxAnswer> boxes,
        List<WithdrawnAnswer> withdrawn,
        String unit,
        String revision) {

    /**
     * The rebuilds left after a size.
     *
     * @param byMetal larger sizes that the metal bears
     * @param byPistons those of them for which pistons exist, with rings, pin and clips that fit them
     */
    public record LeftAnswer(int byMetal, int byPistons) {

        static LeftAnswer of(RebuildsLeft left) {
            return new LeftAnswer(left.byMetal(), left.byPistons());
        }
    }

    static FitAnswer of(Catalogue catalogue, FitTable fits, Size size, LengthUnit unit) {
        String code = fits.shelf().engine().code();
        List<Choice> choices = fits.at(size);
        List<Listing> listings = SizeListings.of(catalogue, code, size);
        return new FitAnswer(
                code,
                size.label(),
                ShownLength.of(size.oversize(), unit),
                choices.stream()
                        .anyMatch(choice ->
                                choice.blocksAsMade(fits.shelf().engine()).isEmpty()),
                choices.stream()
                        .map(choice -> ChoiceAnswer.of(fits.shelf().engine(), choice, unit))
                        .toList(),
                choices.isEmpty()
                        ? fits.neverMade(size).stream()
                                .map(block -> ShownBlock.of(block, unit))
                                .toList()
                        : List.of(),
                fits.leftAfter(size).map(LeftAnswer::of).orElse(null),
                listings.stream().flatMap(BoxAnswer::of).toList(),
                listings.stream()
                        .flatMap(listing -> WithdrawnAnswer.of(listing, catalogue))
                        .toList(),
                unit.symbol(),
                catalogue.revision().fit());
    }
}
