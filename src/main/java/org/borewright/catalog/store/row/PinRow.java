package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.measure.Limits;

/** A wrist pin: a line of {@code pins.csv}. */
@Entity
@Table(name = "pins")
public class PinRow extends CatalogRow {

    @Id
    public String pin;

    public String design;

    public Limits outside;

    public Limits length;
}
