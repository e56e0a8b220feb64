package org.borewright.catalog.store;

import io.quarkus.hibernate.orm.panache.Panache;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.borewright.catalog.store.row.StockRow;

/**
 * What lies on the shelf, and what of it is put aside. Each change is one statement with its own condition, so that no two machines can put
 * aside the same piece; who changes several numbers takes one after the other, sorted as Java sorts them, so that no two wait for each
 * other. Databases sort each in a way of its own, and are not asked to.
 */
@ApplicationScoped
public class Stock {

    /**
     * A place on the shelf.
     *
     * @param number of a box or loose part
     * @param onHand how many lie there
     * @param putAside how many of them are put aside
     * @param leadDays how many days more of them take; empty when no more can be had
     */
    public record Place(String number, int onHand, int putAside, OptionalInt leadDays) {}

    /** The place of a number; empty where the shelf has none. */
    public Optional<Place> place(String number) {
        return StockRow.<StockRow>findByIdOptional(number).map(Stock::place);
    }

    /** Every place of the shelf, by number. */
    public List<Place> places() {
        return StockRow.<StockRow>listAll().stream()
                .map(Stock::place)
                .sorted(Comparator.comparing(Place::number))
                .toList();
    }

    private static Place place(StockRow row) {
        return new Place(
                row.number,
                row.onHand,
                row.reserved,
                row.leadDays == null ? OptionalInt.empty() : OptionalInt.of(row.leadDays));
    }

    /** Puts so many aside. @return whether so many were left */
    public boolean putAside(String number, int count) {
        return changed(
                "update StockRow set reserved = reserved + :count where number = :number and onHand - reserved >= :count",
                number,
                count);
    }

    /** Puts aside as many as are left of a number that is held, and so many at the most. @return how many */
    public int putAsideUpTo(String number, int count) {
        int now = Math.min(count, left(number));
        need(now == 0 || putAside(number, now), number);
        return now;
    }

    /** Puts so many back that were put aside. @throws IllegalStateException if fewer were */
    public void putBack(String number, int count) {
        need(
                changed(
                        "update StockRow set reserved = reserved - :count where number = :number and reserved >= :count",
                        number,
                        count),
                number);
    }

    /** Takes so many off the shelf that were put aside. @throws IllegalStateException if fewer were */
    public void handOut(String number, int count) {
        need(
                changed(
                        "update StockRow set reserved = reserved - :count, onHand = onHand - :count"
                                + " where number = :number and reserved >= :count",
                        number,
                        count),
                number);
    }

    /** Lays so many on the shelf. @return whether the shelf has a place for the number */
    public boolean receive(String number, int count) {
        return changed("update StockRow set onHand = onHand + :count where number = :number", number, count);
    }

    /** How many of a number are left; none where the shelf has no place for it. */
    public int left(String number) {
        return Panache.getEntityManager()
                .createQuery("select onHand - reserved from StockRow where number = :number", Integer.class)
                .setParameter("number", number)
                .getResultStream()
                .findFirst()
                .orElse(0);
    }

    /** Keeps others from changing a number until this transaction ends. */
    public void hold(String number) {
        Panache.getEntityManager()
                .createQuery("from StockRow where number = :number", StockRow.class)
                .setParameter("number", number)
                .setLockMode(LockModeType.PESSIMISTIC_WRITE)
                .getResultList();
    }

    private static boolean changed(String statement, String number, int count) {
        return Panache.getEntityManager()
                        .createQuery(statement)
                        .setParameter("number", number)
                        .setParameter("count", count)
                        .executeUpdate()
                == 1;
    }

    private static void need(boolean done, String number) {
        if (!done) {
            throw new IllegalStateException("more of " + number + " were to go than there were");
        }
    }
}
