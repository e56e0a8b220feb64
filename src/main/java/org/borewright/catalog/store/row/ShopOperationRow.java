package org.borewright.catalog.store.row;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.Money;
import org.borewright.catalog.ShopOperation.Per;
import org.borewright.catalog.ShopOperation.When;

/** Work the shop does: a line of {@code shop_operations.csv}. */
@Entity
@Table(name = "shop_operations")
public class ShopOperationRow extends CatalogRow {

    @Id
    public String operation;

    @Column(name = "in_order")
    public int order;

    public String name;

    @Enumerated(EnumType.STRING)
    @Column(name = "when_needed")
    public When when;

    @Enumerated(EnumType.STRING)
    @Column(name = "per_what")
    public Per per;

    public Money price;

    public int days;
}
