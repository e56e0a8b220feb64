package org.borewright.api.order.request;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.ProblemType;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.ladder.Way;
import org.borewright.order.quote.Choosing;
import org.borewright.order.quote.Proposal;

/**
 * What is to be quoted.
 *
 * @param choosing which way
 * @param own the pistons that the owner brings; empty where they are bought
 * @param alternatives whether the other ways are to be named too
 */
public record QuoteAsked(Choosing choosing, Optional<Choice> own, boolean alternatives) {

    private static final List<String> WAYS = Stream.concat(
                    Stream.of(Way.values()).map(Way::label), Stream.of(Proposal.FINISHED_HOLES))
            .toList();

    /** The ways that may be asked for, in the order of the metal they take. */
    public static List<String> ways() {
        return WAYS;
    }

    /** Reads it; an empty body asks for what the survey says, without alternatives. */
    public static QuoteAsked read(byte[] body, FitTable fits) {
        Faults faults = Faults.ofBody();
        Place top = ShortBody.top(body, faults, "way", "size", "ownPistons", "alternatives");
        Optional<String> way = top.at("way").word(WAYS, word -> word);
        Optional<Size> size = size(top.at("size"), fits.shelf());
        Optional<Choice> own = own(top, size, fits);
        boolean alternatives = top.at("alternatives").truth().orElse(false);
        faults.raise();
        return new QuoteAsked(new Choosing(way, size), own, alternatives);
    }

    private static Optional<Size> size(Place place, Shelf shelf) {
        Optional<String> label = place.text();
        Optional<Size> size = label.flatMap(shelf::size);
        if (label.isPresent() && size.isEmpty()) {
            place.add(UnknownName.size(place.pointer(), label.get(), shelf));
        }
        return size;
    }

    private static Optional<Choice> own(Place top, Optional<Size> size, FitTable fits) {
        Place place = top.at("ownPistons");
        if (!place.isGiven()) {
            return Optional.empty();
        }
        top.at("size").need("It is not said which size the owner's pistons are.");
        Optional<PistonDesign> design = place.word(fits.shelf().parts().designs(), PistonDesign::code);
        Optional<Choice> own = design.flatMap(made -> size.flatMap(of -> own(made, of, fits)));
        if (design.isPresent() && size.isPresent() && own.isEmpty()) {
            place.add(Fault.of(
                            ProblemType.UNKNOWN_SIZE,
                            place.pointer(),
                            design.get().code() + " has no pistons of "
                                    + size.get().label() + " for every hole.")
                    .sent(place.sent())
                    .wayOut("Look which design and size they are: see what fits each size."));
        }
        return own;
    }

    /** Those that are supplied; where none are any more, those that ever were. */
    private static Optional<Choice> own(PistonDesign design, Size size, FitTable fits) {
        return fits.at(size, design).or(() -> {
            Set<PartNumber> made = fits.shelf().parts().pistons().stream()
                    .filter(piston -> piston.design().equals(design.code())
                            && piston.size().equals(size.label()))
                    .map(Piston::number)
                    .collect(Collectors.toSet());
            return fits.having(made).at(size, design);
        });
    }
}
