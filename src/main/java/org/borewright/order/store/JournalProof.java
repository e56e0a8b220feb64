package org.borewright.order.store;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongPredicate;
import java.util.stream.LongStream;
import org.borewright.order.journal.Verification;
import org.jspecify.annotations.Nullable;

/**
 * The journal proven up to the head that it has at the beginning: each line from the line before, what was written with it from the rows as
 * they lie there now, and each order from the last line that speaks of it. It is read in pages, each in a transaction of its own, while orders
 * move on.
 */
public final class JournalProof {

    /** With each may come a paper of a million characters. */
    private static final int LINES = 20;

    private static final int ORDERS = 100;

    /**
     * Where the journal is to end.
     *
     * @param position of the last line, as its head says
     * @param seal of that line, likewise
     * @param last the position of the last line there is
     */
    private record End(long position, String seal, long last) {

        /** Of a journal that has lost its head: no line is the last. */
        private static final End NONE = new End(Long.MAX_VALUE / 2, "", 0);

        /** Both in one statement, for lines are added meanwhile. */
        static End now() {
            return tables().createQuery(
                            "select head.position, head.seal, (select coalesce(max(line.position), 0L) from JournalRow line)"
                                    + " from JournalHead head",
                            Object[].class)
                    .getResultStream()
                    .map(found -> new End((Long) found[0], (String) found[1], (Long) found[2]))
                    .findFirst()
                    .orElse(NONE);
        }
    }

    private JournalProof() {}

    /** Proves the lines there are now. */
    public static Verification now() {
        End end = QuarkusTransaction.requiringNew().call(End::now);
        OptionalLong untrue =
                LongStream.concat(untold(end).stream(), ofNoOrder().stream()).min();
        Verification found = lines(end.position, line -> untrue.isPresent() && untrue.getAsLong() == line);
        boolean mayEnd = end.last <= end.position && (untrue.isEmpty() || untrue.getAsLong() != end.position + 1);
        return mayEnd ? found.endingAt(end.position, end.seal) : found.brokenOff();
    }

    private static Verification lines(long upTo, LongPredicate isUntrue) {
        Verification found = Verification.BEGUN;
        long before = -1;
        while (!found.broken() && found.lines() < upTo && found.lines() > before) {
            Verification so = found;
            before = so.lines();
            found = QuarkusTransaction.requiringNew().call(() -> page(so, upTo, isUntrue));
        }
        return found;
    }

    private static Verification page(Verification so, long upTo, LongPredicate isUntrue) {
        long last = Math.min(so.lines() + LINES, upTo);
        Map<Long, Matters> written = Matters.between(so.lines(), last);
        // What lies before the first line is read with it, and follows from nothing.
        long after = so.lines() == 0 ? Long.MIN_VALUE : so.lines();
        Verification found = so;
        for (JournalRow row : JournalRow.after(after, (int) (last - so.lines()))) {
            found = isUntrue.test(row.position)
                    ? found.brokenOff()
                    : found.with(
                            row.entry(),
                            written.getOrDefault(row.position, Matters.none()).digest());
        }
        return found;
    }

    /** The first line whose order stands otherwise than it says; the one after the end where no line tells of an order. */
    private static OptionalLong untold(End end) {
        LongStream.Builder found = LongStream.builder();
        Optional<Long> after = Optional.of(0L);
        while (after.isPresent()) {
            long from = after.get();
            Page page = QuarkusTransaction.requiringNew().call(() -> Page.after(from));
            page.suspects.forEach(number -> untold(number, end).forEach(found));
            after = page.last;
        }
        return found.build().min();
    }

    /**
     * Some orders, read while they may move on.
     *
     * @param suspects whose line and rows were read before and after a change, or do not go together
     * @param last the number of the last; empty where there are no more
     */
    private record Page(Set<Long> suspects, Optional<Long> last) {

        static Page after(long number) {
            List<OrderRow> orders = OrderRow.<OrderRow>find("number > ?1", Sort.by("number"), number)
                    .page(0, ORDERS)
                    .list();
            return orders.isEmpty()
                    ? new Page(Set.of(), Optional.empty())
                    : new Page(untold(orders).keySet(), Optional.of(orders.get(orders.size() - 1).number));
        }
    }

    /** Held, for whoever changes an order holds it until the line of it is there. */
    private static LongStream untold(long number, End end) {
        return QuarkusTransaction.requiringNew()
                .call(() -> OrderRow.held(number)
                        .map(List::of)
                        .map(JournalProof::untold)
                        .orElse(Map.of()))
                .values()
                .stream()
                .mapToLong(line -> line.map(last -> last.position).orElse(end.position + 1));
    }

    /** Those of some orders that stand otherwise than their last line says, or have rows that no line speaks of; with that line. */
    private static Map<Long, Optional<JournalRow>> untold(List<OrderRow> orders) {
        List<Long> numbers = orders.stream().map(order -> order.number).toList();
        Set<Long> unspokenOf = Matters.unspokenOf(numbers);
        Map<Long, List<ReservationRow>> held =
                ReservationRow.<ReservationRow>list("orderNumber in ?1", numbers).stream()
                        .collect(groupingBy(row -> row.orderNumber));
        Map<Long, JournalRow> last =
                JournalRow.last(numbers).stream().collect(toMap(line -> line.orderNumber, Function.identity()));
        return orders.stream()
                .filter(order -> unspokenOf.contains(order.number)
                        || !isToldBy(last.get(order.number), order, held.getOrDefault(order.number, List.of())))
                .collect(toMap(order -> order.number, order -> Optional.ofNullable(last.get(order.number))));
    }

    /** Lines of the first form tell nothing of how an order stands. */
    private static boolean isToldBy(@Nullable JournalRow line, OrderRow order, List<ReservationRow> held) {
        return line != null && (line.standing == null || line.standing.equals(order.digest(held)));
    }

    /** The first line of an order that there is no more. */
    private static OptionalLong ofNoOrder() {
        return QuarkusTransaction.requiringNew()
                .call(() -> tables().createQuery(
                                "select min(line.position) from JournalRow line where line.orderNumber is not null"
                                        + " and not exists (select 1 from OrderRow o where o.number = line.orderNumber)",
                                Long.class)
                        .getResultStream()
                        .filter(Objects::nonNull)
                        .mapToLong(Long::longValue)
                        .findFirst());
    }

    private static EntityManager tables() {
        return JournalRow.getEntityManager();
    }
}
