package org.borewright.api.shown;

import java.math.BigDecimal;
import org.borewright.catalog.Money;

/**
 * Money on the wire.
 *
 * @param amount with the decimals of its currency
 * @param currency ISO 4217 code
 */
public record ShownMoney(BigDecimal amount, String currency) {

    /** An amount. */
    public static ShownMoney of(Money money) {
        return new ShownMoney(money.amount(), money.currency().getCurrencyCode());
    }
}
