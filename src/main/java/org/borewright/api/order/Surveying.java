package org.borewright.api.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.borewright.api.match.Workbench;
import org.borewright.api.match.Workbenches;
import org.borewright.api.match.answer.MatchAnswer;
import org.borewright.api.match.request.Asked;
import org.borewright.api.match.request.MatchReader;
import org.borewright.catalog.Size;
import org.borewright.kit.Match;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.order.Errand;
import org.borewright.order.HoleRecord;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.desk.OrderDesk;
import org.borewright.order.desk.Paper;
import org.borewright.order.store.OrderRow;

/** Takes in surveys: the question of a match, answered as a match, and kept with the order. */
@ApplicationScoped
class Surveying {

    private final MatchReader reader;
    private final Workbenches workbenches;
    private final OrderDesk desk;
    private final Counter counter;

    Surveying(MatchReader reader, Workbenches workbenches, OrderDesk desk, Counter counter) {
        this.reader = reader;
        this.workbenches = workbenches;
        this.desk = desk;
        this.counter = counter;
    }

    OrderRow survey(Errand errand, byte[] body, boolean didNotCleanUp) {
        Asked asked = reader.read(body);
        needEngine(errand, asked.fits().shelf().engine().code());
        Workbench bench = workbenches.of(asked.fits(), asked.catalogue().offers());
        Match match = Match.of(bench.fits(), bench.kits(), asked.request());
        MatchAnswer answer = MatchAnswer.of(bench.fits().shelf(), asked.request(), match, bench.in(asked.unit()));
        Paper paper = new Paper(answer.says(), new String(body, StandardCharsets.UTF_8), counter.written(answer));
        List<HoleRecord> holes = match.surveyed().stream()
                .map(hole -> record(
                        hole,
                        asked.request().present().size().map(Size::label),
                        asked.request().measuring()))
                .toList();
        return didNotCleanUp ? desk.didNotCleanUp(errand, paper, holes) : desk.survey(errand, paper, holes);
    }

    /** An order that is not there is refused by the desk. */
    private static void needEngine(Errand errand, String engine) {
        OrderRow.<OrderRow>findByIdOptional(errand.order())
                .filter(order -> !order.engine.equals(engine))
                .ifPresent(order -> {
                    throw new RefusedException(new Refusal.OfAnother(order.number, "engine", engine, order.engine));
                });
    }

    static HoleRecord record(Hole hole, Optional<String> size, Measuring with) {
        return new HoleRecord(
                hole.name(),
                size,
                hole.diameters().map(Limits::least),
                hole.diameters().map(Limits::greatest),
                hole.diameters().isPresent() ? measured(with) : "not measured");
    }

    private static String measured(Measuring with) {
        return "with " + with.gauge().name().map(name -> "gauge " + name).orElse("a gauge that was not named") + ", "
                + with.climate()
                        .stated()
                        .map(temperature ->
                                String.format(Locale.ROOT, "at %.1f °C", 20 + temperature.kelvinsAboveReference()))
                        .orElse("temperature not stated");
    }
}
