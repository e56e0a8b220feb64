package org.borewright.catalog.store.row;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.fit.shape.RingSection;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/** A ring groove of a piston design: a line of {@code grooves.csv}. */
@Entity
@Table(name = "grooves")
public class GrooveRow extends CatalogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String design;

    @Column(name = "in_order")
    public int order;

    public String groove;

    @Enumerated(EnumType.STRING)
    public RingSection section;

    public Limits width;

    public Limits root;

    public Limits gap;

    public Limits play;

    public Length backLeast;
}
