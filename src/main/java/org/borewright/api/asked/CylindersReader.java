package org.borewright.api.asked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;

/**
 * Reads the holes, in whatever order they were sent, into the order of the engine: each one once, none missing, none besides.
 *
 * @param one reads a single hole
 * @param missing a hole of a name of which nothing was sent
 * @param engine whose holes they are; empty when it is not known
 * @param <T> what is read of a hole
 */
public record CylindersReader<T>(Function<Place, T> one, Function<String, T> missing, Optional<Engine> engine) {

    private static final int MOST = 24;

    /** One for each hole of the engine, in its order. */
    public List<T> read(Place place) {
        place.need("The cylinders are missing.");
        Map<String, Place> first = new LinkedHashMap<>();
        Map<String, T> byName = new LinkedHashMap<>();
        List<Place> sent = place.items(MOST, "cylinders");
        for (Place item : sent) {
            T hole = one.apply(item);
            item.at("cylinder").text().ifPresent(name -> {
                checkName(item.at("cylinder"), name, first);
                byName.putIfAbsent(name, hole);
            });
        }
        if (place.isList()) {
            engine.ifPresent(known -> checkAllThere(place, sent.size(), known, byName));
        }
        return inOrder(byName);
    }

    private void checkName(Place place, String name, Map<String, Place> first) {
        Place before = first.putIfAbsent(name, place);
        if (before != null) {
            place.fault(
                    ProblemType.WRONG_CYLINDERS,
                    "Cylinder \"" + Place.shortened(name) + "\" is named twice.",
                    "each cylinder once; the first is at " + before.pointer());
        } else if (engine.isPresent() && engine.get().cylinder(name).isEmpty()) {
            place.unknownWord(ProblemType.WRONG_CYLINDERS, name, names(engine.get()));
        }
    }

    private static void checkAllThere(Place place, int sent, Engine engine, Map<String, ?> byName) {
        int asked = engine.cylinders().size();
        if (sent == asked) {
            // Whichever of them is missing, another stands in its place, and that is told there.
            return;
        }
        List<String> missing =
                names(engine).stream().filter(name -> !byName.containsKey(name)).toList();
        String reason = String.format(
                Locale.ROOT,
                "%s has %s, the request names %d%s.",
                engine.code(),
                asked == 1 ? "1 cylinder" : asked + " cylinders",
                sent,
                missing.isEmpty() ? "" : "; missing: " + String.join(", ", missing));
        place.add(Fault.of(ProblemType.WRONG_CYLINDERS, place.pointer(), reason)
                .sent(sent)
                .against("each of: " + String.join(", ", names(engine))));
    }

    private List<T> inOrder(Map<String, T> byName) {
        List<T> inOrder = new ArrayList<>();
        engine.ifPresent(known -> names(known).forEach(name -> {
            T sent = byName.get(name);
            inOrder.add(sent == null ? missing.apply(name) : sent);
        }));
        return inOrder;
    }

    private static List<String> names(Engine engine) {
        return engine.cylinders().stream().map(Cylinder::name).toList();
    }
}
