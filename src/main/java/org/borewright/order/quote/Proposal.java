package org.borewright.order.quote;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.Hold;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.ladder.Branch;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.borewright.order.PistonsSold;

/**
 * Something a price can be named for: a way to restore the engine whose parts can all be had.
 *
 * @param way what is done, in words
 * @param size of the pistons; empty where those in the engine stay
 * @param job parts and work
 * @param conditions what must turn out right for the price to hold; none where the readings prove all of it
 */
public record Proposal(String way, Optional<Size> size, Job job, List<String> conditions) {

    /** What is done with holes that are finished already. */
    public static final String FINISHED_HOLES = "pistons for finished holes";

    /** Copies the list. */
    public Proposal {
        conditions = List.copyOf(conditions);
    }

    /** Everything that a price can be named for, those that take least metal first. */
    public static List<Proposal> of(MatchRequest request, Estimate estimate) {
        Match match = estimate.match();
        Stream<Proposal> ways = request.condition() == Condition.FINISHED
                ? Stream.of(new Proposal(
                        FINISHED_HOLES, match.ruling().row().map(SizeRow::size), match.job(), holds(match)))
                : estimate.branches().stream().flatMap(branch -> of(branch, match).stream());
        List<String> notMeasured = notMeasured(request, match);
        return ways.filter(Proposal::isComplete)
                .map(way -> way.under(notMeasured))
                .toList();
    }

    /** What nobody measured may cost more than is seen. */
    private static List<String> notMeasured(MatchRequest request, Match match) {
        List<String> open = new ArrayList<>();
        match.surveyed().stream()
                .filter(hole -> hole.diameters().isEmpty())
                .forEach(hole -> open.add("Cylinder " + hole.name() + " was not measured."));
        if (request.deck().flatness().isEmpty() && !request.deck().isToBeSkimmed()) {
            open.add("The deck was not measured: a skim, where it needs one, is not in the price.");
        }
        return open;
    }

    private Proposal under(List<String> more) {
        return new Proposal(
                way,
                size,
                job,
                Stream.concat(conditions.stream(), more.stream()).distinct().toList());
    }

    private static Optional<Proposal> of(Branch branch, Match match) {
        Optional<Size> size = branch.rung().row().map(SizeRow::size);
        return branch.job().map(job -> new Proposal(branch.rung().way().label(), size, job, conditions(branch, match)));
    }

    /** Its parts. */
    public Kit kit() {
        return job.kit().orElseThrow();
    }

    /** The pistons that its boxes hold; empty where those in the engine stay. */
    public Optional<PistonsSold> sold(Parts parts) {
        SortedSet<String> numbers = new TreeSet<>();
        Set<String> designs = new HashSet<>();
        for (Piston piston : parts.pistons()) {
            if (kit().lines().stream().anyMatch(line -> line.box().contents().containsKey(piston.number()))) {
                numbers.add(piston.number().text());
                designs.add(piston.design());
            }
        }
        // One maker's pistons go into an engine: no kit mixes designs.
        return size.filter(any -> designs.size() == 1)
                .map(of -> new PistonsSold(designs.iterator().next(), of.label(), numbers));
    }

    /** What it comes to. */
    public Sum sum(Terms terms) {
        return Sum.of(kit(), job.work(), terms);
    }

    /** The day it can go out, when the yes comes on this one. */
    public LocalDate ready(LocalDate on) {
        return on.plusDays(job.days().orElseThrow());
    }

    /** Its parts alone: the machining is done elsewhere. */
    public Proposal withoutWork() {
        return new Proposal(way, size, new Job(job.kit(), new ShopWork(List.of())), conditions);
    }

    private boolean isComplete() {
        return job.kit().filter(Kit::isComplete).isPresent();
    }

    /** What the size named by the match is held by; of any other way what is open there. */
    private static List<String> conditions(Branch branch, Match match) {
        Optional<SizeRow> row = branch.rung().row();
        if (row.isPresent() && row.equals(match.ruling().row())) {
            return holds(match);
        }
        List<String> open = new ArrayList<>();
        if (branch.rung().certainty() != Certainty.CERTAIN) {
            open.add("Not proven by the readings: the way, and with it the price, may turn out to be another.");
        }
        branch.rung().open().forEach(what -> open.add("Open: " + what + "."));
        return open;
    }

    private static List<String> holds(Match match) {
        return match.ruling().holds().stream().map(Hold::says).toList();
    }
}
