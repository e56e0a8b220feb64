package org.borewright.catalog.load;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.PreventFurtherStepsException;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.nio.file.Path;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Revision;
import org.borewright.catalog.store.Shelves;
import org.jboss.logging.Logger;

/**
 * Fills an empty database when the service starts for the first time, and takes the catalogue into memory every time. A later start
 * leaves the files alone, and warns where they say something else than what is kept, or nothing that could be loaded. Of several machines
 * that start at once on one empty database one fills it, and the others find it filled.
 */
@ApplicationScoped
class FirstLoad {

    private static final Logger LOG = Logger.getLogger(FirstLoad.class);

    /** The exit code of a start that refused its catalogue, or could not have its database. */
    static final int REFUSED = 3;

    /** How long a start may fill a database, or wait for another that does: a slow machine takes half a minute. */
    private static final int PATIENCE_SECONDS = 600;

    private final Shelves shelves;
    private final Acceptance acceptance;
    private final Path folder;

    FirstLoad(Shelves shelves, Acceptance acceptance, CatalogSettings settings) {
        this.shelves = shelves;
        this.acceptance = acceptance;
        this.folder = settings.folder();
    }

    void onStart(@Observes StartupEvent start) {
        if (shelves.reload()) {
            warnOfOtherFiles();
        } else {
            QuarkusTransaction.requiringNew().timeout(PATIENCE_SECONDS).run(this::loadUnlessAnotherDid);
        }
        Catalogue catalogue = shelves.catalogue();
        LOG.infof(
                "Catalogue %s, offers %s, loaded %s: %d engines, %d numbers",
                catalogue.revision().fit(),
                catalogue.revision().offers(),
                catalogue.loadedAt(),
                catalogue.shelves().size(),
                catalogue.listings().size());
    }

    private void loadUnlessAnotherDid() {
        shelves.keepOthersFromLoading();
        if (shelves.reload()) {
            warnOfOtherFiles();
        } else {
            acceptOrLeave(Delivery.from(folder));
        }
    }

    private void warnOfOtherFiles() {
        Revision kept = shelves.catalogue().revision();
        Delivery.unlike(kept, folder).ifPresent(delivery -> LOG.warn(delivery.passedOver(kept, folder)));
    }

    private void acceptOrLeave(Delivery delivery) {
        if (!acceptance.accept(delivery)) {
            LOG.error(delivery.report(folder));
            // The one asks for the way out and sets the exit code, the other keeps the door shut until then.
            Quarkus.asyncExit(REFUSED);
            throw new PreventFurtherStepsException(REFUSED);
        }
    }
}
