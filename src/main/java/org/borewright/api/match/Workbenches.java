package org.borewright.api.match;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.borewright.catalog.Offers;
import org.borewright.kit.choice.FitTable;

/** Keeps one workbench per engine, laid out anew when the catalogue, a price or the stock changes. */
@ApplicationScoped
public class Workbenches {

    private final Map<String, Workbench> byEngine = new ConcurrentHashMap<>();
    private final ObjectMapper json;

    /** Workbenches whose stencils are cut by the service's own mapper, so that they say what it would say. */
    public Workbenches(ObjectMapper json) {
        this.json = json;
    }

    /** The workbench of an engine with these prices and stock. */
    public Workbench of(FitTable fits, Offers offers) {
        String engine = fits.shelf().engine().code();
        Workbench kept = byEngine.get(engine);
        if (kept != null && kept.isFor(fits, offers)) {
            return kept;
        }
        Workbench laid = Workbench.lay(fits, offers, json);
        byEngine.put(engine, laid);
        return laid;
    }
}
