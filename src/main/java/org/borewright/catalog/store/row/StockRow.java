package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** What lies on the shelf of a number: a line of {@code stock.csv}. */
@Entity
@Table(name = "stock")
public class StockRow extends CatalogRow {

    @Id
    public String number;

    public int onHand;

    /** Of those on hand, put aside for orders. */
    public int reserved;

    public Integer leadDays;
}
