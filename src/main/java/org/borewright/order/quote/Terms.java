package org.borewright.order.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.borewright.catalog.Money;

/**
 * What a shop adds to its prices, and how long it stands by them.
 *
 * @param taxPercent on the net sum; 0 where none is raised
 * @param depositPercent of the sum with tax, due with the yes; 0 where none is asked
 * @param validDays a quote holds, the day it was made not counted
 */
public record Terms(BigDecimal taxPercent, BigDecimal depositPercent, int validDays) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** @throws IllegalArgumentException if a share is not from 0 to 100, or a quote would not hold for a day */
    public Terms {
        if (isNoShare(taxPercent) || isNoShare(depositPercent) || validDays < 1) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "tax %s %% and deposit %s %% must be from 0 to 100, and a quote hold a day at least, not %d",
                    taxPercent,
                    depositPercent,
                    validDays));
        }
    }

    private static boolean isNoShare(BigDecimal percent) {
        return percent.signum() < 0 || percent.compareTo(HUNDRED) > 0;
    }

    /** The tax on a net sum: a line of its own, rounded once, half up, to the minor unit of the currency. */
    public Money tax(Money net) {
        return share(net, taxPercent);
    }

    /** The deposit on a sum with tax, likewise; empty where none is asked. */
    public Optional<Money> deposit(Money total) {
        return depositPercent.signum() == 0 ? Optional.empty() : Optional.of(share(total, depositPercent));
    }

    /** The last day a quote made on a day holds. */
    public LocalDate validUntil(LocalDate on) {
        return on.plusDays(validDays);
    }

    private static Money share(Money of, BigDecimal percent) {
        BigDecimal exact = of.amount().multiply(percent).divide(HUNDRED);
        int decimals = of.currency().getDefaultFractionDigits();
        return new Money(exact.setScale(decimals, RoundingMode.HALF_UP), of.currency());
    }
}
