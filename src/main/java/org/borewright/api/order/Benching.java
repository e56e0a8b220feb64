package org.borewright.api.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.borewright.api.bench.answer.BenchAnswer;
import org.borewright.api.bench.answer.FinishAnswer;
import org.borewright.api.bench.request.BenchReader;
import org.borewright.api.bench.request.FinishReader;
import org.borewright.api.bench.request.Question;
import org.borewright.api.order.answer.Holds;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.Readiness;
import org.borewright.kit.bench.finish.Finish;
import org.borewright.kit.bench.finish.FinishRequest;
import org.borewright.kit.bench.finish.JudgedHole;
import org.borewright.kit.bench.finish.Judgement;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.order.Errand;
import org.borewright.order.HoleRecord;
import org.borewright.order.OrderHold;
import org.borewright.order.PistonsFitted;
import org.borewright.order.desk.OrderBench;
import org.borewright.order.desk.OrderBench.Benched;
import org.borewright.order.desk.OrderBench.Verdict;
import org.borewright.order.desk.Paper;

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

    Benched confirm(Errand errand, byte[] body) {
        if (bench.isRingsOnly(errand)) {
            return bench.confirm(errand, ringsOnly(surveying.read(errand, body)));
        }
        Question<BenchRequest> asked = plans.read(body);
        BenchPlan plan = BenchPlan.of(asked.fits(), asked.request());
        BenchAnswer answer = BenchAnswer.of(asked.fits(), asked.request(), plan, asked.unit());
        SortedMap<String, PistonsFitted.Piston> paired = new TreeMap<>();
        plan.holes()
                .forEach(hole -> hole.piston()
                        .ifPresent(piston -> paired.put(
                                hole.hole().name(),
                                new PistonsFitted.Piston(
                                        Optional.of(piston.tag()),
                                        piston.part().number().text()))));
        List<OrderHold> holds = new ArrayList<>(Holds.of(plan, asked.unit()));
        List<OrderHold> unweighed =
                bench.areOwnPistons(errand) ? Holds.ofUnweighed(asked.request().pistons()) : List.of();
        holds.addAll(unweighed);
        Readiness readiness = unweighed.isEmpty() ? plan.readiness() : Readiness.HOLD;
        return bench.confirm(
                errand,
                new Verdict(
                        asked.fits().shelf().engine().code(),
                        Optional.of(fitted(asked.request().choice(), paired)),
                        readiness.label(),
                        readiness == Readiness.READY,
                        holds,
                        paper(answer.says(), body, answer)));
    }

    Benched finish(Errand errand, byte[] body) {
        if (bench.isRingsOnly(errand)) {
            Surveyed surveyed = surveying.read(errand, body);
            return bench.finish(errand, ringsOnly(surveyed), surveyed.holes());
        }
        Question<FinishRequest> asked = finishes.read(body);
        Finish finish = Finish.of(asked.fits(), asked.request());
        FinishAnswer answer = FinishAnswer.of(asked.fits(), asked.request(), finish, asked.unit());
        Choice choice = asked.request().choice();
        SortedMap<String, PistonsFitted.Piston> built = new TreeMap<>();
        asked.request()
                .holes()
                .forEach(hole -> built.put(
                        hole.survey().cylinder(),
                        new PistonsFitted.Piston(
                                hole.tag(), hole.part().number().text())));
        return bench.finish(
                errand,
                new Verdict(
                        asked.fits().shelf().engine().code(),
                        Optional.of(fitted(choice, built)),
                        finish.judgement().label(),
                        finish.judgement() == Judgement.PASS,
                        Holds.of(finish.holds(), asked.unit()),
                        paper(answer.says(), body, answer)),
                records(asked, finish));
    }

    private static PistonsFitted fitted(Choice choice, SortedMap<String, PistonsFitted.Piston> byCylinder) {
        return new PistonsFitted(choice.design().code(), choice.size().label(), byCylinder);
    }

    private static List<HoleRecord> records(Question<FinishRequest> asked, Finish finish) {
        Size size = asked.request().choice().size();
        return finish.holes().stream()
                .map(JudgedHole::hole)
                .map(hole -> Measured.with(asked.request().ofHoles())
                        .record(hole, Optional.of(size.label()), asked.fits().leftAfter(size)))
                .toList();
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
                Holds.ofRings(rings, surveyed.asked().unit()),
                surveyed.paper());
    }

    private Paper paper(String says, byte[] body, Object answer) {
        return new Paper(says, new String(body, StandardCharsets.UTF_8), counter.written(answer));
    }
}
