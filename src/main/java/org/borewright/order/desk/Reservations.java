package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.borewright.catalog.store.Stock;
import org.borewright.order.Lacking;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.store.QuotePartRow;
import org.borewright.order.store.ReservationRow;

/** What is put aside for orders: all that a quote needs, or nothing. */
@ApplicationScoped
class Reservations {

    private final Stock stock;

    Reservations(Stock stock) {
        this.stock = stock;
    }

    /**
     * Puts aside what a quote needs, in place of what is put aside for the order already.
     *
     * @param mayWait whether the customer waits for what can be had but is not there
     * @throws RefusedException if something is short; all is then to be rolled back
     */
    void put(long order, List<QuotePartRow> wanted, boolean mayWait) {
        Map<String, ReservationRow> held = held(order);
        Map<String, Integer> wants = new TreeMap<>();
        held.keySet().forEach(number -> wants.put(number, 0));
        wanted.forEach(part -> wants.put(part.number, part.quantity));
        List<Lacking> lacking = new ArrayList<>();
        wants.forEach((number, count) -> {
            ReservationRow row = held.computeIfAbsent(number, fresh -> fresh(order, fresh));
            change(row, count, mayWait, lacking);
        });
        if (!lacking.isEmpty()) {
            throw new RefusedException(new Refusal.TooFew(order, lacking, mayWait));
        }
        held.values().forEach(Reservations::keep);
    }

    private void change(ReservationRow row, int count, boolean mayWait, List<Lacking> lacking) {
        row.toCome = 0;
        int more = count - row.putAside;
        if (more <= 0) {
            putBack(row, -more);
            return;
        }
        if (stock.putAside(row.number, more)) {
            row.putAside = count;
            return;
        }
        stock.hold(List.of(row.number));
        int left = stock.left(row.number);
        boolean canBeHad = stock.place(row.number)
                .filter(place -> place.leadDays().isPresent())
                .isPresent();
        if (!mayWait || !canBeHad) {
            lacking.add(new Lacking(row.number, more, left, canBeHad));
        } else {
            int now = Math.min(left, more);
            if (now > 0 && !stock.putAside(row.number, now)) {
                throw new IllegalStateException(row.number + " was taken while it was held");
            }
            row.putAside += now;
            row.toCome = more - now;
        }
    }

    /** Puts back all that is put aside for an order. @return whether there was anything */
    boolean putBack(long order) {
        List<ReservationRow> rows = List.copyOf(held(order).values());
        rows.forEach(row -> putBack(row, row.putAside));
        rows.forEach(ReservationRow::delete);
        return !rows.isEmpty();
    }

    /** Takes all of it off the shelf. @throws RefusedException if some of it has not come yet */
    void handOut(long order) {
        List<ReservationRow> rows = List.copyOf(held(order).values());
        needAllHere(order, rows);
        rows.forEach(row -> stock.handOut(row.number, row.putAside));
        rows.forEach(ReservationRow::delete);
    }

    /** @throws RefusedException if something that is put aside for the order has not come yet */
    void needAllHere(long order) {
        needAllHere(order, ReservationRow.of(order));
    }

    private static void needAllHere(long order, List<ReservationRow> rows) {
        List<Lacking> toCome = rows.stream()
                .filter(row -> row.toCome > 0)
                .map(row -> new Lacking(row.number, row.putAside + row.toCome, row.putAside, true))
                .toList();
        if (!toCome.isEmpty()) {
            throw new RefusedException(new Refusal.StillToCome(order, toCome));
        }
    }

    /** What an order holds, in words. */
    static String says(long order) {
        return ReservationRow.of(order).stream()
                .map(row ->
                        row.number + " × " + row.putAside + (row.toCome > 0 ? " and " + row.toCome + " to come" : ""))
                .collect(Collectors.joining(", "));
    }

    /** By number; held, so that nothing arrives for it meanwhile. */
    private Map<String, ReservationRow> held(long order) {
        List<ReservationRow> known = ReservationRow.of(order);
        stock.hold(known.stream().map(row -> row.number).toList());
        Map<String, ReservationRow> rows = new TreeMap<>();
        for (ReservationRow row : known) {
            ReservationRow.getEntityManager().refresh(row);
            rows.put(row.number, row);
        }
        return rows;
    }

    private void putBack(ReservationRow row, int count) {
        if (count > 0) {
            stock.putBack(row.number, count);
            row.putAside -= count;
        }
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
