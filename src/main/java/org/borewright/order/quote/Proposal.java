package org.borewright.order.quote;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.kit.Hold;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.Need;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.ladder.Branch;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.order.PistonsSold;

/**
 * Something a price can be named for: a way to restore the engine whose parts can all be had.
 *
 * @param way what is done, in words
 * @param size of the pistons; empty where those in the engine stay
 * @param job parts and work
 * @param conditions what must turn out right for the price to hold; none where the readings prove all of it
 * @param own the pistons that the owner brings; empty where they are bought, and where those in the engine stay
 */
public record Proposal(String way, Optional<Size> size, Job job, List<String> conditions, Optional<OwnPistons> own) {

    /** What is done with holes that are finished already. */
    public static final String FINISHED_HOLES = "pistons for finished holes";

    /** Copies the list. */
    public Proposal {
        conditions = List.copyOf(conditions);
    }

    /** One without pistons of the owner. */
    public Proposal(String way, Optional<Size> size, Job job, List<String> conditions) {
        this(way, size, job, conditions, Optional.empty());
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

    /** What nobody measured may cost more than is seen: hole by hole, by its name. */
    private static List<String> notMeasured(MatchRequest request, Match match) {
        List<String> open = new ArrayList<>();
        match.surveyed().stream()
                .filter(hole -> hole.at20() instanceof NotMeasured)
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
                Stream.concat(conditions.stream(), more.stream()).distinct().toList(),
                own);
    }

    private static Optional<Proposal> of(Branch branch, Match match) {
        Optional<Size> size = branch.rung().row().map(SizeRow::size);
        return branch.job().map(job -> new Proposal(branch.rung().way().label(), size, job, conditions(branch, match)));
    }

    /** The same with the pistons of the owner, where it goes to their size: that they are what they are said to be comes first. */
    public Proposal with(Choice pistons, Match match) {
        if (!size.equals(Optional.of(pistons.size()))) {
            return this;
        }
        OwnPistons brought = match.table().stream()
                .filter(row -> row.choice().equals(Optional.of(pistons)))
                .map(row -> OwnPistons.of(pistons, row))
                .findFirst()
                .orElseThrow();
        List<String> all = new ArrayList<>(List.of(brought.condition()));
        match.ruling()
                .wouldServe()
                .ifPresent(smaller -> all.add(String.format(
                        Locale.ROOT,
                        "%s would serve the holes as they were measured: %s takes more metal than they need, and leaves them fewer rebuilds.",
                        smaller.size().label(),
                        pistons.size().label())));
        all.addAll(conditions);
        return new Proposal(way, size, job, all, Optional.of(brought));
    }

    /** Its parts. */
    public Kit kit() {
        return job.kit().orElseThrow();
    }

    /**
     * The pistons that its boxes hold, those left over too, but none of another design, or those that the owner brings; empty where those in
     * the engine stay.
     *
     * @throws IllegalStateException if it needs pistons of several designs: one maker's go into an engine
     */
    public Optional<PistonsSold> sold(Parts parts) {
        if (own.isPresent()) {
            return own.map(OwnPistons::choice)
                    .map(choice -> PistonsSold.ofOwner(
                            choice.design().code(), choice.size().label(), ringSets()));
        }
        Set<String> designs = kit().needs().stream()
                .map(Need::part)
                .filter(Piston.class::isInstance)
                .map(part -> ((Piston) part).design())
                .collect(Collectors.toSet());
        if (designs.size() > 1) {
            throw new IllegalStateException("pistons of " + designs + " for one engine");
        }
        return size.flatMap(of -> designs.stream()
                .findFirst()
                .map(design -> new PistonsSold(Optional.of(design), of.label(), counts(design, parts), ringSets())));
    }

    /** The numbers of its ring sets. */
    public SortedSet<String> ringSets() {
        return kit().needs().stream()
                .map(Need::part)
                .filter(RingSet.class::isInstance)
                .map(set -> set.number().text())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private SortedMap<String, Integer> counts(String design, Parts parts) {
        SortedMap<String, Integer> counts = new TreeMap<>();
        for (Piston piston : parts.pistons()) {
            int count = kit().lines().stream()
                    .mapToInt(line -> line.quantity() * line.box().contents().getOrDefault(piston.number(), 0))
                    .sum();
            if (count > 0 && piston.design().equals(design)) {
                counts.put(piston.number().text(), count);
            }
        }
        return counts;
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
        return new Proposal(way, size, new Job(job.kit(), new ShopWork(List.of())), conditions, own);
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
        row.map(SizeRow::walls)
                .map(walls -> Check.ended(walls, Outcome.UNKNOWN))
                .ifPresent(walls ->
                        walls.forEach(wall -> open.add("Open: " + wall.rule().title() + ", " + wall.place() + ".")));
        return open;
    }

    /** All but that nobody measured a hole, which is said of each. */
    private static List<String> holds(Match match) {
        return match.ruling().holds().stream()
                .filter(hold -> hold.reason() != Hold.Reason.NOT_MEASURED)
                .map(Hold::says)
                .toList();
    }
}
