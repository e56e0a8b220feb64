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
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.borewright.order.PistonsFitted;
import org.borewright.order.journal.Digest;

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

    /** The version of the order that it was written with; 0 where that was not noted. */
    public int orderVersion;

    @Enumerated(EnumType.STRING)
    public Kind kind;

    public Instant at;

    @Column(name = "by_whom")
    public String by;

    /** What came of it, in a few words. */
    public String says;

    public String request;

    public String answer;

    /** The design of the pistons that go in; none where there are none, and on papers kept before it was noted. */
    public String design;

    /** Their size likewise. */
    public String size;

    /** Which of them goes into which hole. */
    @ElementCollection
    @CollectionTable(name = "fitted_pistons", joinColumns = @JoinColumn(name = "paper"))
    @MapKeyColumn(name = "cylinder")
    public Map<String, FittedPiston> pistons = new HashMap<>();

    /** Notes which pistons go in. */
    public void keep(PistonsFitted fitted) {
        design = fitted.design();
        size = fitted.size();
        fitted.byCylinder().forEach((cylinder, piston) -> pistons.put(cylinder, FittedPiston.of(piston)));
    }

    /** Which pistons go in; empty where that was not noted. */
    public Optional<PistonsFitted> fitted() {
        SortedMap<String, PistonsFitted.Piston> byCylinder = new TreeMap<>();
        pistons.forEach((cylinder, piston) -> byCylinder.put(cylinder, piston.told()));
        return Optional.ofNullable(design).map(noted -> new PistonsFitted(noted, size, byCylinder));
    }

    /** Of all of it. */
    String digest() {
        Digest all =
                new Digest().whole(id).whole(orderNumber).whole(orderVersion).text(kind.name());
        all.time(at).text(by).text(says).text(request).text(answer).text(design).text(size);
        new TreeMap<>(pistons)
                .forEach((cylinder, piston) ->
                        all.text(cylinder).text(piston.tag).text(piston.number));
        return all.hex();
    }

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
