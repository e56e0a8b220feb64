package org.borewright.api.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import org.borewright.api.match.Workbench;
import org.borewright.api.match.Workbenches;
import org.borewright.api.match.answer.MatchAnswer;
import org.borewright.api.match.request.Asked;
import org.borewright.api.match.request.MatchReader;
import org.borewright.kit.Match;
import org.borewright.order.Errand;
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

    OrderRow survey(Errand errand, byte[] body) {
        Surveyed surveyed = read(body);
        needEngine(errand, surveyed.engine());
        return desk.survey(errand, surveyed.paper(), surveyed.holes());
    }

    OrderRow didNotCleanUp(Errand errand, byte[] body) {
        Surveyed surveyed = read(body);
        needEngine(errand, surveyed.engine());
        return desk.didNotCleanUp(errand, surveyed.paper(), surveyed.holes());
    }

    /** Answers a survey as a match. */
    Surveyed read(byte[] body) {
        Asked asked = reader.read(body);
        Workbench bench = workbenches.of(asked.fits(), asked.catalogue().offers());
        Match match = Match.of(bench.fits(), bench.kits(), asked.request());
        MatchAnswer answer = MatchAnswer.of(bench.fits().shelf(), asked.request(), match, bench.in(asked.unit()));
        return new Surveyed(
                asked,
                match,
                new Paper(answer.says(), new String(body, StandardCharsets.UTF_8), counter.written(answer)));
    }

    /** An order that is not there is refused by the desk. */
    private static void needEngine(Errand errand, String engine) {
        OrderRow.<OrderRow>findByIdOptional(errand.order())
                .filter(order -> !order.engine.equals(engine))
                .ifPresent(order -> {
                    throw new RefusedException(new Refusal.OfAnother(order.number, "engine", engine, order.engine));
                });
    }
}
