package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.PessimisticLockException;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.borewright.catalog.store.Stock;
import org.borewright.order.journal.Deed;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.ReservationRow;

/**
 * What comes to lie free on the shelf, brought to the shop or put back by an order, goes to the orders that wait for it in the same
 * transaction, the oldest first: nobody who comes later finds it there.
 *
 * <p>They are orders beside the one that is moved, and all of them are held before the shelf, by number. Who waits is therefore looked for
 * first, and asked again once the shelf is held; where somebody began to wait in between the errand ends, and may be done again.
 */
@ApplicationScoped
@Transactional
public class StockRoom {

    /**
     * What came of an arrival.
     *
     * @param left on the shelf, without those put aside
     * @param givenTo how many each order got that waited for them, by its number
     */
    public record Arrived(int left, SortedMap<Long, Integer> givenTo) {

        /** Copies the map. */
        public Arrived {
            givenTo = Collections.unmodifiableSortedMap(new TreeMap<>(givenTo));
        }
    }

    private final Turn turn;
    private final Stock stock;
    private final Reservations reservations;

    StockRoom(Turn turn, Stock stock, Reservations reservations) {
        this.turn = turn;
        this.stock = stock;
        this.reservations = reservations;
    }

    /**
     * Lays so many of a number on the shelf.
     *
     * @return empty where the shelf has no place for the number
     */
    public Optional<Arrived> receive(String number, int count, String by) {
        Set<Long> line = new TreeSet<>();
        inLine(number, count).forEach(row -> line.add(row.orderNumber));
        line.forEach(OrderRow::held);
        stock.hold(number);
        int before = stock.left(number);
        if (!stock.receive(number, count)) {
            return Optional.empty();
        }
        SortedMap<Long, Integer> givenTo = giveOn(line, List.of(number), by, "arrived");
        int left = stock.left(number);
        turn.write(new Deed(
                by,
                "stock " + number,
                Optional.empty(),
                "arrive",
                String.format(Locale.ROOT, "%d left", before),
                String.format(Locale.ROOT, "%d arrived, %d left", count, left),
                true,
                Optional.empty()));
        return Optional.of(new Arrived(left, givenTo));
    }

    /** Holds an order, and with it those that wait for what is put aside for it. @return the numbers of all of them */
    Set<Long> holdWithThoseBehind(long order) {
        Set<Long> line = new TreeSet<>(Set.of(order));
        ReservationRow.of(order).stream()
                .flatMap(row -> inLine(row.number, row.putAside).stream())
                .forEach(row -> line.add(row.orderNumber));
        line.forEach(OrderRow::held);
        return line;
    }

    /** What waits for a number, the oldest order first, as far as it would go round if so many more lay free. */
    private List<ReservationRow> inLine(String number, int more) {
        int free = more + stock.left(number);
        return free == 0 ? List.of() : ReservationRow.waitingFor(number, free);
    }

    /**
     * Puts what lies free aside for those that wait for it.
     *
     * @param line the orders that are held
     * @param numbers held too
     * @param whence it came
     * @return how many parts each got, by its number
     */
    SortedMap<Long, Integer> giveOn(Set<Long> line, Collection<String> numbers, String by, String whence) {
        SortedMap<Long, List<String>> given = new TreeMap<>();
        SortedMap<Long, Integer> counts = new TreeMap<>();
        for (String number : numbers) {
            for (ReservationRow row : inLine(number, 0)) {
                if (!line.contains(row.orderNumber)) {
                    throw new PessimisticLockException(
                            "order " + row.orderNumber + " began to wait for " + number + " meanwhile");
                }
                int got = reservations.give(row);
                if (got > 0) {
                    given.computeIfAbsent(row.orderNumber, first -> new ArrayList<>())
                            .add(number + " × " + got);
                    counts.merge(row.orderNumber, got, Integer::sum);
                }
            }
        }
        given.forEach((order, parts) -> tell(order, String.join(", ", parts) + ", " + whence, by));
        return counts;
    }

    private void tell(long number, String says, String by) {
        OrderRow order = OrderRow.findById(number);
        order.heldUntil = reservations.heldUntil(number).orElse(null);
        turn.note(order, order.state, "put aside", new Turn.Done(by, says, true));
    }
}
