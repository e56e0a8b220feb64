package org.borewright.scenario;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Stocktaking;

/** The demo catalogue, straight from its files. */
final class Demo {

    static final Delivery DELIVERY = Delivery.from(Path.of("catalog-data"));
    static final Catalogue CATALOGUE = Stocktaking.of(DELIVERY.rows(), DELIVERY.revision(), Instant.EPOCH);

    private Demo() {}

    static Shelf shelf(String code) {
        return CATALOGUE.shelf(code).orElseThrow();
    }

    static List<Piston> pistons(Shelf shelf, String size) {
        return shelf.parts().pistons().stream()
                .filter(piston -> piston.size().equals(size))
                .toList();
    }
}
