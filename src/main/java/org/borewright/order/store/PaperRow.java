package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A question put about an order and its whole answer, as they were. */
@Entity
@Table(name = "order_papers")
public class PaperRow extends PanacheEntityBase {

    /** What was asked. */
    public enum Kind {
        /** How the holes were found. */
        SURVEY("survey"),
        /** Pistons in hand, paired and given their windows. */
        BENCH("bench"),
        /** Honed holes, judged. */
        FINISH("finish");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The word as typed and shown. */
        public String label() {
            return label;
        }
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public long orderNumber;

    @Enumerated(EnumType.STRING)
    public Kind kind;

    public Instant at;

    @Column(name = "by_whom")
    public String by;

    /** What came of it, in a few words. */
    public String says;

    public String request;

    public String answer;

    /** The last one of a kind. */
    public static Optional<PaperRow> last(long order, Kind kind) {
        return find("orderNumber = ?1 and kind = ?2", Sort.descending("id"), order, kind)
                .firstResultOptional();
    }

    /** All of an order, in the order they were written. */
    public static List<PaperRow> of(long order) {
        return list("orderNumber", Sort.by("id"), order);
    }
}
