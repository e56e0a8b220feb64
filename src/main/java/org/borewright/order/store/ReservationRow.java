package org.borewright.order.store;

import static java.util.stream.Collectors.toMap;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

    /** Awaited: put aside as soon as they lie free, the oldest order first. */
    public int toCome;

    /** The day by which those to come were to be here when the order began to wait; none where nothing is, or that is not known. */
    public LocalDate expectedOn;

    /** What is held for an order, by number. */
    public static List<ReservationRow> of(long order) {
        return list("orderNumber", Sort.by("number"), order);
    }

    /** So many of those that wait for a number, the oldest order first. */
    public static List<ReservationRow> waitingFor(String number, int most) {
        return ReservationRow.<ReservationRow>find("number = ?1 and toCome > 0", Sort.by("orderNumber"), number)
                .page(0, most)
                .list();
    }

    /** How many of each number orders wait for; a number that none waits for is left out. */
    public static Map<String, Long> toCome() {
        return getEntityManager()
                .createQuery(
                        "select number, sum(toCome) from ReservationRow where toCome > 0 group by number",
                        Object[].class)
                .getResultStream()
                .collect(toMap(awaited -> (String) awaited[0], awaited -> (Long) awaited[1]));
    }

    /** How many of a number all orders wait for. */
    public static long toCome(String number) {
        return getEntityManager()
                .createQuery("select coalesce(sum(toCome), 0) from ReservationRow where number = :number", Long.class)
                .setParameter("number", number)
                .getSingleResult();
    }

    /** Whether an order waits for something. */
    public static boolean waits(long order) {
        return !waiting(List.of(order)).isEmpty();
    }

    /** Those of these orders that wait for something. */
    public static Set<Long> waiting(Collection<Long> orders) {
        return new HashSet<>(getEntityManager()
                .createQuery(
                        "select orderNumber from ReservationRow where toCome > 0 and orderNumber in :orders",
                        Long.class)
                .setParameter("orders", orders)
                .getResultList());
    }
}
