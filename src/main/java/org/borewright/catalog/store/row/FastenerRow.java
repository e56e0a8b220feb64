package org.borewright.catalog.store.row;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.fit.shape.ThreadCondition;
import org.borewright.measure.Length;

/** A group of like fasteners: a line of {@code fasteners.csv}. */
@Entity
@Table(name = "fasteners")
public class FastenerRow extends CatalogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String engine;

    @Column(name = "in_order")
    public int order;

    public String fastener;

    @Column(name = "how_many")
    public int count;

    public Length thread;

    public Length pitch;

    @Enumerated(EnumType.STRING)
    public PropertyClass propertyClass;

    @Enumerated(EnumType.STRING)
    public ThreadCondition condition;

    public boolean intoAluminium;

    public String singleUseBolt;

    public String sequence;

    /** Codes, separated by spaces. */
    public String operations;
}
