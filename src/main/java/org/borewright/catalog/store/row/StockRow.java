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

    public Integer leadDays;
}
