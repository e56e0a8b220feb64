package org.borewright.api.demo;

import io.smallrye.config.ConfigMapping;
import java.nio.file.Path;

/** Where the orders are that a new shop is shown. */
@ConfigMapping(prefix = "borewright.demo")
interface DemoSettings {

    /** The file; where there is none, none are shown. */
    Path orders();
}
