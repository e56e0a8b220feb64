package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.LockModeType;
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.order.OrderKind;
import org.borewright.order.State;
import org.borewright.order.journal.Digest;
import org.borewright.order.journal.Matter;
import org.hibernate.annotations.BatchSize;

/** An order. */
@Entity
@Table(name = "orders")
public class OrderRow extends PanacheEntityBase {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long number;

    /** Counts the changes, from 1: what a change was meant for is told by it. */
    public int version;

    @Enumerated(EnumType.STRING)
    public OrderKind kind;

    @Enumerated(EnumType.STRING)
    public State state;

    /** How the customer is known to the shop. */
    public String customer;

    public String engine;

    /** The shop's own tag on the block, or on all barrels together; none for parts alone. */
    public String block;

    /** The tag of the barrel at each cylinder; none where barrels are not told apart. */
    @ElementCollection
    @CollectionTable(name = "order_barrels", joinColumns = @JoinColumn(name = "order_number"))
    @MapKeyColumn(name = "cylinder")
    @Column(name = "tag")
    @BatchSize(size = 100)
    public Map<String, String> barrels = new HashMap<>();

    public String notes;

    public Instant openedAt;

    public LocalDate openedOn;

    /** The quote that the customer said yes to; none where no yes stands. */
    public Integer acceptedQuote;

    /** The last quote that the customer had said yes to when holes did not clean up; none where that never happened, or was not noted. */
    public Integer quoteGivenUp;

    /** Until when its parts are put aside; empty where nothing is, or it stays so. */
    public Instant heldUntil;

    /**
     * An order that nobody else changes until this transaction ends, as it is from then on: who read it before, and waited while another
     * changed it, must not go by what was read.
     */
    public static Optional<OrderRow> held(long number) {
        Optional<OrderRow> order = findByIdOptional(number);
        order.ifPresent(row -> getEntityManager().refresh(row, LockModeType.PESSIMISTIC_WRITE));
        return order;
    }

    /** The tag of the barrel at each cylinder as one counts: 2 before 10. */
    public SortedMap<String, String> barrelsInTurn() {
        SortedMap<String, String> sorted =
                new TreeMap<>(Comparator.comparing(String::length).thenComparing(Comparator.naturalOrder()));
        sorted.putAll(barrels);
        return sorted;
    }

    /** The tags of what is in the shop for it, in the order they are held. */
    public List<String> tags() {
        return Stream.concat(barrels.values().stream(), Stream.ofNullable(block))
                .sorted(BlockRow.IN_TURN)
                .toList();
    }

    /**
     * What the line of a change speaks of, once the order has gone through it.
     *
     * @param wrote whether papers, quotes or holes were written with it
     */
    public Matter matter(boolean wrote) {
        return Matters.of(this, wrote);
    }

    /**
     * Of the order as it stands, with what is held for it: by number as Java sorts, for every database has an order of its own.
     */
    String digest(List<ReservationRow> held) {
        Digest all = new Digest().whole(number).whole(version).text(kind.name()).text(state.name());
        all.text(customer).text(engine).text(block).text(notes).time(openedAt).maybe(openedOn);
        // None on orders noted before barrels had tags, whose lines were sealed without.
        new TreeMap<>(barrels)
                .forEach((cylinder, tag) -> all.text("barrel").text(cylinder).text(tag));
        all.maybe(acceptedQuote);
        if (quoteGivenUp != null) {
            // None on orders before it was noted, whose lines were sealed without.
            all.text("given up").whole(quoteGivenUp);
        }
        // As a figure: how many decimals a text shows depends on them.
        all.maybe(heldUntil == null ? null : ChronoUnit.MICROS.between(Instant.EPOCH, heldUntil));
        held.stream()
                .sorted(Comparator.comparing(row -> row.number))
                .forEach(row -> all.text(row.number)
                        .whole(row.putAside)
                        .whole(row.toCome)
                        .maybe(row.expectedOn));
        return all.hex();
    }

    /**
     * Which orders are looked for; what is empty excludes none.
     *
     * @param state where they stand
     * @param engine its code
     * @param customer exactly as noted
     * @param block its tag or that of one of its barrels, whatever its case
     * @param from the first day
     * @param to the last day
     * @param after the number they follow
     */
    public record Sought(
            Optional<State> state,
            Optional<String> engine,
            Optional<String> customer,
            Optional<String> block,
            Optional<LocalDate> from,
            Optional<LocalDate> to,
            long after) {

        private Map<String, Object> values() {
            Map<String, Object> values = new LinkedHashMap<>();
            values.put("after", after);
            state.ifPresent(value -> values.put("state", value));
            engine.ifPresent(value -> values.put("engine", value));
            customer.ifPresent(value -> values.put("customer", value));
            block.ifPresent(value -> values.put(
                    "block", BlockRow.bearing(value).map(row -> row.tag).orElse(value)));
            from.ifPresent(value -> values.put("from", value));
            to.ifPresent(value -> values.put("to", value));
            return values;
        }

        private static String condition(String name) {
            return switch (name) {
                case "after" -> "number > :after";
                case "block" -> "(block = :block or :block in elements(barrels))";
                case "from" -> "openedOn >= :from";
                case "to" -> "openedOn <= :to";
                default -> name + " = :" + name;
            };
        }
    }

    /** So many orders at the most, by number. */
    public static List<OrderRow> sought(Sought sought, int most) {
        Map<String, Object> values = sought.values();
        String query = values.keySet().stream().map(Sought::condition).collect(Collectors.joining(" and "));
        return OrderRow.<OrderRow>find(query, Sort.by("number"), values)
                .page(0, most)
                .list();
    }

    /** So many orders at the most, the latest first. */
    public static List<OrderRow> latest(int most) {
        return OrderRow.<OrderRow>findAll(Sort.descending("number"))
                .page(0, most)
                .list();
    }

    /** The numbers of the orders whose parts are put aside no longer than this. */
    public static List<Long> runOut(Instant now) {
        return getEntityManager()
                .createQuery("select number from OrderRow where heldUntil <= :now order by number", Long.class)
                .setParameter("now", now)
                .getResultList();
    }
}
