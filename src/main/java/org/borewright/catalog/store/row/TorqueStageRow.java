package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** One step of tightening: a line of {@code torque_stages.csv}. */
@Entity
@Table(name = "torque_stages")
public class TorqueStageRow extends CatalogRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    public Long id;

    public String engine;

    public String fastener;

    public int stage;

    /** In thousandths of a newton metre; null where it is an angle. */
    public Long torque;

    /** In whole degrees; null where it is a torque. */
    public Integer angle;
}
