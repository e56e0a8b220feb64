package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.measure.Length;

/** A size of an engine: a line of {@code sizes.csv}. */
@Entity
@Table(name = "sizes")
public class SizeRow extends CatalogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String engine;

    public String size;

    public Length oversize;

    public boolean furtherWork;
}
