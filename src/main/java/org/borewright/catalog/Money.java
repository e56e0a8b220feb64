package org.borewright.catalog;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;

/**
 * An amount of money in whole minor units of its currency (ISO 4217).
 *
 * @param amount with the currency's own number of decimals
 * @param currency never a fund or metal without minor units
 */
public record Money(BigDecimal amount, Currency currency) {

    /** @throws IllegalArgumentException if the amount has more decimals than the currency has */
    public Money {
        int digits = currency.getDefaultFractionDigits();
        if (digits < 0) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s has no minor unit", currency));
        }
        if (amount.stripTrailingZeros().scale() > digits) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s has more than the %d decimals of %s", amount.toPlainString(), digits, currency));
        }
        amount = amount.setScale(digits, RoundingMode.UNNECESSARY);
    }

    /** Nothing, in a currency. */
    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /** The sum. @throws IllegalArgumentException if the currencies differ */
    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s and %s cannot be added", currency, other.currency));
        }
        return new Money(amount.add(other.amount), currency);
    }

    /** The amount in minor units: cents of a euro. */
    public long minorUnits() {
        return amount.unscaledValue().longValueExact();
    }

    /** So many times the amount; exact. */
    public Money times(int count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }
}
