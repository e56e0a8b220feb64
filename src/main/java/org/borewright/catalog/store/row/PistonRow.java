package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.catalog.Hand;
import org.borewright.fit.shape.MassRange;
import org.borewright.measure.Limits;

/** A piston of one size: a line of {@code pistons.csv}. */
@Entity
@Table(name = "pistons")
public class PistonRow extends CatalogRow {

    @Id
    public String piston;

    public String design;

    public String size;

    @Enumerated(EnumType.STRING)
    public Hand hand;

    public String grade;

    public Limits diameter;

    public MassRange mass;
}
