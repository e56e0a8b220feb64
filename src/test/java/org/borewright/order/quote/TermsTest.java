package org.borewright.order.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import org.borewright.catalog.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tax, deposit and the days a quote holds. */
class TermsTest {

    /** Half a minor unit goes up, as is commercial practice; a currency without decimals rounds to whole units (ISO 4217: JPY). */
    @ParameterizedTest
    @CsvSource({
        "EUR, 939.70, 19,   178.54",
        "EUR, 0.50,   19,   0.10",
        "EUR, 0.45,   10,   0.05",
        "EUR, 0.44,   10,   0.04",
        "EUR, 100.00, 8.1,  8.10",
        "EUR, 100.00, 0,    0.00",
        "EUR, 100.00, 100,  100.00",
        "JPY, 1005,   10,   101",
        "JPY, 1004,   10,   100",
        "KWD, 1.005,  10,   0.101",
    })
    void taxIsRoundedOnceToTheMinorUnit(String currency, BigDecimal net, BigDecimal percent, BigDecimal tax) {
        Terms terms = new Terms(percent, BigDecimal.ZERO, 30);

        assertThat(terms.tax(money(net, currency))).isEqualTo(money(tax, currency));
    }

    @Test
    void aDepositIsAShareOfTheSumWithTax() {
        Terms terms = new Terms(new BigDecimal("20"), new BigDecimal("30"), 30);

        assertThat(terms.deposit(money(new BigDecimal("120.05"), "EUR")))
                .contains(money(new BigDecimal("36.02"), "EUR"));
    }

    @Test
    void noDepositIsAskedWhereNoneIsConfigured() {
        assertThat(new Terms(BigDecimal.TEN, BigDecimal.ZERO, 30).deposit(money(BigDecimal.TEN, "EUR")))
                .isEmpty();
    }

    @Test
    void aQuoteHoldsSoManyDaysAfterTheDayItWasMade() {
        assertThat(new Terms(BigDecimal.ZERO, BigDecimal.ZERO, 30).validUntil(LocalDate.of(2028, 1, 30)))
                .isEqualTo(LocalDate.of(2028, 2, 29));
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0, 1", "100.1, 0, 1", "0, -1, 1", "0, 101, 1", "0, 0, 0"})
    void noShopHasSuchTerms(BigDecimal tax, BigDecimal deposit, int days) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Terms(tax, deposit, days));
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 1", "100, 100, 1"})
    void theLeastAndTheMostThatAShopMayAdd(BigDecimal tax, BigDecimal deposit, int days) {
        assertThat(new Terms(tax, deposit, days).validUntil(LocalDate.of(2026, 3, 2)))
                .isEqualTo(LocalDate.of(2026, 3, 3));
    }

    private static Money money(BigDecimal amount, String currency) {
        return new Money(amount, Currency.getInstance(currency));
    }
}
