package org.borewright.api.problem;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Engine;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;

/** Faults of names that the catalogue does not have, with the near ones it has. */
public final class UnknownName {

    private static final int LONGEST_REPEATED = 60;
    private static final Pattern FIGURE = Pattern.compile("\\+?([0-9]{0,3}\\.?[0-9]{1,6})( ?(mm|in))?");

    private UnknownName() {}

    /** An engine code, with the codes of engines whose code or model is near. */
    public static Fault engine(String pointer, String typed, Catalogue catalogue) {
        Map<String, String> codes = catalogue.engines().stream()
                .map(Engine::name)
                .flatMap(name -> Stream.of(name.code(), name.model()).map(text -> Map.entry(text, name.code())))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (first, second) -> first));
        return fault(ProblemType.UNKNOWN_ENGINE, pointer, typed, "No engine has the code", codes);
    }

    /** A size, with all that the engine has; the one of the same figure is suggested, for a near figure is another size. */
    public static Fault size(String pointer, String typed, Shelf shelf) {
        List<String> labels = shelf.sizes().stream().map(Size::label).toList();
        Fault fault = Fault.of(
                        ProblemType.UNKNOWN_SIZE,
                        pointer,
                        shelf.engine().code() + " has no size \"" + repeated(typed) + "\".")
                .sent(repeated(typed))
                .against(NearNames.either(labels))
                .wayOut("Use one of: " + String.join(", ", labels) + ".");
        return labels.stream()
                .filter(label -> figure(typed).isPresent() && figure(label).equals(figure(typed)))
                .findFirst()
                .map(label -> fault.suggesting(new Suggestion(label, "the size of this figure")))
                .orElse(fault);
    }

    private static Optional<BigDecimal> figure(String label) {
        Matcher figure = FIGURE.matcher(label.strip());
        return figure.matches() ? Optional.of(new BigDecimal(figure.group(1)).stripTrailingZeros()) : Optional.empty();
    }

    /** A part number, with the near ones. */
    public static Fault part(String pointer, String typed, Catalogue catalogue) {
        List<String> numbers =
                catalogue.listings().keySet().stream().map(PartNumber::text).toList();
        return fault(ProblemType.UNKNOWN_PART, pointer, typed, "Nothing bears the number", same(numbers));
    }

    /** A gauge, with the near names of the register. */
    public static Fault gauge(String pointer, String typed, Catalogue catalogue) {
        return fault(
                ProblemType.UNKNOWN_GAUGE,
                pointer,
                typed,
                "No gauge of the register has the name",
                same(catalogue.gauges().keySet()));
    }

    /** The number of a piston that is none of an engine, with the near ones that are. */
    public static Fault piston(String pointer, String typed, Shelf shelf) {
        List<String> numbers = shelf.parts().pistons().stream()
                .map(piston -> piston.number().text())
                .toList();
        return fault(
                ProblemType.UNKNOWN_PART,
                pointer,
                typed,
                "No piston of " + shelf.engine().code() + " bears the number",
                same(numbers));
    }

    private static Map<String, String> same(Collection<String> names) {
        return names.stream().collect(Collectors.toMap(Function.identity(), Function.identity()));
    }

    private static Fault fault(
            ProblemType type, String pointer, String typed, String what, Map<String, String> meantBy) {
        List<String> near = NearNames.of(typed, meantBy.keySet()).stream()
                .map(meantBy::get)
                .distinct()
                .toList();
        Fault fault =
                Fault.of(type, pointer, what + " \"" + repeated(typed) + "\".").sent(repeated(typed));
        Optional<String> nearest = near.stream().findFirst();
        return nearest.map(name -> fault.suggesting(new Suggestion(name, "the nearest name"))
                        .wayOut("Did you mean " + NearNames.either(near) + "?"))
                .orElse(fault);
    }

    private static String repeated(String typed) {
        return Legible.first(LONGEST_REPEATED, typed);
    }
}
