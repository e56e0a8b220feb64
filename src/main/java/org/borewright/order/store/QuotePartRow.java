package org.borewright.order.store;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Sort;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;

/** How many of a number, box or loose part, a quote needs from the shelf. */
@Entity
@Table(name = "quote_parts")
public class QuotePartRow extends PanacheEntityBase {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public long quote;

    public String number;

    public int quantity;

    /** The days it was to take on the day of the quote; 0 where it lay on the shelf. */
    public int leadDays;

    /** What a quote needs, by number. */
    public static List<QuotePartRow> of(long quote) {
        return list("quote", Sort.by("number"), quote);
    }
}
