package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.measure.Length;

/** The rings of one piston: a line of {@code ring_sets.csv}. */
@Entity
@Table(name = "ring_sets")
public class RingSetRow extends CatalogRow {

    @Id
    public String ringSet;

    public String design;

    public String size;

    public Length nominalBore;
}
