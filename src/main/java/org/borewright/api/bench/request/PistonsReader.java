package org.borewright.api.bench.request;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.borewright.api.asked.Opening;
import org.borewright.api.asked.Place;
import org.borewright.api.asked.Ruler;
import org.borewright.api.problem.ProblemType;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.Weighed;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;

/**
 * Reads pistons in hand.
 *
 * @param opening of the question
 * @param ruler for their diameters
 */
record PistonsReader(Opening opening, Ruler ruler) {

    private static final int MOST = 24;
    private static final Pattern TAG = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,7}");
    private static final BigDecimal HEAVIEST_GRAMS = BigDecimal.valueOf(100_000);

    /** Those that can be read; each of the others is noted. */
    List<PistonReading> read(Place place) {
        Map<String, Place> first = new LinkedHashMap<>();
        List<PistonReading> pistons = new ArrayList<>();
        for (Place item : place.items(MOST, "pistons")) {
            if (item.isObject("tag", "number", "diameter", "mass")) {
                piston(item, first).ifPresent(pistons::add);
            } else if (!item.isGiven()) {
                item.wrongForm("a piston");
            }
        }
        return pistons;
    }

    private Optional<PistonReading> piston(Place item, Map<String, Place> first) {
        item.at("tag").need("It is not said what the piston is marked with.");
        item.at("number").need("The number of the piston is missing.");
        item.at("diameter").need("The diameter of the piston is missing.");
        Optional<String> tag = tag(item.at("tag"));
        tag.ifPresent(text -> checkNew(item.at("tag"), text, first));
        Optional<Piston> part = part(item.at("number"));
        Optional<Length> diameter = ruler.piston(item.at("diameter"));
        Optional<Long> mass = mass(item.at("mass"));
        return tag.flatMap(marked ->
                part.flatMap(number -> diameter.map(measured -> new PistonReading(marked, number, measured, mass))));
    }

    private static void checkNew(Place place, String tag, Map<String, Place> first) {
        Place before = first.putIfAbsent(tag, place);
        if (before != null) {
            place.fault(
                    ProblemType.WRONG_PISTONS,
                    "Two pistons are marked \"" + tag + "\".",
                    "each tag once; the first is at " + before.pointer());
        }
    }

    /** What a piston is marked with. */
    static Optional<String> tag(Place place) {
        Optional<String> text = place.text();
        if (text.isPresent() && !TAG.matcher(text.get()).matches()) {
            place.fault(
                    ProblemType.WRONG_FORM,
                    "A piston cannot be marked so.",
                    "1 to 8 letters, digits, points and hyphens, the first a letter or digit");
            return Optional.empty();
        }
        return text;
    }

    /** A piston of the engine by its number; any size of it, replaced numbers too. */
    Optional<Piston> part(Place place) {
        Optional<String> number = place.text();
        Optional<Piston> piston = opening.shelf()
                .flatMap(shelf -> number.flatMap(typed -> shelf.parts().pistons().stream()
                        .filter(made -> made.number().text().equals(typed))
                        .findFirst()));
        if (number.isPresent() && piston.isEmpty()) {
            opening.shelf().ifPresent(shelf -> place.add(UnknownName.piston(place.pointer(), number.get(), shelf)));
        }
        return piston;
    }

    /** All that is there: the pistons in hand, and these numbers. */
    static Set<PartNumber> with(List<Piston> inHand, Set<PartNumber> numbers) {
        Set<PartNumber> all = new TreeSet<>(numbers);
        inHand.forEach(piston -> all.add(piston.number()));
        return all;
    }

    /** With what and how warm they were measured. */
    static Measuring measuring(Opening opening) {
        return opening.measuring(opening.at("pistonGauge"), Gauge.Kind.MICROMETER, opening.at("pistonTemperature"));
    }

    /** How the set was weighed: bare unless it is said. */
    static Weighed weighed(Place place) {
        return place.word(List.of(Weighed.values()), Weighed::label).orElse(Weighed.BARE);
    }

    private static Optional<Long> mass(Place place) {
        Optional<BigDecimal> grams = place.number();
        if (grams.isEmpty()) {
            return Optional.empty();
        }
        boolean sensible = grams.get().signum() > 0
                && grams.get().compareTo(HEAVIEST_GRAMS) <= 0
                && grams.get().stripTrailingZeros().scale() <= 3;
        if (!sensible) {
            place.fault(ProblemType.BAD_FIGURE, "No piston weighs so.", "above 0 to 100000 g, at most three decimals");
            return Optional.empty();
        }
        return Optional.of(grams.get().movePointRight(3).longValueExact());
    }
}
