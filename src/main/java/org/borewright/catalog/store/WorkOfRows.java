package org.borewright.catalog.store;

import static java.util.Comparator.comparingInt;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.Bolt;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.ShopOperation;
import org.borewright.catalog.TorqueStage;
import org.borewright.catalog.store.row.FastenerRow;
import org.borewright.catalog.store.row.ShopOperationRow;
import org.borewright.catalog.store.row.TorqueStageRow;
import org.borewright.fit.shape.BoltShape;
import org.borewright.fit.shape.MetricThread;
import org.borewright.measure.Torque;

/** What the shop does and tightens, from its rows. */
final class WorkOfRows {

    private final List<ShopOperation> operations;
    private final Map<String, List<FastenerRow>> fasteners;
    private final Map<String, List<TorqueStageRow>> stages;

    WorkOfRows(CatalogRows rows) {
        operations = rows.of(ShopOperationRow.class).stream()
                .sorted(comparingInt(row -> row.order))
                .map(WorkOfRows::operation)
                .toList();
        fasteners = rows.by(row -> row.engine, FastenerRow.class);
        stages = rows.by(row -> row.engine, TorqueStageRow.class);
    }

    List<ShopOperation> operations() {
        return operations;
    }

    List<Fastener> fasteners(String engine) {
        return fasteners.getOrDefault(engine, List.of()).stream()
                .sorted(comparingInt(row -> row.order))
                .map(this::fastener)
                .toList();
    }

    private Fastener fastener(FastenerRow row) {
        return new Fastener(
                row.fastener,
                row.count,
                bolt(row),
                Optional.ofNullable(row.singleUseBolt).map(number -> new Bolt(new PartNumber(number))),
                stages.getOrDefault(row.engine, List.of()).stream()
                        .filter(stage -> stage.fastener.equals(row.fastener))
                        .sorted(comparingInt(stage -> stage.stage))
                        .map(WorkOfRows::stage)
                        .toList(),
                row.sequence,
                List.of(row.operations.split(" ")));
    }

    private static BoltShape bolt(FastenerRow row) {
        return new BoltShape(
                Optional.ofNullable(row.thread).map(diameter -> new MetricThread(diameter, row.pitch)),
                Optional.ofNullable(row.propertyClass),
                row.condition,
                row.intoAluminium);
    }

    private static TorqueStage stage(TorqueStageRow row) {
        return row.torque == null
                ? new TorqueStage.ByAngle(row.angle)
                : new TorqueStage.ToTorque(new Torque(row.torque));
    }

    private static ShopOperation operation(ShopOperationRow row) {
        return new ShopOperation(row.operation, row.name, row.when, row.per, row.price, row.days);
    }
}
