package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.BoreSpec.LabelNames;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Layout;
import org.borewright.catalog.Strokes;
import org.borewright.fit.shape.BoreSurface;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;

/** An engine and its limits: a line of {@code engines.csv}. */
@Entity
@Table(name = "engines")
public class EngineRow extends CatalogRow {

    @Id
    public String engine;

    public String maker;

    public String model;

    @Enumerated(EnumType.STRING)
    public Strokes strokes;

    @Enumerated(EnumType.STRING)
    public Layout layout;

    @Enumerated(EnumType.STRING)
    public Construction construction;

    @Enumerated(EnumType.STRING)
    public BoreSurface surface;

    public boolean torquePlate;

    @Enumerated(EnumType.STRING)
    public LengthUnit steps;

    public Length bore;

    public Limits newBore;

    public Length stroke;

    @Enumerated(EnumType.STRING)
    public LabelNames labelNames;

    /** In 10⁻⁶/K. */
    public double expansion;

    /** In 10⁻⁶/K. */
    public Double expansionUncertainty;

    public Length honeStock;

    /** None where common practice holds. */
    public Length honeCleanUp;

    public Length centring;

    public Length largestOversize;

    public Length sleeveOutside;

    public Length wallLeast;

    public Length spigotOutside;

    public Length spigotWallLeast;

    public Length bridgeLeast;

    public Limits barrelHeight;

    public Length rod;

    public Limits pistonToHead;

    /** In cm³. */
    public double chamber;

    public boolean headFlat;

    public Length headMouth;

    public Length gasketLand;

    /** In millionths. */
    public long ratioGreatest;

    public Limits rodBore;

    public Limits rodFit;

    public boolean pinPressed;

    public boolean smallEndBearing;

    public Length wearAllowance;

    public Length taperAllowance;

    public Length outOfRoundAllowance;

    public Limits choke;

    /** None where common practice holds. */
    public Length finishedShape;

    public Length deckFlatness;

    public Length skimGreatest;

    /** In milligrams. */
    public long massSpread;
}
