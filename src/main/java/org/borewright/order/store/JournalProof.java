package org.borewright.order.store;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.panache.common.Sort;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.borewright.order.journal.Entry;
import org.borewright.order.journal.Verification;

/**
 * The journal proven: each line from the line before, what was written with it from the rows as they lie there now, and each order from the
 * last line that speaks of it. It is read in pages, each in a transaction of its own.
 *
 * @param position of the last line when it was begun
 * @param seal of that line
 * @param found what holds
 */
public record JournalProof(long position, String seal, Verification found) {

    private static final int LINES = 200;
    private static final int ORDERS = 100;

    /** Proves the lines there are now. */
    public static JournalProof now() {
        JournalHead head = QuarkusTransaction.requiringNew().call(JournalHead::now);
        Verification lines = lines(head.position);
        OptionalLong changed =
                LongStream.concat(orders().stream(), lost().stream()).min();
        Verification found = changed.isPresent()
                ? QuarkusTransaction.requiringNew().call(() -> upTo(lines, changed.getAsLong()))
                : lines;
        return new JournalProof(head.position, head.seal, found);
    }

    private static Verification lines(long upTo) {
        Verification found = Verification.BEGUN;
        long before = -1;
        while (found.broken().isEmpty() && found.lines() < upTo && found.lines() > before) {
            Verification so = found;
            before = so.lines();
            found = QuarkusTransaction.requiringNew().call(() -> page(so, upTo));
        }
        return found;
    }

    private static Verification page(Verification so, long upTo) {
        long last = Math.min(so.lines() + LINES, upTo);
        Map<Long, Matters> written = Matters.between(so.lines(), last);
        Verification found = so;
        for (JournalRow row : JournalRow.after(so.lines(), (int) (last - so.lines()))) {
            found = found.with(
                    row.entry(),
                    written.getOrDefault(row.position, Matters.none()).digest());
        }
        return found;
    }

    private static Verification upTo(Verification lines, long position) {
        Entry line = JournalRow.<JournalRow>findById(position).entry();
        String before = position == 1 ? Entry.NO_SEAL : JournalRow.<JournalRow>findById(position - 1).seal;
        return lines.upTo(line, before);
    }

    /** The first line of those whose orders stand otherwise than it says. */
    private static OptionalLong orders() {
        OptionalLong first = OptionalLong.empty();
        Optional<Long> after = Optional.of(0L);
        while (after.isPresent()) {
            long from = after.get();
            Page page = QuarkusTransaction.requiringNew().call(() -> orders(from));
            first = LongStream.concat(first.stream(), page.changed.stream()).min();
            after = page.next;
        }
        return first;
    }

    private record Page(OptionalLong changed, Optional<Long> next) {}

    /** The head is held meanwhile: every change of an order ends there, so none is seen half. */
    private static Page orders(long after) {
        JournalHead head = JournalHead.held();
        List<OrderRow> orders = OrderRow.<OrderRow>find("number > ?1", Sort.by("number"), after)
                .page(0, ORDERS)
                .list();
        List<Long> numbers = orders.stream().map(order -> order.number).toList();
        if (numbers.isEmpty()) {
            return new Page(OptionalLong.empty(), Optional.empty());
        }
        Set<Long> unspokenOf = Matters.unspokenOf(numbers);
        Map<Long, List<ReservationRow>> held =
                ReservationRow.<ReservationRow>list(
                                "orderNumber in ?1", Sort.by("orderNumber").and("number"), numbers)
                        .stream()
                        .collect(Collectors.groupingBy(row -> row.orderNumber));
        Map<Long, JournalRow> last = JournalRow.last(numbers).stream()
                .collect(Collectors.toMap(line -> line.orderNumber, Function.identity()));
        OptionalLong changed = orders.stream()
                .filter(order -> unspokenOf.contains(order.number)
                        || !isToldBy(last.get(order.number), order, held.getOrDefault(order.number, List.of())))
                .mapToLong(order -> Optional.ofNullable(last.get(order.number))
                        .map(line -> line.position)
                        .orElse(head.position))
                .min();
        return new Page(changed, Optional.of(numbers.get(numbers.size() - 1)));
    }

    /** Lines of the first form tell nothing of how an order stands. */
    private static boolean isToldBy(JournalRow line, OrderRow order, List<ReservationRow> held) {
        return line != null && (line.standing == null || line.standing.equals(order.digest(held)));
    }

    /** The first line of an order that there is no more. */
    private static OptionalLong lost() {
        Long first = QuarkusTransaction.requiringNew()
                .call(() -> JournalRow.getEntityManager()
                        .createQuery(
                                "select min(line.position) from JournalRow line where line.orderNumber is not null"
                                        + " and not exists (select 1 from OrderRow o where o.number = line.orderNumber)",
                                Long.class)
                        .getSingleResult());
        return first == null ? OptionalLong.empty() : OptionalLong.of(first);
    }
}
