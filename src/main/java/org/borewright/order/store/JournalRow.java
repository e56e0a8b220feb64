package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.borewright.order.journal.Entry;

/** A line of the journal. Nothing but {@link JournalHead} writes one, and nothing changes it. */
@Entity
@Table(name = "journal")
public class JournalRow extends PanacheEntityBase {

    @Id
    public long position;

    public Instant at;

    @Column(name = "by_whom")
    public String by;

    public String subject;

    public String did;

    @Column(name = "before_it")
    public String before;

    @Column(name = "after_it")
    public String after;

    public String seal;

    /** The order it concerns; none for the shelf. */
    public Long orderNumber;

    static JournalRow of(Entry entry, Optional<Long> order) {
        JournalRow row = new JournalRow();
        row.position = entry.position();
        row.at = entry.at();
        row.by = entry.by();
        row.subject = entry.subject();
        row.did = entry.did();
        row.before = entry.before();
        row.after = entry.after();
        row.seal = entry.seal();
        row.orderNumber = order.orElse(null);
        return row;
    }

    /** As it was written. */
    public Entry entry() {
        return new Entry(position, at, by, subject, did, before, after, seal);
    }

    /** So many lines from the one after a position on. */
    public static List<JournalRow> after(long position, int most) {
        return find("position > ?1", Sort.by("position"), position)
                .page(0, most)
                .list();
    }

    /** So many lines of an order, likewise. */
    public static List<JournalRow> after(long position, long order, int most) {
        return find("orderNumber = ?1 and position > ?2", Sort.by("position"), order, position)
                .page(0, most)
                .list();
    }
}
