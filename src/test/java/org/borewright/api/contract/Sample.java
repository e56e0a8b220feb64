package org.borewright.api.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
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
        ofOrders(samples);
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

    /** Where orders stand, and what is told of them. */
    private static void ofOrders(List<Sample> samples) {
        for (String where :
                List.of("received", "quoted", "accepted", "awaited", "unmeasured", "finished", "withdrawn")) {
            samples.add(of(where, "/api/orders/12", "Order"));
            samples.add(of(where, "/api/orders?block=B-17&limit=1", "Orders"));
            samples.add(of(where, "/api/orders?limit=1", "Orders"));
            samples.add(of(where, "/api/journal?order=12", "JournalPage"));
            samples.add(of(where, "/api/blocks/B-17", "BlockLife"));
        }
        samples.add(of("finished", "/api/orders/12/quotes", "Quotes"));
        samples.add(of("finished", "/api/orders/12/quotes/1", "Quote"));
        samples.add(of("quoted anew", "/api/orders/12/quotes/2", "Quote"));
        samples.add(of("finished", "/api/orders/12/papers", "Papers"));
        IntStream.rangeClosed(1, 3)
                .forEach(paper -> samples.add(of("finished", "/api/orders/12/papers/" + paper, "Paper")));
        samples.add(get("/api/journal?limit=1000", "JournalPage"));
        samples.add(of("finished", "/api/journal/verification", "Verification"));
        samples.add(of("hooked", "/api/hooks", "Hooks"));
        samples.add(get("/api/stock?limit=1000", "Shelves"));
        samples.add(get("/api/stock?limit=1", "Shelves"));
        samples.add(get("/api/stock/HV131-GK", "ShelfPlace"));
        samples.add(get("/api/stock/NH-H131-125", "ShelfPlace"));
    }

    private static Sample of(String where, String target, String schema) {
        return new Sample(target + ", " + where, new Asked("GET", target, Map.of("Host", "shop"), "", where), schema);
    }

    private static Sample get(String target, String schema) {
        return new Sample(target, Asked.get(target), schema);
    }
}
