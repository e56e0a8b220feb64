package org.borewright.catalog.load.table;

import static org.borewright.catalog.load.sheet.CellTypes.CODE;
import static org.borewright.catalog.load.sheet.CellTypes.DAY;
import static org.borewright.catalog.load.sheet.CellTypes.LENGTH;
import static org.borewright.catalog.load.sheet.CellTypes.LONG_TEXT;
import static org.borewright.catalog.load.sheet.CellTypes.NUMBER;
import static org.borewright.catalog.load.sheet.CellTypes.OPERATION;
import static org.borewright.catalog.load.sheet.CellTypes.OPERATIONS;
import static org.borewright.catalog.load.sheet.CellTypes.TEXT;
import static org.borewright.catalog.load.sheet.CellTypes.YES_NO;
import static org.borewright.catalog.load.sheet.CellTypes.counts;
import static org.borewright.catalog.load.sheet.CellTypes.lengths;
import static org.borewright.catalog.load.sheet.CellTypes.wholes;
import static org.borewright.catalog.load.sheet.CellTypes.words;
import static org.borewright.catalog.load.sheet.SheetRule.eitherOr;
import static org.borewright.catalog.load.sheet.SheetRule.gapless;
import static org.borewright.catalog.load.sheet.SheetRule.refers;
import static org.borewright.catalog.load.sheet.SheetRule.together;
import static org.borewright.catalog.load.sheet.SheetRule.unique;

import org.borewright.catalog.ShopOperation.Per;
import org.borewright.catalog.ShopOperation.When;
import org.borewright.catalog.store.row.FastenerRow;
import org.borewright.catalog.store.row.GaugeRow;
import org.borewright.catalog.store.row.ShopOperationRow;
import org.borewright.catalog.store.row.TorqueStageRow;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.fit.shape.ThreadCondition;
import org.borewright.measure.Gauge;

/** The files that say what the shop does, tightens and measures with. */
final class WorkTables {

    private WorkTables() {}

    static Table<FastenerRow> fasteners() {
        return Table.of("fasteners.csv", FastenerRow::new)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .needed("order", wholes(1, 100), (row, order) -> row.order = order)
                .needed("fastener", TEXT, (row, name) -> row.fastener = name)
                .needed("count", wholes(1, 1000), (row, count) -> row.count = count)
                .maybe("thread_mm", LENGTH, (row, diameter) -> row.thread = diameter)
                .maybe("pitch_mm", LENGTH, (row, pitch) -> row.pitch = pitch)
                .maybe(
                        "class",
                        words(PropertyClass.values(), PropertyClass::label),
                        (row, strength) -> row.propertyClass = strength)
                .needed(
                        "condition",
                        words(ThreadCondition.values(), ThreadCondition::label),
                        (row, condition) -> row.condition = condition)
                .needed("into_aluminium", YES_NO, (row, into) -> row.intoAluminium = into)
                .maybe("single_use_bolt", NUMBER, (row, number) -> row.singleUseBolt = number)
                .needed("sequence", LONG_TEXT, (row, words) -> row.sequence = words)
                .needed("operations", OPERATIONS, (row, codes) -> row.operations = codes)
                .rule(refers("engines.csv", "engine"))
                .rule(unique("engine", "fastener"))
                .rule(unique("engine", "order"))
                .rule(gapless("order", "engine"))
                .rule(together("thread_mm", "pitch_mm"));
    }

    static Table<TorqueStageRow> torqueStages() {
        return Table.of("torque_stages.csv", TorqueStageRow::new)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .needed("fastener", TEXT, (row, name) -> row.fastener = name)
                .needed("stage", wholes(1, 100), (row, stage) -> row.stage = stage)
                .maybe("torque_Nm", counts(3, "0.001", "10000"), (row, torque) -> row.torque = torque)
                .maybe("angle_deg", wholes(1, 360), (row, degrees) -> row.angle = degrees)
                .rule(refers("fasteners.csv", "engine", "fastener"))
                .rule(unique("engine", "fastener", "stage"))
                .rule(gapless("stage", "engine", "fastener"))
                .rule(eitherOr("torque_Nm", "angle_deg"));
    }

    static Table<ShopOperationRow> shopOperations() {
        return Table.of("shop_operations.csv", ShopOperationRow::new)
                .needed("operation", OPERATION, (row, code) -> row.operation = code)
                .needed("order", wholes(1, 1000), (row, order) -> row.order = order)
                .needed("name", TEXT, (row, name) -> row.name = name)
                .needed("when", words(When.values(), When::label), (row, when) -> row.when = when)
                .needed("per", words(Per.values(), Per::label), (row, per) -> row.per = per)
                .column(Column.price((row, price) -> row.price = price))
                .needed("days", wholes(0, 1000), (row, days) -> row.days = days)
                .rule(unique("operation"))
                .rule(unique("order"))
                .rule(gapless("order"));
    }

    /** A gauge worse than half a millimetre measures no bore. */
    static Table<GaugeRow> gauges() {
        return Table.of("gauges.csv", GaugeRow::new)
                .needed("name", CODE, (row, name) -> row.name = name)
                .needed("kind", words(Gauge.Kind.values(), Gauge.Kind::label), (row, kind) -> row.kind = kind)
                .needed("resolution_mm", lengths("0.000001", "0.5"), (row, step) -> row.resolution = step)
                .maybe("uncertainty_mm", lengths("0.000001", "0.5"), (row, expanded) -> row.uncertainty = expanded)
                .maybe("repeatability_mm", lengths("0", "0.5"), (row, scatter) -> row.repeatability = scatter)
                .maybe("calibrated_on", DAY, (row, day) -> row.calibratedOn = day)
                .maybe("due", DAY, (row, day) -> row.due = day)
                .rule(unique("name"))
                .rule(together("uncertainty_mm", "calibrated_on", "due"));
    }
}
