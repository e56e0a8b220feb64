package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.Withdrawal.State;

/** A number that is not, or no longer, supplied: a line of {@code withdrawn.csv}. */
@Entity
@Table(name = "withdrawn")
public class WithdrawnRow extends CatalogRow {

    @Id
    public String number;

    @Enumerated(EnumType.STRING)
    public State state;

    public String replacedBy;

    public String note;
}
