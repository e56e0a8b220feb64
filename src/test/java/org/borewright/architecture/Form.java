package org.borewright.architecture;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** The form of the sources: small enough to be taken in at a glance, and explained where others lean on them. */
enum Form {
    FILES_ARE_SHORT(sources -> sources.stream()
            .filter(source -> source.lines() > 400)
            .map(source -> "%s has %s lines".formatted(source.name(), source.lines()))),

    ROOMS_ARE_SMALL(sources -> files(sources).entrySet().stream()
            .filter(room -> room.getValue() > 15 && !Rooms.MAY_BE_LARGE.containsKey(room.getKey()))
            .map(room -> "%s holds %s files".formatted(room.getKey(), room.getValue()))),

    BODIES_ARE_SHORT(sources -> methods(sources)
            .filter(method -> method.bodyLines() > 40)
            .map(method -> "%s has %s lines".formatted(method.name(), method.bodyLines()))),

    PARAMETERS_ARE_FEW(sources -> methods(sources)
            .filter(method -> method.parameters() > 5)
            .map(method -> "%s takes %s".formatted(method.name(), method.parameters()))),

    THE_HEART_IS_EXPLAINED(sources -> sources.stream()
            .filter(source -> Heart.holds(source.room()))
            .flatMap(source -> source.unexplained().stream())
            .map("%s has no Javadoc"::formatted));

    @SuppressWarnings("ImmutableEnumChecker") // a function without state, but has no mark that says so
    private final Function<List<Source>, Stream<String>> offences;

    Form(Function<List<Source>, Stream<String>> offences) {
        this.offences = offences;
    }

    /** What is out of form, in words. */
    List<String> offences(List<Source> sources) {
        return offences.apply(sources).toList();
    }

    /** Rooms that a limit would tear apart. */
    static final class Rooms {

        /** Each with the reason. */
        static final Map<String, String> MAY_BE_LARGE = Map.of(
                "org.borewright.fit", "one file per rule of the trade, told by its name",
                "org.borewright.fit.shape", "one record per shape that a rule takes",
                "org.borewright.catalog", "one value per thing in the catalogue; they name each other",
                "org.borewright.catalog.store.row", "one row per catalogue file");

        private Rooms() {}
    }

    static Map<String, Long> files(List<Source> sources) {
        return sources.stream()
                .filter(source -> !source.isPackageInfo())
                .collect(groupingBy(Source::room, TreeMap::new, counting()));
    }

    private static Stream<Source.Method> methods(List<Source> sources) {
        return sources.stream().flatMap(source -> source.methods().stream());
    }
}
