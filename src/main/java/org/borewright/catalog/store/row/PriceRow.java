package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.Money;

/** The price of a number: a line of {@code prices.csv}. */
@Entity
@Table(name = "prices")
public class PriceRow extends CatalogRow {

    @Id
    public String number;

    public Money price;
}
