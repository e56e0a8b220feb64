package org.borewright.catalog.load.table;

import static org.borewright.catalog.load.sheet.CellTypes.LONG_TEXT;
import static org.borewright.catalog.load.sheet.CellTypes.NUMBER;
import static org.borewright.catalog.load.sheet.CellTypes.wholes;
import static org.borewright.catalog.load.sheet.CellTypes.words;
import static org.borewright.catalog.load.sheet.SheetRule.filledWhen;
import static org.borewright.catalog.load.sheet.SheetRule.refers;
import static org.borewright.catalog.load.sheet.SheetRule.unique;

import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Withdrawal.State;
import org.borewright.catalog.load.sheet.CellType;
import org.borewright.catalog.store.row.BoxRow;
import org.borewright.catalog.store.row.PriceRow;
import org.borewright.catalog.store.row.StockRow;
import org.borewright.catalog.store.row.WithdrawnRow;

/** The files that say how numbers are sold. */
final class SalesTables {

    private static final CellType<Box.Kind> PACKED = words(
            Stream.of(Box.Kind.values()).filter(kind -> kind != Box.Kind.LOOSE).toArray(Box.Kind[]::new),
            Box.Kind::label);

    private SalesTables() {}

    static Table<BoxRow> boxes() {
        return Table.of("boxes.csv", BoxRow::new)
                .needed("box", NUMBER, (row, number) -> row.box = number)
                .needed("packed", PACKED, (row, kind) -> row.packed = kind)
                .needed("part", NUMBER, (row, number) -> row.part = number)
                .needed("count", wholes(1, 1000), (row, count) -> row.count = count)
                .rule(unique("box", "part"));
    }

    static Table<WithdrawnRow> withdrawn() {
        return Table.of("withdrawn.csv", WithdrawnRow::new)
                .needed("number", NUMBER, (row, number) -> row.number = number)
                .needed("state", words(State.values(), State::label), (row, state) -> row.state = state)
                .maybe("replaced_by", NUMBER, (row, number) -> row.replacedBy = number)
                .needed("note", LONG_TEXT, (row, words) -> row.note = words)
                .rule(unique("number"))
                .rule(filledWhen("replaced_by", "state", State.REPLACED.label()));
    }

    static Table<PriceRow> prices() {
        return Table.of("prices.csv", PriceRow::new)
                .needed("number", NUMBER, (row, number) -> row.number = number)
                .column(Column.price((row, price) -> row.price = price))
                .rule(unique("number"));
    }

    static Table<StockRow> stock() {
        return Table.of("stock.csv", StockRow::new)
                .needed("number", NUMBER, (row, number) -> row.number = number)
                .needed("on_hand", wholes(0, 1_000_000), (row, count) -> row.onHand = count)
                .maybe("lead_days", wholes(0, 10_000), (row, days) -> row.leadDays = days)
                .rule(unique("number"))
                .rule(refers("prices.csv", "number"));
    }
}
