package org.borewright.catalog.store.row;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.Hand;
import org.borewright.measure.Length;

/** A hole of an engine: a line of {@code cylinders.csv}. */
@Entity
@Table(name = "cylinders")
public class CylinderRow extends CatalogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String engine;

    @Column(name = "in_order")
    public int order;

    public String cylinder;

    @Enumerated(EnumType.STRING)
    public Hand hand;

    public Length pitchToNext;
}
