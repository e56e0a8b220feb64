package org.borewright.api.lookup.part;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.util.List;
import org.borewright.api.lookup.part.BoxAnswer.ContentAnswer;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Revision;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.shape.MassRange;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * What is known of one number.
 *
 * @param number which
 * @param what it is: a kind of part, or how a box is packed
 * @param design the piston design it belongs to; absent for what belongs to none
 * @param hand which hole it goes into; pistons only
 * @param grade A, B or C; pistons of an engine with grades only
 * @param mass in grams; pistons only
 * @param dimensions of a part, at 20 °C
 * @param contents of a box
 * @param uses the engines it goes into, and at which sizes
 * @param soldIn the boxes that hold it
 * @param withdrawn why it is not supplied; absent where it is
 * @param offer price and stock; absent where it is not sold by itself
 * @param unit of all lengths
 * @param revision of the catalogue
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PartAnswer(
        String number,
        String what,
        @Nullable String design,
        @Nullable String hand,
        @Nullable String grade,
        @Nullable MassAnswer mass,
        List<DimensionAnswer> dimensions,
        List<ContentAnswer> contents,
        List<UseAnswer> uses,
        List<String> soldIn,
        @Nullable WithdrawnAnswer withdrawn,
        @Nullable OfferAnswer offer,
        String unit,
        Revision revision) {

    /**
     * Where a number is used.
     *
     * @param engine the code of the engine
     * @param size the label of the size; absent where it serves every size
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record UseAnswer(String engine, @Nullable String size) {

        /** The uses of a number. */
        public static List<UseAnswer> of(Listing listing) {
            return listing.uses().stream()
                    .map(use -> new UseAnswer(use.engine(), use.size().orElse(null)))
                    .toList();
        }
    }

    /**
     * A mass in grams.
     *
     * @param least of the tolerance
     * @param greatest of the tolerance
     */
    public record MassAnswer(BigDecimal least, BigDecimal greatest) {

        static MassAnswer of(MassRange mass) {
            return new MassAnswer(
                    BigDecimal.valueOf(mass.leastMilligrams(), 3), BigDecimal.valueOf(mass.greatestMilligrams(), 3));
        }
    }

    static PartAnswer of(Catalogue catalogue, Listing listing, LengthUnit unit) {
        Piston piston = listing.part().orElse(null) instanceof Piston found ? found : null;
        return new PartAnswer(
                listing.number().text(),
                what(listing),
                listing.part().flatMap(Dimensions::design).orElse(null),
                piston == null ? null : piston.hand().label(),
                piston == null ? null : piston.grade().orElse(null),
                piston == null ? null : MassAnswer.of(piston.shape().mass()),
                listing.part().map(part -> Dimensions.of(part, unit)).orElse(List.of()),
                listing.box().map(BoxAnswer::contents).orElse(List.of()),
                UseAnswer.of(listing),
                listing.soldIn().stream().map(box -> box.text()).toList(),
                WithdrawnAnswer.of(listing, catalogue).findFirst().orElse(null),
                catalogue.offers().of(listing.number()).map(OfferAnswer::of).orElse(null),
                unit.symbol(),
                catalogue.revision());
    }

    /** What a number is. */
    public static String what(Listing listing) {
        return listing.part()
                .map(part -> part.kind().label())
                .or(() -> listing.box().map(box -> box.kind().label()))
                .orElseGet(() -> isNeverMade(listing) ? "number that was never made" : "number no longer listed");
    }

    private static boolean isNeverMade(Listing listing) {
        return listing.withdrawal()
                .filter(withdrawal -> withdrawal.state() == Withdrawal.State.NEVER_MADE)
                .isPresent();
    }
}
