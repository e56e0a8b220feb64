package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** A small-end bearing: a line of {@code bearings.csv}. */
@Entity
@Table(name = "bearings")
public class BearingRow extends CatalogRow {

    @Id
    public String bearing;

    public String engine;
}
