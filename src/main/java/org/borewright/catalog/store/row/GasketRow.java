package org.borewright.catalog.store.row;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/** A gasket sold by itself: a line of {@code gaskets.csv}. */
@Entity
@Table(name = "gaskets")
public class GasketRow extends CatalogRow {

    @Id
    public String gasket;

    public String engine;

    @Enumerated(EnumType.STRING)
    public Place place;

    public int servesCylinders;

    public Limits opening;

    public Limits thickness;

    public Length margin;

    /** Where a gasket goes. */
    public enum Place {
        /** Between barrel and head. */
        HEAD("head"),
        /** Between crankcase and barrel. */
        BASE("base");

        private final String label;

        Place(String label) {
            this.label = label;
        }

        /** The word as typed. */
        public String label() {
            return label;
        }
    }
}
