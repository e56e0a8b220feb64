package org.borewright.catalog.load;

import io.smallrye.config.ConfigMapping;
import java.nio.file.Path;

/** What may be set about loading. */
@ConfigMapping(prefix = "borewright.catalog")
interface CatalogSettings {

    /** The folder of catalogue files that an empty database is filled from. */
    Path folder();

    /** Where the database is. */
    String database();
}
