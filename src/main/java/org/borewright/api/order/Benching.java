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
import org.borewright.api.match.request.Asked;
import org.borewright.api.order.answer.Holds;
import org.borewright.api.order.answer.Sold;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.BeforeBoring;
import org.borewright.kit.Match;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.Readiness;
import org.borewright.kit.bench.finish.Finish;
import org.borewright.kit.bench.finish.FinishRequest;
import org.borewright.kit.bench.finish.JudgedHole;
import org.borewright.kit.bench.finish.Judgement;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.request.Deck;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.order.Errand;
import org.borewright.order.HoleRecord;
import org.borewright.order.OrderHold;
import org.borewright.order.PistonsFitted;
import org.borewright.order.desk.OrderBench;
import org.borewright.order.desk.OrderBench.Benched;
import org.borewright.order.desk.OrderBench.Verdict;
import org.borewright.order.desk.Paper;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.PaperRow;

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
        if (bench.isRingsOnly(errand.order())) {
            return bench.confirm(errand, ringsOnly(surveying.readWith(sold(errand.order()), errand, body)));
        }
        Planned planned = plan(errand.order(), body);
        BenchPlan plan = planned.plan();
        SortedMap<String, PistonsFitted.Piston> paired = new TreeMap<>();
        plan.holes()
                .forEach(hole -> hole.piston()
                        .ifPresent(piston -> paired.put(
                                hole.hole().name(),
                                new PistonsFitted.Piston(
                                        Optional.of(piston.tag()),
                                        piston.part().number().text()))));
        Question<BenchRequest> asked = planned.asked();
        List<OrderHold> holds = new ArrayList<>(Holds.of(plan, asked.unit()));
        holds.addAll(planned.besides());
        Readiness readiness = planned.besides().isEmpty() ? plan.readiness() : Readiness.HOLD;
        BenchAnswer answer = planned.answer();
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

    /**
     * What the bench would do with an order, nothing of it kept.
     *
     * @param asked of it
     * @param plan the pistons in their holes
     * @param besides what stands in the way beside that: pistons of the owner, and what the survey left open
     */
    record Planned(Question<BenchRequest> asked, BenchPlan plan, List<OrderHold> besides) {

        /** The plan on the wire. */
        BenchAnswer answer() {
            return BenchAnswer.of(asked.fits(), asked.request(), plan, asked.unit());
        }
    }

    /** Plans the bench with what was sold to an order, and with its deck as it was told last. */
    Planned plan(long order, byte[] body) {
        Asked survey = surveying.last(order);
        Sold sold = sold(order);
        Question<BenchRequest> read = plans.readHaving(sold.numbers(), body);
        Surveying.needEngine(OrderRow.findById(order), read.fits());
        Question<BenchRequest> asked = read.of(
                read.request().with(read.request().deck().after(survey.request().deck())));
        return new Planned(
                asked, BenchPlan.of(asked.fits(), asked.request()), besides(order, survey, sold, asked.request()));
    }

    private List<OrderHold> besides(long order, Asked survey, Sold sold, BenchRequest request) {
        boolean own = bench.areOwnPistons(order);
        Shelf shelf = survey.fits().shelf();
        Match match = surveying.match(
                survey,
                request.deck(),
                sold,
                Optional.of(request.choice())
                        .filter(choice -> own && shelf.parts().designs().contains(choice.design())));
        List<Hole> holes = BenchPlan.holes(shelf.engine(), request.cylinders(), request.ofHoles());
        List<OrderHold> besides = new ArrayList<>(own ? Holds.ofUnweighed(request.pistons()) : List.of());
        besides.addAll(Holds.ofSurvey(BeforeBoring.of(match, request.choice(), holes), survey.unit()));
        return besides;
    }

    Benched finish(Errand errand, byte[] body) {
        if (bench.isRingsOnly(errand.order())) {
            Surveyed surveyed = surveying.readLeavingWith(sold(errand.order()), errand, body);
            return bench.finish(errand, ringsOnly(surveyed), surveyed.holes());
        }
        Asked survey = surveying.last(errand.order());
        Question<FinishRequest> asked = honed(errand.order(), survey, body);
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
                        Optional.of(fitted(choice, built)
                                .with(asked.request()
                                        .rings()
                                        .map(set -> set.number().text()))),
                        finish.judgement().label(),
                        finish.judgement() == Judgement.PASS,
                        Holds.of(finish.holds(), asked.unit()),
                        paper(answer.says(), body, answer)),
                records(asked, finish, survey.fits()));
    }

    /** How the honed holes would be judged, nothing of it kept. */
    FinishAnswer judge(long order, byte[] body) {
        Question<FinishRequest> asked = honed(order, surveying.last(order), body);
        return FinishAnswer.of(asked.fits(), asked.request(), Finish.of(asked.fits(), asked.request()), asked.unit());
    }

    /** What is asked after honing, of the deck as it was told last: with the honed holes, before them, or by the survey. */
    private Question<FinishRequest> honed(long order, Asked survey, byte[] body) {
        Sold sold = sold(order);
        Question<FinishRequest> read = finishes.readHaving(sold.numbers(), body);
        Deck told = read.request().deck();
        Deck before = PaperRow.last(order, PaperRow.Kind.BENCH)
                .map(paper -> plans.readHaving(sold.numbers(), paper.request.getBytes(StandardCharsets.UTF_8)))
                .map(plan -> told.after(plan.request().deck()))
                .orElse(told);
        return read.of(read.request().with(before.after(survey.request().deck())));
    }

    private static PistonsFitted fitted(Choice choice, SortedMap<String, PistonsFitted.Piston> byCylinder) {
        return new PistonsFitted(choice.design().code(), choice.size().label(), byCylinder);
    }

    /** @param supplied what anybody is supplied with: rebuilds are left to parts that can be had, and not to the last that lie here */
    private static List<HoleRecord> records(Question<FinishRequest> asked, Finish finish, FitTable supplied) {
        Size size = asked.request().choice().size();
        return finish.holes().stream()
                .map(JudgedHole::hole)
                .map(hole -> Measured.with(asked.request().ofHoles())
                        .record(hole, Optional.of(size.label()), supplied.leftAfter(size), false))
                .toList();
    }

    private Sold sold(long order) {
        return bench.accepted(order).map(counter::offer).map(Sold::of).orElse(Sold.NOTHING);
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
