package org.borewright.api.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.borewright.api.bench.answer.BenchAnswer;
import org.borewright.api.bench.answer.FinishAnswer;
import org.borewright.api.bench.request.BenchReader;
import org.borewright.api.bench.request.FinishReader;
import org.borewright.api.bench.request.Question;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.Readiness;
import org.borewright.kit.bench.finish.Finish;
import org.borewright.kit.bench.finish.FinishRequest;
import org.borewright.kit.bench.finish.JudgedHole;
import org.borewright.kit.bench.finish.Judgement;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.order.Errand;
import org.borewright.order.HoleRecord;
import org.borewright.order.desk.OrderBench;
import org.borewright.order.desk.OrderBench.Verdict;
import org.borewright.order.desk.Paper;
import org.borewright.order.store.OrderRow;

/** Takes in what the bench measured: the questions of the bench, answered as such, and kept with the order. */
@ApplicationScoped
class Benching {

    private final BenchReader plans;
    private final FinishReader finishes;
    private final Surveying surveying;
    private final OrderBench bench;
    private final Counter counter;

    Benching(BenchReader plans, FinishReader finishes, Surveying surveying, OrderBench bench, Counter counter) {
        this.plans = plans;
        this.finishes = finishes;
        this.surveying = surveying;
        this.bench = bench;
        this.counter = counter;
    }

    OrderRow confirm(Errand errand, byte[] body) {
        if (bench.isRingsOnly(errand)) {
            return bench.confirm(errand, ringsOnly(surveying.read(errand, body)));
        }
        Question<BenchRequest> asked = plans.read(body);
        BenchPlan plan = BenchPlan.of(asked.fits(), asked.request());
        BenchAnswer answer = BenchAnswer.of(asked.fits(), asked.request(), plan, asked.unit());
        return bench.confirm(
                errand,
                new Verdict(
                        asked.fits().shelf().engine().code(),
                        Optional.of(asked.request().choice().size().label()),
                        plan.readiness().label(),
                        plan.readiness() == Readiness.READY,
                        plan.holds().stream().map(BenchHold::says).toList(),
                        paper(answer.says(), body, answer)));
    }

    OrderRow finish(Errand errand, byte[] body) {
        if (bench.isRingsOnly(errand)) {
            Surveyed surveyed = surveying.read(errand, body);
            return bench.finish(errand, ringsOnly(surveyed), surveyed.holes());
        }
        Question<FinishRequest> asked = finishes.read(body);
        Finish finish = Finish.of(asked.fits(), asked.request());
        FinishAnswer answer = FinishAnswer.of(asked.fits(), asked.request(), finish, asked.unit());
        Size size = asked.request().choice().size();
        List<HoleRecord> holes = finish.holes().stream()
                .map(JudgedHole::hole)
                .map(hole -> Measured.with(asked.request().ofHoles())
                        .record(hole, Optional.of(size.label()), asked.fits().leftAfter(size)))
                .toList();
        return bench.finish(
                errand,
                new Verdict(
                        asked.fits().shelf().engine().code(),
                        Optional.of(size.label()),
                        finish.judgement().label(),
                        finish.judgement() == Judgement.PASS,
                        finish.holds().stream().map(BenchHold::says).toList(),
                        paper(answer.says(), body, answer)),
                holes);
    }

    /** New rings on the pistons that are in it: there is nothing to pair and nothing to hone, but every condition must be met. */
    private static Verdict ringsOnly(Surveyed surveyed) {
        Optional<RingsOnly> rings = surveyed.match().ringsOnly();
        Certainty certainty = rings.map(RingsOnly::certainty).orElse(Certainty.NO);
        return new Verdict(
                surveyed.engine(),
                Optional.empty(),
                "rings only: " + certainty.label(),
                certainty == Certainty.CERTAIN,
                List.of(rings.map(Benching::against).orElse("The holes cannot run on as they are.")),
                surveyed.paper());
    }

    /** What rules it out, or is not met or not known, in one sentence. */
    private static String against(RingsOnly rings) {
        return (rings.certainty() == Certainty.NO ? "Ruled out by: " : "Open: ") + String.join(", ", rings.open())
                + ".";
    }

    private Paper paper(String says, byte[] body, Object answer) {
        return new Paper(says, new String(body, StandardCharsets.UTF_8), counter.written(answer));
    }
}
