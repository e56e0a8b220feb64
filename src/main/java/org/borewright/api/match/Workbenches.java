package org.borewright.api.match;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.borewright.api.match.request.Asked;
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

    /** The workbench of the engine asked about, with prices and stock of the catalogue it is asked of. */
    public Workbench of(Asked asked) {
        FitTable fits = asked.fits();
        Offers offers = asked.catalogue().offers();
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
