package org.borewright.catalog.load.sense;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.TorqueStage;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.TorquePreload;
import org.borewright.measure.Torque;

/** Torques against the proof load of their threads. */
final class TorqueSense {

    private TorqueSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        String engine = shelf.engine().code();
        return shelf.fasteners().stream()
                .flatMap(fastener ->
                        IntStream.range(0, fastener.stages().size()).boxed().flatMap(i -> stage(engine, fastener, i)));
    }

    private static Stream<Objection> stage(String engine, Fastener fastener, int index) {
        Place line = new Place(
                "torque_stages.csv",
                List.of("engine", "fastener", "stage"),
                List.of(engine, fastener.name(), Integer.toString(index + 1)));
        return fastener.stages().get(index) instanceof TorqueStage.ToTorque stage
                ? judge(line, fastener, stage.torque())
                : Stream.empty();
    }

    private static Stream<Objection> judge(Place line, Fastener fastener, Torque torque) {
        return Objection.against(line, "", List.of(TorquePreload.check(fastener.name(), torque, fastener.bolt())));
    }
}
