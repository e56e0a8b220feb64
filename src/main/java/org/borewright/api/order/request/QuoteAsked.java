package org.borewright.api.order.request;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.kit.ladder.Way;
import org.borewright.order.quote.Choosing;
import org.borewright.order.quote.Proposal;

/**
 * What is to be quoted.
 *
 * @param choosing which way
 * @param alternatives whether the other ways are to be named too
 */
public record QuoteAsked(Choosing choosing, boolean alternatives) {

    private static final List<String> WAYS = Stream.concat(
                    Stream.of(Way.values()).map(Way::label), Stream.of(Proposal.FINISHED_HOLES))
            .toList();

    /** Reads it; an empty body asks for what the survey says, without alternatives. */
    public static QuoteAsked read(byte[] body, Shelf shelf) {
        Faults faults = Faults.ofBody();
        Place top = ShortBody.top(body, faults, "way", "size", "alternatives");
        Optional<String> way = top.at("way").word(WAYS, word -> word);
        Optional<Size> size = size(top.at("size"), shelf);
        boolean alternatives = top.at("alternatives").truth().orElse(false);
        faults.raise();
        return new QuoteAsked(new Choosing(way, size), alternatives);
    }

    private static Optional<Size> size(Place place, Shelf shelf) {
        Optional<String> label = place.text();
        Optional<Size> size = label.flatMap(shelf::size);
        if (label.isPresent() && size.isEmpty()) {
            place.add(UnknownName.size(place.pointer(), label.get(), shelf));
        }
        return size;
    }
}
