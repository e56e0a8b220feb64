package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.fit.shape.RingFace;
import org.borewright.fit.shape.RingSection;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/** One ring: a line of {@code rings.csv}. */
@Entity
@Table(name = "rings")
public class RingRow extends CatalogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String ringSet;

    public String groove;

    @Enumerated(EnumType.STRING)
    public RingSection section;

    @Enumerated(EnumType.STRING)
    public RingFace face;

    public Limits axial;

    public Limits wall;

    public Limits gap;

    public Length fileAllowance;
}
