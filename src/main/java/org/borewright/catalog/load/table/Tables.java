package org.borewright.catalog.load.table;

import java.util.List;

/** Every file of a catalogue. */
public final class Tables {

    private Tables() {}

    /** The files that say what fits, and how well it is measured: an answer that stands on them alone may be kept until one of them changes. */
    public static List<Table<?>> fit() {
        return List.of(
                EngineTables.engines(),
                EngineTables.cylinders(),
                EngineTables.sizes(),
                PistonTables.designs(),
                PistonTables.grooves(),
                PistonTables.pistons(),
                PistonTables.ringSets(),
                PistonTables.rings(),
                PartTables.pins(),
                PartTables.clips(),
                PartTables.bearings(),
                PartTables.gasketKits(),
                PartTables.gaskets(),
                WorkTables.fasteners(),
                WorkTables.torqueStages(),
                WorkTables.shopOperations(),
                WorkTables.gauges(),
                SalesTables.boxes(),
                SalesTables.withdrawn());
    }

    /** The files that say what it costs and what is on the shelf. */
    public static List<Table<?>> offers() {
        return List.of(SalesTables.prices(), SalesTables.stock());
    }
}
