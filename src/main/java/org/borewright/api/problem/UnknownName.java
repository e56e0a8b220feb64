package org.borewright.api.problem;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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

    private UnknownName() {}

    /** An engine code, with the codes of engines whose code or model is near. */
    public static Fault engine(String pointer, String typed, Catalogue catalogue) {
        Map<String, String> codes = catalogue.engines().stream()
                .map(Engine::name)
                .flatMap(name -> Stream.of(name.code(), name.model()).map(text -> Map.entry(text, name.code())))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (first, second) -> first));
        return fault(ProblemType.UNKNOWN_ENGINE, pointer, typed, "No engine has the code", codes);
    }

    /** A size, with all that the engine has. */
    public static Fault size(String pointer, String typed, Shelf shelf) {
        List<String> labels = shelf.sizes().stream().map(Size::label).toList();
        return fault(ProblemType.UNKNOWN_SIZE, pointer, typed, shelf.engine().code() + " has no size", same(labels))
                .against(NearNames.either(labels))
                .wayOut("Use one of: " + String.join(", ", labels) + ".");
    }

    /** A part number, with the near ones. */
    public static Fault part(String pointer, String typed, Catalogue catalogue) {
        List<String> numbers =
                catalogue.listings().keySet().stream().map(PartNumber::text).toList();
        return fault(ProblemType.UNKNOWN_PART, pointer, typed, "Nothing bears the number", same(numbers));
    }

    private static Map<String, String> same(Collection<String> names) {
        return names.stream().collect(Collectors.toMap(Function.identity(), Function.identity()));
    }

    private static Fault fault(
            ProblemType type, String pointer, String typed, String what, Map<String, String> meantBy) {
        String repeated = typed.length() <= LONGEST_REPEATED ? typed : typed.substring(0, LONGEST_REPEATED) + "…";
        List<String> near = NearNames.of(typed, meantBy.keySet()).stream()
                .map(meantBy::get)
                .distinct()
                .toList();
        Fault fault = Fault.of(type, pointer, what + " \"" + repeated + "\".").sent(repeated);
        Optional<String> nearest = near.stream().findFirst();
        return nearest.map(name -> fault.suggesting(new Suggestion(name, "the nearest name"))
                        .wayOut("Did you mean " + NearNames.either(near) + "?"))
                .orElse(fault);
    }
}
