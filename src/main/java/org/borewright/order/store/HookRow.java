package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;

/** Somebody who is told of every line of the journal. */
@Entity
@Table(name = "hooks")
public class HookRow extends PanacheEntityBase {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String url;

    /** What the messages are signed with, in base 64. */
    public String secret;

    /** The last line they were told of. */
    public long position;

    /** Not before. */
    public Instant nextTry;

    /** How often in a row they could not be told. */
    public int failures;

    /** Why, the last time; none after a success. */
    public String lastFailure;

    public Instant madeAt;

    /** All, the oldest first. */
    public static List<HookRow> all() {
        return listAll(Sort.by("id"));
    }

    /** Those that have not been told of everything, and may be tried again: who has waited longest first. */
    public static List<HookRow> due(Instant now) {
        return list(
                "nextTry <= ?1 and position < (select head.position from JournalHead head)",
                Sort.by("nextTry").and("id"),
                now);
    }

    /** Takes it on, until a time: of several machines one does. */
    public boolean claim(Instant until) {
        return update("nextTry = ?1 where id = ?2 and nextTry = ?3", until, id, nextTry) == 1;
    }
}
