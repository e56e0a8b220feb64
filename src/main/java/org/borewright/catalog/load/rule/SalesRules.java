package org.borewright.catalog.load.rule;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.borewright.catalog.Money;
import org.borewright.catalog.store.row.CatalogRow;
import org.borewright.catalog.store.row.PriceRow;
import org.borewright.catalog.store.row.ShopOperationRow;
import org.borewright.catalog.store.row.WithdrawnRow;

/** What withdrawals and prices owe each other. */
final class SalesRules {

    private final Examination examination;

    private SalesRules(Examination examination) {
        this.examination = examination;
    }

    static void check(Examination examination) {
        SalesRules rules = new SalesRules(examination);
        rules.replacements();
        rules.oneCurrency();
    }

    /** Whoever orders a number that was replaced must arrive at one that was not. */
    private void replacements() {
        Map<String, String> next = examination.rows(WithdrawnRow.class).stream()
                .filter(row -> row.replacedBy != null)
                .collect(toMap(row -> row.number, row -> row.replacedBy));
        for (WithdrawnRow row : examination.rows(WithdrawnRow.class)) {
            List<String> chain = new ArrayList<>(List.of(row.number));
            for (String number = next.get(row.number); number != null; number = next.get(number)) {
                boolean again = chain.contains(number);
                chain.add(number);
                if (number.equals(row.number)) {
                    examination.bad(row, "replaced_by", Duty.NO_CIRCLE, String.join(", ", chain));
                }
                if (again) {
                    break;
                }
            }
        }
    }

    private void oneCurrency() {
        List<Priced> prices = Stream.concat(
                        examination.rows(ShopOperationRow.class).stream().map(row -> new Priced(row, row.price)),
                        examination.rows(PriceRow.class).stream().map(row -> new Priced(row, row.price)))
                .toList();
        prices.stream()
                .filter(priced -> !priced.currency().equals(prices.get(0).currency()))
                .forEach(priced -> examination.bad(
                        priced.row(), "currency", Duty.CURRENCY, prices.get(0).currency()));
    }

    private record Priced(CatalogRow row, Money price) {

        Currency currency() {
            return price.currency();
        }
    }
}
