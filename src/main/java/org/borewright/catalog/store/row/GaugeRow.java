package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.borewright.measure.Gauge.Kind;
import org.borewright.measure.Length;

/** A gauge of the shop: a line of {@code gauges.csv}. */
@Entity
@Table(name = "gauges")
public class GaugeRow extends CatalogRow {

    @Id
    public String name;

    @Enumerated(EnumType.STRING)
    public Kind kind;

    public Length resolution;

    public Length uncertainty;

    public Length repeatability;

    public LocalDate calibratedOn;

    public LocalDate due;
}
