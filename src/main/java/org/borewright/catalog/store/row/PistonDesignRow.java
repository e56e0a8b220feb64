package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.PistonDesign.Coating;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/** What all sizes of one piston share: a line of {@code piston_designs.csv}. */
@Entity
@Table(name = "piston_designs")
public class PistonDesignRow extends CatalogRow {

    @Id
    public String design;

    public String engine;

    public String maker;

    /** In 10⁻⁶/K. */
    public double expansion;

    public Length gaugeHeight;

    @Enumerated(EnumType.STRING)
    public Coating coating;

    public Length clearanceLeast;

    public Length clearanceTarget;

    public Length clearanceGreatest;

    public Length clearanceWear;

    public Length compressionHeight;

    public Length domeHeight;

    /** In cm³. */
    public double domeVolume;

    public Limits pinBore;

    public Limits pinFit;

    public Limits clipSpan;

    public Limits clipGroove;

    public Limits clipFloat;

    public Length clipPlayGreatest;
}
