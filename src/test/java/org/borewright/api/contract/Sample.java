package org.borewright.api.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;

/**
 * A request that is answered, and the schema its answer has.
 *
 * @param name what it is about
 */
record Sample(String name, Asked asked, String schema) {

    /** Questions of every kind, and all that can be looked up in a catalogue. */
    static List<Sample> of(Catalogue catalogue) {
        List<Sample> samples = new ArrayList<>();
        for (Posted posted : Posted.values()) {
            posted.requests()
                    .forEach((name, request) ->
                            samples.add(new Sample(name, posted.asked(request.toString()), posted.answer())));
        }
        Stream.of("", "?page=2&size=5", "?unit=in&maker=Halvern")
                .forEach(query -> samples.add(get("/api/engines" + query, "EnginesAnswer")));
        catalogue
                .engines()
                .forEach(engine -> ofEngine(catalogue.shelf(engine.code()).orElseThrow(), samples));
        catalogue.listings().keySet().forEach(number -> samples.add(get("/api/parts/" + number.text(), "PartAnswer")));
        samples.add(get("/api/gauges", "GaugesAnswer"));
        catalogue
                .gauges()
                .keySet()
                .forEach(name -> samples.add(get("/api/gauges/" + name + "?unit=in", "GaugeAnswer")));
        samples.add(get("/problems", "ProblemKinds"));
        return samples;
    }

    private static void ofEngine(Shelf shelf, List<Sample> samples) {
        String engine = "/api/engines/" + shelf.engine().code();
        samples.add(get(engine, "EngineAnswer"));
        samples.add(get(engine + "?unit=in", "EngineAnswer"));
        for (Size size : shelf.sizes()) {
            String path = engine + "/sizes/" + size.label().replace(" ", "%20");
            samples.add(get(path + "/fit", "FitAnswer"));
            samples.add(get(path + "/offers", "OffersAnswer"));
        }
    }

    private static Sample get(String target, String schema) {
        return new Sample(target, Asked.get(target), schema);
    }
}
