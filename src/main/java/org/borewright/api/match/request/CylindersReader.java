package org.borewright.api.match.request;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * Reads the holes, in whatever order they were sent, into the order of the engine: each one once, none missing, none besides.
 *
 * @param one reads a single hole
 * @param engine whose holes they are; empty when it is not known
 */
record CylindersReader(CylinderReader one, Optional<Engine> engine) {

    private static final int MOST = 24;

    List<CylinderSurvey> read(Place place) {
        place.need("The cylinders are missing.");
        Map<String, Place> first = new LinkedHashMap<>();
        Map<String, CylinderSurvey> byName = new LinkedHashMap<>();
        List<Place> sent = place.items(MOST, "cylinders");
        for (Place item : sent) {
            CylinderSurvey survey = one.read(item);
            Place name = item.at("cylinder");
            if (name.isText()) {
                checkName(name, survey.cylinder(), first);
                byName.putIfAbsent(survey.cylinder(), survey);
            }
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

    private static void checkAllThere(Place place, int sent, Engine engine, Map<String, CylinderSurvey> byName) {
        List<String> missing =
                names(engine).stream().filter(name -> !byName.containsKey(name)).toList();
        int asked = engine.cylinders().size();
        if (missing.isEmpty() && sent == asked) {
            return;
        }
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

    private List<CylinderSurvey> inOrder(Map<String, CylinderSurvey> byName) {
        List<CylinderSurvey> inOrder = new ArrayList<>();
        engine.ifPresent(known ->
                names(known).forEach(name -> inOrder.add(byName.getOrDefault(name, CylinderSurvey.unsurveyed(name)))));
        return inOrder;
    }

    private static List<String> names(Engine engine) {
        return engine.cylinders().stream().map(Cylinder::name).toList();
    }
}
