package org.borewright.order.desk;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import org.borewright.order.quote.Terms;

/** What a shop decides for itself. */
@ConfigMapping(prefix = "borewright.order")
public interface OrderSettings {

    /** How the shop calls itself on paper, as on a quote; no line where it is left out. */
    Optional<String> shopName();

    /** Tax on the net sum, in per cent. */
    @WithDefault("0")
    BigDecimal taxPercent();

    /** Due with the customer's yes, in per cent of the sum with tax. */
    @WithDefault("0")
    BigDecimal depositPercent();

    /** The days a quote holds. */
    @WithDefault("30")
    int quoteValidDays();

    /** How long parts stay put aside for an accepted order that is not confirmed. */
    @WithDefault("14D")
    Duration heldFor();

    /** How long an answer is kept for a request that is sent again with the same key. */
    @WithDefault("30D")
    Duration keysKeptFor();

    /** How often parts that were put aside too long are looked for. */
    Duration looksEvery();

    /** The terms of a quote. */
    default Terms terms() {
        return new Terms(taxPercent(), depositPercent(), quoteValidDays());
    }
}
