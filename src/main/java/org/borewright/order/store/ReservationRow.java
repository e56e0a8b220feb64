package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;

/** What of a number is put aside for an order, and what is to come. */
@Entity
@Table(name = "reservations")
public class ReservationRow extends PanacheEntityBase {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public long orderNumber;

    public String number;

    /** Of those on the shelf. */
    public int putAside;

    /** Awaited: put aside as soon as they arrive, the oldest order first. */
    public int toCome;

    /** What is held for an order, by number. */
    public static List<ReservationRow> of(long order) {
        return list("orderNumber", Sort.by("number"), order);
    }

    /** What waits for a number, the oldest order first. */
    public static List<ReservationRow> waitingFor(String number) {
        return list("number = ?1 and toCome > 0", Sort.by("orderNumber"), number);
    }

    /** How many of a number all orders wait for. */
    public static long toCome(String number) {
        return waitingFor(number).stream().mapToLong(row -> row.toCome).sum();
    }
}
