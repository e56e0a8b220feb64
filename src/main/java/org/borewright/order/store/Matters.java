package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.Panache;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.borewright.order.journal.Digest;
import org.borewright.order.journal.Matter;

/**
 * What a line of an order speaks of: papers, quotes and holes that are written with it, and never changed, and the order as it stands.
 *
 * @param papers in the order they were written
 * @param quotes likewise
 * @param holes likewise
 */
record Matters(List<PaperRow> papers, List<QuoteRow> quotes, List<HoleLifeRow> holes) {

    static Matters none() {
        return new Matters(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    }

    /** What was written with the change that an order has just gone through, and the order as it stands. */
    static Matter of(OrderRow order, boolean wrote) {
        Matters written = wrote
                ? new Matters(
                        PaperRow.list(
                                "orderNumber = ?1 and orderVersion = ?2 order by id", order.number, order.version),
                        QuoteRow.list(
                                "orderNumber = ?1 and orderVersion = ?2 order by id", order.number, order.version),
                        HoleLifeRow.list(
                                "orderNumber = ?1 and orderVersion = ?2 order by id", order.number, order.version))
                : none();
        return new Matter(order.version, written.digest(), order.digest(ReservationRow.of(order.number)));
    }

    /** What was written with each of some lines, by position. */
    static Map<Long, Matters> between(long after, long last) {
        Map<Long, Matters> written = new HashMap<>();
        each(
                "PaperRow",
                after,
                last,
                (position, row) -> at(written, position).papers.add((PaperRow) row));
        each(
                "QuoteRow",
                after,
                last,
                (position, row) -> at(written, position).quotes.add((QuoteRow) row));
        each(
                "HoleLifeRow",
                after,
                last,
                (position, row) -> at(written, position).holes.add((HoleLifeRow) row));
        return written;
    }

    private static Matters at(Map<Long, Matters> written, Long position) {
        return written.computeIfAbsent(position, first -> none());
    }

    private static void each(String rows, long after, long last, BiConsumer<Long, Object> take) {
        Panache.getEntityManager()
                .createQuery(
                        "select line.position, row from " + rows
                                + " row, JournalRow line where line.orderNumber = row.orderNumber"
                                + " and line.orderVersion = row.orderVersion and line.position > ?1 and line.position <= ?2"
                                + " order by row.id",
                        Object[].class)
                .setParameter(1, after)
                .setParameter(2, last)
                .getResultList()
                .forEach(found -> take.accept((Long) found[0], found[1]));
    }

    /** Which of some orders have rows that no line of theirs speaks of; what is older than the sealing of rows apart. */
    static Set<Long> unspokenOf(List<Long> orders) {
        Set<Long> found = new HashSet<>();
        for (String rows : List.of("PaperRow", "QuoteRow", "HoleLifeRow")) {
            found.addAll(Panache.getEntityManager()
                    .createQuery(
                            "select row.orderNumber from " + rows + " row where row.orderNumber in ?1"
                                    + " and not exists (select 1 from JournalRow line where line.orderNumber = row.orderNumber"
                                    + " and line.orderVersion = row.orderVersion)"
                                    + " and (row.orderVersion <> 0 or exists (select 1 from JournalRow line"
                                    + " where line.orderNumber = row.orderNumber and line.orderVersion = 1))",
                            Long.class)
                    .setParameter(1, orders)
                    .getResultList());
        }
        return found;
    }

    String digest() {
        Digest all = new Digest();
        Stream.of(
                        papers.stream().map(PaperRow::digest),
                        quotes.stream().map(quote -> quote.digest(QuotePartRow.of(quote.id))),
                        holes.stream().map(HoleLifeRow::digest))
                .flatMap(digests -> digests)
                .forEach(all::text);
        return all.hex();
    }
}
