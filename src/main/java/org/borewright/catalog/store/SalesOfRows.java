package org.borewright.catalog.store;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Withdrawal;
import org.borewright.catalog.store.row.BoxRow;
import org.borewright.catalog.store.row.PriceRow;
import org.borewright.catalog.store.row.StockRow;
import org.borewright.catalog.store.row.WithdrawnRow;

/** How numbers are sold, from their rows: boxes, withdrawals, prices and stock. */
final class SalesOfRows {

    private SalesOfRows() {}

    static List<Box> boxes(CatalogRows rows) {
        return rows.by(row -> row.box, BoxRow.class).values().stream()
                .map(SalesOfRows::box)
                .toList();
    }

    static Map<PartNumber, Withdrawal> withdrawals(CatalogRows rows) {
        return rows.of(WithdrawnRow.class).stream()
                .map(SalesOfRows::withdrawal)
                .collect(toMap(Withdrawal::number, identity()));
    }

    static Offers offers(CatalogRows rows) {
        Map<String, StockRow> stock = rows.of(StockRow.class).stream().collect(toMap(row -> row.number, identity()));
        return new Offers(rows.of(PriceRow.class).stream()
                .map(row -> offer(row, Optional.ofNullable(stock.get(row.number))))
                .collect(toMap(Offer::number, identity())));
    }

    private static Box box(List<BoxRow> rows) {
        SortedMap<PartNumber, Integer> contents = new TreeMap<>();
        rows.forEach(row -> contents.put(new PartNumber(row.part), row.count));
        return new Box(new PartNumber(rows.get(0).box), rows.get(0).packed, contents);
    }

    private static Withdrawal withdrawal(WithdrawnRow row) {
        return new Withdrawal(
                new PartNumber(row.number),
                row.state,
                Optional.ofNullable(row.replacedBy).map(PartNumber::new),
                row.note);
    }

    private static Offer offer(PriceRow price, Optional<StockRow> stock) {
        OptionalInt leadDays = stock.filter(row -> row.leadDays != null)
                .map(row -> OptionalInt.of(row.leadDays))
                .orElse(OptionalInt.empty());
        return new Offer(
                new PartNumber(price.number),
                price.price,
                stock.map(row -> row.onHand - row.reserved).orElse(0),
                leadDays);
    }
}
