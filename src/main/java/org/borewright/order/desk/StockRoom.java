package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.borewright.catalog.store.Stock;
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
     * Lays so many of a number on the shelf, and puts aside at once what orders wait for, the oldest first.
     *
     * @return how many are left, without those put aside; empty where the shelf has no place for the number
     */
    public OptionalInt receive(String number, int count, String by) {
        stock.hold(List.of(number));
        int before = stock.left(number);
        if (!stock.receive(number, count)) {
            return OptionalInt.empty();
        }
        for (ReservationRow waiting : ReservationRow.waitingFor(number)) {
            int now = Math.min(waiting.toCome, stock.left(number));
            if (now > 0 && stock.putAside(number, now)) {
                waiting.putAside += now;
                waiting.toCome -= now;
            }
        }
        int left = stock.left(number);
        turn.write(
                by,
                "stock " + number,
                null,
                "receive",
                String.format(Locale.ROOT, "%d left", before),
                String.format(Locale.ROOT, "%d arrived, %d left", count, left),
                true);
        return OptionalInt.of(left);
    }
}
