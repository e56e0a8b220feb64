package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import org.borewright.order.journal.Deed;
import org.borewright.order.journal.Entry;

/**
 * The one row that names the last line of the journal. Who adds a line holds it until the transaction ends, so that lines are numbered in
 * the order they are committed, without gaps. It is therefore the last thing a change takes hold of.
 */
@Entity
@Table(name = "journal_head")
public class JournalHead extends PanacheEntityBase {

    private static final int ONLY = 1;

    @Id
    public int id;

    public long position;

    public String seal;

    /** The position of the last line that changed what can be had from the shelf. */
    public long stockPosition;

    /** As it is, for whoever only reads. */
    public static JournalHead now() {
        return findById(ONLY);
    }

    /** As it is until this transaction ends. */
    public static JournalHead held() {
        JournalHead head = now();
        getEntityManager().refresh(head, LockModeType.PESSIMISTIC_WRITE);
        return head;
    }

    /** Adds a line. */
    public static void add(Instant now, Deed deed) {
        // One statement: whoever adds has not read it before, or holds it already.
        JournalHead head = findById(ONLY, LockModeType.PESSIMISTIC_WRITE);
        Entry entry = Entry.after(head.position, head.seal, now, deed);
        JournalRow.of(entry).persist();
        head.position = entry.position();
        head.seal = entry.seal();
        head.stockPosition = deed.movesStock() ? entry.position() : head.stockPosition;
    }
}
