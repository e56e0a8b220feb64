package org.borewright.catalog.store.row;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;

/** The one row that whoever fills an empty database holds until it is done. */
@Entity
@Table(name = "loading")
public class LoadingRow extends PanacheEntityBase {

    private static final int ONLY = 1;

    @Id
    public int id;

    /** Waits until nobody else fills the database, and keeps others from it until this transaction ends. */
    public static void hold() {
        findById(ONLY, LockModeType.PESSIMISTIC_WRITE);
    }
}
