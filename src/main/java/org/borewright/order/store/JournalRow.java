package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.order.journal.Entry;
import org.borewright.order.journal.Matter;

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

    /** The version that its order had from this line on; none where the seal covers the words alone. */
    public Integer orderVersion;

    /** Digest of the rows written with this line, likewise. */
    public String written;

    /** Digest of the order as it stood from this line on, likewise. */
    public String standing;

    /** The order it concerns; none for the shelf. */
    public Long orderNumber;

    static JournalRow of(Entry entry) {
        JournalRow row = new JournalRow();
        row.position = entry.position();
        row.at = entry.at();
        row.by = entry.by();
        row.subject = entry.subject();
        row.did = entry.did();
        row.before = entry.before();
        row.after = entry.after();
        row.seal = entry.seal();
        entry.matter().ifPresent(matter -> {
            row.orderVersion = matter.version();
            row.written = matter.written();
            row.standing = matter.standing();
        });
        row.orderNumber = entry.order().orElse(null);
        return row;
    }

    /** As it was written. */
    public Entry entry() {
        return new Entry(
                position, at, by, subject, Optional.ofNullable(orderNumber), did, before, after, matter(), seal);
    }

    /** Half of one is none that was ever sealed: what is left of it is kept, so that the seal tells. */
    private Optional<Matter> matter() {
        return Stream.of(orderVersion, written, standing).allMatch(Objects::isNull)
                ? Optional.empty()
                : Optional.of(new Matter(
                        Objects.requireNonNullElse(orderVersion, 0),
                        Objects.requireNonNullElse(written, ""),
                        Objects.requireNonNullElse(standing, "")));
    }

    /** The last line of each of some orders. */
    static List<JournalRow> last(List<Long> orders) {
        return list(
                "from JournalRow line where line.orderNumber in ?1 and line.position ="
                        + " (select max(other.position) from JournalRow other where other.orderNumber = line.orderNumber)",
                orders);
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

    /** The last lines that tell of a deed, the latest first. */
    public static List<JournalRow> last(String did, int most) {
        return find("did = ?1", Sort.descending("position"), did).page(0, most).list();
    }
}
