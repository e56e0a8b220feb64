package org.borewright.page;

import io.smallrye.config.ConfigMapping;
import java.util.Optional;

/** What a shop decides of its pages. */
@ConfigMapping(prefix = "borewright.page")
public interface PageSettings {

    /** The address that others reach the pages under, as {@code https://shop.example}; where it is left out, that of the request. */
    Optional<String> address();
}
