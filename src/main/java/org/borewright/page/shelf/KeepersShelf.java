package org.borewright.page.shelf;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.api.guard.Parameters;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.lookup.engine.EngineLookup;
import org.borewright.api.order.answer.JournalAnswer;
import org.borewright.api.shelf.ShelfLookup;
import org.borewright.api.shelf.StockAnswer;
import org.borewright.api.shelf.StockQuery;
import org.borewright.catalog.Engine;
import org.borewright.catalog.store.Shelves;
import org.borewright.measure.LengthUnit;
import org.borewright.order.store.JournalRow;
import org.borewright.page.Page;

/** The page of the shelf: all that goes into one engine, size by size, or else all that is short. */
@Path("/shelf")
@Produces(Page.MEDIA_TYPE)
public class KeepersShelf {

    private static final int PLACES_SHOWN = 100;
    private static final int ARRIVALS_SHOWN = 20;
    private static final String EVERY_SIZE = "every size";

    private final ShelfLookup shelf;
    private final EngineLookup engines;
    private final Shelves shelves;

    KeepersShelf(ShelfLookup shelf, EngineLookup engines, Shelves shelves) {
        this.shelf = shelf;
        this.engines = engines;
        this.shelves = shelves;
    }

    /**
     * What is shown.
     *
     * @param engine that was chosen; nothing for all
     * @param engines that can be
     * @param stock places of the shelf
     * @param groups the same, size by size; one without a label where no engine was chosen
     * @param imported what the last import brought
     * @param arrivals what arrived since, the latest first
     */
    @CheckedTemplate(basePath = "page")
    record ShelfPage(
            String engine,
            List<Engine> engines,
            StockAnswer stock,
            List<Group> groups,
            Imported imported,
            List<JournalAnswer.LineAnswer> arrivals)
            implements TemplateInstance {}

    /**
     * What goes into an engine at a size.
     *
     * @param label of the size, or that it goes in at each
     * @param places what there is of it
     */
    record Group(String label, List<StockAnswer.PlaceAnswer> places) {

        /** How many pieces of it orders wait for. */
        public long toCome() {
            return places.stream().mapToLong(StockAnswer.PlaceAnswer::toCome).sum();
        }

        /** How many of its numbers are short. */
        public long shortNumbers() {
            return places.stream().filter(StockAnswer.PlaceAnswer::isShort).count();
        }
    }

    /** The page. */
    @GET
    @Transactional
    public Response shelf(@Context UriInfo called) {
        Parameters parameters = new Parameters(called);
        Optional<String> engine = parameters.text("engine");
        Optional<String> after = parameters.text("after");
        parameters.end();
        StockAnswer stock = shelf.places(
                new StockQuery(engine, engine.isEmpty(), after, engine.isEmpty() ? PLACES_SHOWN : StockQuery.MOST));
        return Page.of(new ShelfPage(
                engine.orElse(""),
                shelves.catalogue().engines(),
                stock,
                engine.map(code -> groups(code, stock)).orElse(List.of(new Group("", stock.places()))),
                Imported.of(shelves.catalogue()),
                JournalAnswer.of(0, JournalRow.last("arrive", ARRIVALS_SHOWN)).lines()));
    }

    private List<Group> groups(String engine, StockAnswer stock) {
        Stream<Group> ofSizes = engines.known(engine, LengthUnit.MILLIMETRE).sizes().stream()
                .map(EngineAnswer.SizeAnswer::size)
                .map(size -> group(engine, Optional.of(size), stock));
        return Stream.concat(ofSizes, Stream.of(group(engine, Optional.empty(), stock)))
                .filter(group -> !group.places().isEmpty())
                .toList();
    }

    private static Group group(String engine, Optional<String> size, StockAnswer stock) {
        return new Group(
                size.orElse(EVERY_SIZE),
                stock.places().stream()
                        .filter(place -> place.goesInto(engine, size))
                        .toList());
    }
}
