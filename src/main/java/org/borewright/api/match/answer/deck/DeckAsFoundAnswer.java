package org.borewright.api.match.answer.deck;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Optional;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.ServiceLimits;
import org.borewright.fit.DeckFlatness;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Gauge.Source;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The deck as it was found, and what is skimmed off it.
 *
 * @param outOfFlat the greatest that was found; absent when not measured
 * @param uncertainty expanded uncertainty of that
 * @param source where that figure comes from
 * @param leastSkim the least skim that makes it flat; absent where it is proven flat, or was not measured
 * @param skim what is to be skimmed off
 * @param skimmedBefore what earlier skims took off together; absent when not stated
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DeckAsFoundAnswer(
        @Nullable ShownLength outOfFlat,
        @Nullable ShownLength uncertainty,
        @Nullable String source,
        @Nullable ShownLength leastSkim,
        ShownLength skim,
        @Nullable ShownLength skimmedBefore) {

    /** What is said of a deck. */
    public static DeckAsFoundAnswer of(Deck deck, ServiceLimits limits, LengthUnit unit) {
        Optional<DeckFlatness> flatness = deck.flatness();
        return new DeckAsFoundAnswer(
                ShownLength.of(flatness.map(DeckFlatness::found), unit),
                shown(flatness.map(DeckFlatness::uncertainty), unit, Flattery.UNCERTAINTY),
                flatness.map(found -> found.stated().isPresent() ? Source.REQUEST : Source.COMMON_PRACTICE)
                        .map(Source::label)
                        .orElse(null),
                shown(deck.leastSkim(limits), unit, Flattery.LOWER_LIMIT),
                ShownLength.of(deck.skim(), unit),
                ShownLength.of(deck.skimmedBefore(), unit));
    }

    private static @Nullable ShownLength shown(Optional<Length> length, LengthUnit unit, Flattery kind) {
        return length.map(known -> ShownLength.of(known, unit, kind)).orElse(null);
    }
}
