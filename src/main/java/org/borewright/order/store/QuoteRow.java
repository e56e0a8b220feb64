package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.borewright.order.PistonsSold;
import org.borewright.order.journal.Digest;

/** A quote as it was given; never changed. */
@Entity
@Table(name = "quotes")
public class QuoteRow extends PanacheEntityBase {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public long orderNumber;

    /** The version of the order that it was given with; 0 where that was not noted. */
    public int orderVersion;

    /** Its number within the order, from 1. */
    public int number;

    public Instant at;

    @Column(name = "by_whom")
    public String by;

    /** The paper of the survey that it stands on. */
    public long survey;

    public LocalDate validUntil;

    /** What it offers, in a few words. */
    public String says;

    /** The size of its pistons; none where those in the engine stay. */
    public String size;

    /** The design of its pistons; none where those in the engine stay, and on quotes given before it was noted. */
    public String design;

    /** How many of each number of piston its boxes hold, likewise; 0 on quotes given before that was noted. */
    @ElementCollection
    @CollectionTable(name = "quote_pistons", joinColumns = @JoinColumn(name = "quote"))
    @MapKeyColumn(name = "number")
    @Column(name = "quantity")
    public Map<String, Integer> pistons = new HashMap<>();

    /** The ring sets sold to run on them; none on quotes given before that was noted. */
    @ElementCollection
    @CollectionTable(name = "quote_ring_sets", joinColumns = @JoinColumn(name = "quote"))
    @Column(name = "number")
    public Set<String> ringSets = new HashSet<>();

    /** All of it, as it was answered. */
    public String document;

    /** Notes the pistons it sells. */
    public void keep(PistonsSold sold) {
        design = sold.design().orElse(null);
        pistons.putAll(sold.counts());
    }

    /** The pistons it sells; empty where those in the engine stay. */
    public Optional<PistonsSold> sold() {
        return Optional.ofNullable(size)
                .map(noted -> new PistonsSold(
                        Optional.ofNullable(design), noted, new TreeMap<>(pistons), new TreeSet<>(ringSets)));
    }

    /** Of all of it, with the parts it needs: by number as Java sorts, for every database has an order of its own. */
    String digest(List<QuotePartRow> parts) {
        Digest all =
                new Digest().whole(id).whole(orderNumber).whole(orderVersion).whole(number);
        all.time(at)
                .text(by)
                .whole(survey)
                .maybe(validUntil)
                .text(says)
                .text(size)
                .text(design);
        new TreeMap<>(pistons).forEach((piston, quantity) -> {
            all.text(piston);
            if (quantity != 0) {
                // Lines of quotes without it are sealed without it.
                all.whole(quantity);
            }
        });
        // None on quotes given before they were noted, whose lines were sealed without.
        new TreeSet<>(ringSets).forEach(set -> all.text("ring set").text(set));
        all.text(document);
        parts.stream()
                .sorted(Comparator.comparing(part -> part.number))
                .forEach(part -> all.text(part.number).whole(part.quantity).whole(part.leadDays));
        return all.hex();
    }

    /** A quote of an order. */
    public static Optional<QuoteRow> of(long order, int number) {
        return find("orderNumber = ?1 and number = ?2", order, number).firstResultOptional();
    }

    /** All quotes of an order, in the order they were given. */
    public static List<QuoteRow> of(long order) {
        return list("orderNumber", Sort.by("number"), order);
    }
}
