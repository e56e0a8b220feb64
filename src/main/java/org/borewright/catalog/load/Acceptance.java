package org.borewright.catalog.load;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import org.borewright.catalog.store.Shelves;

/** Takes a delivery in whole or not at all. */
@ApplicationScoped
class Acceptance {

    private final Shelves shelves;
    private final Clock clock;

    Acceptance(Shelves shelves, Clock clock) {
        this.shelves = shelves;
        this.clock = clock;
    }

    /** Keeps a good delivery and puts it in force. @return false, with nothing changed, where anything is bad about it */
    boolean accept(Delivery delivery) {
        if (delivery.isGood()) {
            shelves.replace(delivery.rows(), delivery.revision(), clock.instant());
            shelves.reload();
        }
        return delivery.isGood();
    }
}
