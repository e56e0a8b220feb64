package org.borewright.catalog.store.row;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.Box.Kind;

/** One part in a box: a line of {@code boxes.csv}. */
@Entity
@Table(name = "boxes")
public class BoxRow extends CatalogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String box;

    @Enumerated(EnumType.STRING)
    public Kind packed;

    public String part;

    @Column(name = "how_many")
    public int count;
}
