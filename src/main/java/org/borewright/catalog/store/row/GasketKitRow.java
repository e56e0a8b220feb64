package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/** The gaskets of a rebuild: a line of {@code gasket_kits.csv}. */
@Entity
@Table(name = "gasket_kits")
public class GasketKitRow extends CatalogRow {

    @Id
    public String gasketKit;

    public String engine;

    public int servesCylinders;

    public Limits opening;

    public Limits head;

    public Limits base;

    public Length margin;
}
