package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A quote as it was given; never changed. */
@Entity
@Table(name = "quotes")
public class QuoteRow extends PanacheEntityBase {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public long orderNumber;

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

    /** All of it, as it was answered. */
    public String document;

    /** A quote of an order. */
    public static Optional<QuoteRow> of(long order, int number) {
        return find("orderNumber = ?1 and number = ?2", order, number).firstResultOptional();
    }

    /** All quotes of an order, in the order they were given. */
    public static List<QuoteRow> of(long order) {
        return list("orderNumber", Sort.by("number"), order);
    }
}
