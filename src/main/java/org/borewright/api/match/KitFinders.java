package org.borewright.api.match;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.borewright.catalog.Offers;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;

/** Keeps one finder of kits for each engine, with the kits it remembers, until fit table or offers are others. */
@ApplicationScoped
public class KitFinders {

    private final Map<String, Kept> byEngine = new ConcurrentHashMap<>();

    private record Kept(FitTable fits, Offers offers, KitFinder kits) {}

    /** The finder for an engine at these prices and stock. */
    @SuppressWarnings("ReferenceEquality") // another table with the same content is another revision's
    public KitFinder of(FitTable fits, Offers offers) {
        String engine = fits.shelf().engine().code();
        Kept kept = byEngine.get(engine);
        if (kept != null && kept.fits == fits && kept.offers == offers) {
            return kept.kits;
        }
        KitFinder kits = new KitFinder(fits.shelf(), offers);
        byEngine.put(engine, new Kept(fits, offers, kits));
        return kits;
    }
}
