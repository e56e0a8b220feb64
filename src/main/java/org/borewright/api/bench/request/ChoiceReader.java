package org.borewright.api.bench.request;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.borewright.api.asked.Opening;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Size;
import org.borewright.kit.choice.Choice;

/**
 * Reads which pistons are meant: a size, and where several makers have it whose.
 *
 * @param opening of the question
 */
record ChoiceReader(Opening opening) {

    /**
     * The choice; empty where none is meant, which is noted.
     *
     * @param inHand the pistons in hand, which tell the maker where they are all of one
     */
    Optional<Choice> read(List<Piston> inHand) {
        Place place = opening.at("size");
        place.need("It is not said which size the engine goes to.");
        Optional<Size> size = opening.size(place);
        List<Choice> choices =
                opening.fits().flatMap(fits -> size.map(fits::at)).orElse(List.of());
        if (size.isPresent() && choices.isEmpty()) {
            place.add(Fault.of(
                            ProblemType.UNKNOWN_SIZE,
                            place.pointer(),
                            String.format(
                                    Locale.ROOT,
                                    "No piston was ever made for %s at %s.",
                                    opening.engine().orElseThrow().code(),
                                    size.get().label()))
                    .sent(place.sent())
                    .wayOut("Take a size that is made: see the fit of each size."));
        }
        return choices.isEmpty() ? readUnmade() : ofDesign(choices, inHand);
    }

    private Optional<Choice> readUnmade() {
        // Whatever design is named, its form is judged all the same.
        opening.at("design").text();
        return Optional.empty();
    }

    private Optional<Choice> ofDesign(List<Choice> choices, List<Piston> inHand) {
        Place place = opening.at("design");
        if (place.isGiven()) {
            return place.word(choices, choice -> choice.design().code());
        }
        List<String> designs = inHand.stream().map(Piston::design).distinct().toList();
        List<Choice> meant = choices.size() == 1
                ? choices
                : choices.stream()
                        .filter(choice -> designs.equals(List.of(choice.design().code())))
                        .toList();
        if (meant.isEmpty()) {
            place.add(Fault.of(
                            ProblemType.MISSING_FIELD,
                            place.pointer(),
                            "Several makers have pistons of this size, and it is not said whose are meant.")
                    .against(String.join(
                            " or ",
                            choices.stream()
                                    .map(choice -> choice.design().code())
                                    .toList())));
        }
        return meant.stream().findFirst();
    }
}
