package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.PessimisticLockException;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.borewright.catalog.store.Stock;
import org.borewright.order.journal.Deed;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.ReservationRow;

/** Lays on the shelf what arrives. */
@ApplicationScoped
@Transactional
public class StockRoom {

    private final Turn turn;
    private final Stock stock;

    StockRoom(Turn turn, Stock stock) {
        this.turn = turn;
        this.stock = stock;
    }

    /**
     * Lays so many of a number on the shelf, and puts aside at once what orders wait for, the oldest first. Orders are held before the shelf,
     * as everywhere; one that begins to wait in between ends the errand, which may then be done again.
     *
     * @return how many are left, without those put aside; empty where the shelf has no place for the number
     */
    public OptionalInt receive(String number, int count, String by) {
        Map<Long, OrderRow> waiting = new TreeMap<>();
        ReservationRow.waitingFor(number).stream()
                .map(row -> row.orderNumber)
                .forEach(order -> waiting.put(order, OrderRow.held(order).orElseThrow()));
        stock.hold(List.of(number));
        int before = stock.left(number);
        if (!stock.receive(number, count)) {
            return OptionalInt.empty();
        }
        for (ReservationRow row : ReservationRow.waitingFor(number)) {
            if (!waiting.containsKey(row.orderNumber)) {
                throw new PessimisticLockException(
                        "order " + row.orderNumber + " began to wait for " + number + " meanwhile");
            }
            ReservationRow.getEntityManager().refresh(row);
            int now = Math.min(row.toCome, stock.left(number));
            if (now > 0 && stock.putAside(number, now)) {
                row.putAside += now;
                row.toCome -= now;
                OrderRow order = waiting.get(row.orderNumber);
                turn.note(order, order.state, "parts arrived", new Turn.Done(by, number + " × " + now, true));
            }
        }
        int left = stock.left(number);
        turn.write(new Deed(
                by,
                "stock " + number,
                Optional.empty(),
                "arrive",
                String.format(Locale.ROOT, "%d left", before),
                String.format(Locale.ROOT, "%d arrived, %d left", count, left),
                true));
        return OptionalInt.of(left);
    }
}
