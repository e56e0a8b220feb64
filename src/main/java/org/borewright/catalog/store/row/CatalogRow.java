package org.borewright.catalog.store.row;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.MappedSuperclass;

/** One line of a catalogue file. */
@MappedSuperclass
public abstract class CatalogRow extends PanacheEntityBase {

    /** The line it stood on, from 1: keeps the order of the file. */
    public int line;
}
