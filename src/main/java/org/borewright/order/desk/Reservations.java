package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.borewright.catalog.store.Stock;
import org.borewright.order.Awaited;
import org.borewright.order.Lacking;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.store.QuotePartRow;
import org.borewright.order.store.ReservationRow;

/**
 * What is put aside for orders: all that a quote needs, or nothing. What stands in these rows is changed by whoever holds the order, and the
 * numbers of the shelf are taken one after the other, sorted.
 */
@ApplicationScoped
class Reservations {

    private final Stock stock;
    private final OrderSettings settings;
    private final Clock clock;

    Reservations(Stock stock, OrderSettings settings, Clock clock) {
        this.stock = stock;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * Puts aside what a quote needs, in place of what is put aside for the order already.
     *
     * @param mayWait whether the customer waits for what can be had but is not there
     * @return the numbers of which something was put back
     * @throws RefusedException if something is short; all is then to be rolled back
     */
    Set<String> put(long order, List<QuotePartRow> wanted, boolean mayWait) {
        Map<String, ReservationRow> held = held(order);
        Map<String, Integer> wants = new TreeMap<>();
        held.keySet().forEach(number -> wants.put(number, 0));
        wanted.forEach(part -> wants.put(part.number, part.quantity));
        Set<String> free = new TreeSet<>();
        List<Lacking> lacking = new ArrayList<>();
        wants.forEach((number, count) -> {
            ReservationRow row = held.computeIfAbsent(number, fresh -> fresh(order, fresh));
            if (row.putAside > count) {
                putBack(row, row.putAside - count);
                free.add(number);
            }
            add(row, count - row.putAside, mayWait, lacking);
        });
        if (!lacking.isEmpty()) {
            throw new RefusedException(new Refusal.TooFew(order, lacking, mayWait));
        }
        held.values().forEach(Reservations::keep);
        return free;
    }

    private void add(ReservationRow row, int more, boolean mayWait, List<Lacking> lacking) {
        if (more == 0) {
            return;
        }
        if (stock.putAside(row.number, more)) {
            row.putAside += more;
            return;
        }
        stock.hold(row.number);
        OptionalInt leadDays =
                stock.place(row.number).map(Stock.Place::leadDays).orElse(OptionalInt.empty());
        if (!mayWait || leadDays.isEmpty()) {
            lacking.add(new Lacking(row.number, more, stock.left(row.number), leadDays.isPresent()));
        } else {
            int now = stock.putAsideUpTo(row.number, more);
            row.putAside += now;
            row.toCome = more - now;
            row.expectedOn = LocalDate.now(clock).plusDays(leadDays.getAsInt());
        }
    }

    /** Puts back all that is put aside for an order. @return the numbers of which there was something */
    Set<String> putBack(long order) {
        SortedMap<String, ReservationRow> rows = held(order);
        Set<String> free = new TreeSet<>();
        rows.values().stream().filter(row -> row.putAside > 0).forEach(row -> {
            putBack(row, row.putAside);
            free.add(row.number);
        });
        rows.values().forEach(ReservationRow::delete);
        return free;
    }

    /** Puts aside for an order that waits what lies free. Order and number are held. @return how many */
    int give(ReservationRow row) {
        ReservationRow.getEntityManager().refresh(row);
        int now = stock.putAsideUpTo(row.number, row.toCome);
        row.putAside += now;
        row.toCome -= now;
        row.expectedOn = row.toCome > 0 ? row.expectedOn : null;
        return now;
    }

    /** Lets an order wait no longer for what has not come. @return whether something is put aside for it still */
    boolean waitNoLonger(long order) {
        Collection<ReservationRow> rows = held(order).values();
        rows.forEach(row -> {
            row.toCome = 0;
            row.expectedOn = null;
            keep(row);
        });
        return rows.stream().anyMatch(row -> row.putAside > 0);
    }

    /** The end of the time that parts stay put aside, if it begins now. */
    Instant fromNow() {
        return clock.instant().plus(settings.heldFor());
    }

    /**
     * Until when what is put aside for an order with the customer's yes stays so, which is not confirmed yet: without end while something is
     * to come, for nobody can confirm it. What was confirmed before holes did not clean up was another job.
     */
    Optional<Instant> heldUntil(long order) {
        return ReservationRow.waits(order) ? Optional.empty() : Optional.of(fromNow());
    }

    /** Takes all of it off the shelf. @throws RefusedException if some of it has not come yet */
    void handOut(long order) {
        Collection<ReservationRow> rows = held(order).values();
        needAllHere(order, rows);
        rows.forEach(row -> stock.handOut(row.number, row.putAside));
        rows.forEach(ReservationRow::delete);
    }

    /** @throws RefusedException if something that is put aside for the order has not come yet */
    void needAllHere(long order) {
        needAllHere(order, ReservationRow.of(order));
    }

    private static void needAllHere(long order, Collection<ReservationRow> rows) {
        List<Awaited> awaited = rows.stream()
                .filter(row -> row.toCome > 0)
                .map(row -> new Awaited(row.number, row.toCome, Optional.ofNullable(row.expectedOn)))
                .toList();
        if (!awaited.isEmpty()) {
            throw new RefusedException(new Refusal.StillToCome(order, awaited));
        }
    }

    /** What an order holds, in words. */
    static String says(long order) {
        return ReservationRow.of(order).stream()
                .map(row ->
                        row.number + " × " + row.putAside + (row.toCome > 0 ? " and " + row.toCome + " to come" : ""))
                .collect(Collectors.joining(", "));
    }

    /** By number, as they are since the order is held. */
    private static SortedMap<String, ReservationRow> held(long order) {
        SortedMap<String, ReservationRow> rows = new TreeMap<>();
        for (ReservationRow row : ReservationRow.of(order)) {
            ReservationRow.getEntityManager().refresh(row);
            rows.put(row.number, row);
        }
        return rows;
    }

    private void putBack(ReservationRow row, int count) {
        stock.putBack(row.number, count);
        row.putAside -= count;
    }

    private static ReservationRow fresh(long order, String number) {
        ReservationRow row = new ReservationRow();
        row.orderNumber = order;
        row.number = number;
        return row;
    }

    private static void keep(ReservationRow row) {
        if (row.putAside + row.toCome == 0) {
            if (row.isPersistent()) {
                row.delete();
            }
        } else {
            row.persist();
        }
    }
}
