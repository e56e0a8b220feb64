package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.measure.Limits;

/** A clip: a line of {@code clips.csv}. */
@Entity
@Table(name = "clips")
public class ClipRow extends CatalogRow {

    @Id
    public String clip;

    public String design;

    public Limits wire;
}
