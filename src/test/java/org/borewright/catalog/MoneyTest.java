package org.borewright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The decimals of a currency: ISO 4217, two for EUR, none for JPY, three for KWD; XAU has no minor unit. */
class MoneyTest {

    private static Money money(String amount, String currency) {
        return new Money(new BigDecimal(amount), Currency.getInstance(currency));
    }

    @ParameterizedTest
    @CsvSource({
        "40, EUR, 40.00, 4000",
        "40.5000, EUR, 40.50, 4050",
        "1E+3, JPY, 1000, 1000",
        "0.125, KWD, 0.125, 125",
        "0, EUR, 0.00, 0"
    })
    void anAmountHasTheDecimalsOfItsCurrency(String typed, String currency, BigDecimal kept, long minorUnits) {
        assertThat(money(typed, currency).amount()).isEqualTo(kept);
        assertThat(money(typed, currency).minorUnits()).isEqualTo(minorUnits);
    }

    @ParameterizedTest
    @CsvSource({
        "40.001, EUR, 40.001 has more than the 2 decimals of EUR",
        "0.5, JPY, 0.5 has more than the 0 decimals of JPY",
        "1, XAU, XAU has no minor unit"
    })
    void whatNobodyCanPayIsRefused(String typed, String currency, String reason) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> money(typed, currency))
                .withMessage(reason);
    }

    @ParameterizedTest
    @CsvSource({"40.00, 0.50, 4, 42.00", "0.01, 0.01, 100, 1.01", "10, 3.33, 0, 10.00"})
    void aBillAddsUpToTheCent(String first, String each, int count, String total) {
        assertThat(money(first, "EUR").plus(money(each, "EUR").times(count))).isEqualTo(money(total, "EUR"));
    }

    @Test
    void nothingCostsNothingInItsCurrency() {
        assertThat(Money.zero(Currency.getInstance("EUR"))).isEqualTo(money("0", "EUR"));
    }

    @Test
    void twoCurrenciesAreNeverAdded() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> money("1", "EUR").plus(money("1", "JPY")))
                .withMessage("EUR and JPY cannot be added");
    }
}
