package org.borewright.api.hook;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;

/** How whoever wants to be told of the journal is told. */
@ConfigMapping(prefix = "borewright.hook")
public interface HookSettings {

    /** How long a receiver may take for a message. */
    @WithDefault("10s")
    Duration patience();
}
