package org.borewright.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.kit.hole.Examination;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.TurningPoint;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.kit.rings.RingsTurning;
import org.borewright.kit.table.HardestHoles;
import org.borewright.kit.table.Settling;
import org.borewright.kit.table.SizeRow;
import org.borewright.kit.table.SizeTable;
import org.borewright.kit.table.TurningPoints;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;

/**
 * The answer to a request: one size for the engine and a complete kit, or what stands in the way. The same request on the same catalogue
 * revision gives the same answer.
 *
 * @param ruling the verdict, the size it names and what holds
 * @param table every size
 * @param holes every hole
 * @param checks of parts, metal, gasket and skim at the size named, and of the flatness of the deck
 * @param ringsOnly whether new rings alone will do; empty for finished holes, and where the present size cannot be right
 * @param settling the smaller size that a reading might prove; empty when there is none
 * @param turningPoints the readings of worn holes that would change whether rings only will do or the size, and how far they would have to
 *     move; none where no reading heals a hole
 * @param hardest the worn holes that drag the others to a larger size, or to none; empty when none does
 * @param work what the shop does
 * @param torques what is tightened
 * @param portsHigher by how much the ports of a two-stroke stand higher with its gaskets than as made; empty where they stay
 * @param cautions what must be said
 */
public record Match(
        Ruling ruling,
        List<SizeRow> table,
        List<HoleReport> holes,
        List<Check> checks,
        Optional<RingsOnly> ringsOnly,
        Optional<Settling> settling,
        List<TurningPoint> turningPoints,
        Optional<HardestHoles> hardest,
        ShopWork work,
        List<TorqueReminder> torques,
        Optional<Length> portsHigher,
        List<Caution> cautions) {

    /** Answers a request. */
    public static Match of(FitTable fits, KitFinder kits, MatchRequest request) {
        Shelf shelf = fits.shelf();
        Engine engine = shelf.engine();
        List<Hole> holes = holes(fits, request);
        SizeTable sizes = new SizeTable(fits, kits, request, holes);
        List<SizeRow> table = sizes.rows();
        Ruling first = rule(holes, sizes, table, fits, request);
        List<HoleReport> reports = new HoleReporter(request, sizes, engine).report(holes, first.row());
        List<Check> checks =
                new ArrayList<>(first.row().map(row -> checks(engine, row)).orElse(List.of()));
        checks.addAll(request.deck().checks(engine.limits()));
        Ruling ruling =
                first.row().map(row -> held(first, row, reports, checks)).orElse(first);
        ShopWork work = ShopWork.of(
                shelf,
                first.row().map(SizeRow::holes).orElse(List.of()),
                request.deck().skim());
        List<TorqueReminder> torques = new ArrayList<>(fits.torques());
        torques.removeIf(reminder -> !work.touches(reminder.fastener()));
        Optional<Length> portsHigher =
                first.row().flatMap(SizeRow::gasket).flatMap(fit -> shelf.portsHigher(fit.gaskets()));
        Optional<RingsOnly> ringsOnly = ringsOnly(fits, kits, request, reports, first);
        return new Match(
                ruling,
                table,
                reports,
                checks,
                ringsOnly,
                Settling.of(engine.bore(), request.climate().temperature(), holes, table, first.row()),
                ruling.verdict() == Verdict.REFER ? List.of() : turningPoints(fits, request, holes, table, ringsOnly),
                hardest(request.condition(), ruling, table),
                work,
                torques,
                portsHigher,
                new MatchCautions(engine, request, portsHigher).of(reports, ringsOnly, torques));
    }

    /** The holes as surveyed, in the engine's order. */
    public List<Hole> surveyed() {
        return holes.stream().map(HoleReport::hole).toList();
    }

    /** The kit of the size named, and the work; no kit where no size is named. */
    public Job job() {
        return new Job(ruling.row().flatMap(SizeRow::kit), work);
    }

    /**
     * The sizes that come out clean, or may, and that something else than the wear stands against: those below the smallest that serves, or
     * below the smallest possible where none is certain; where no size that was made is possible those that were only never made.
     */
    public List<SizeRow> passedOver() {
        Optional<Size> smallest = ruling.wouldServe()
                .or(ruling::row)
                .or(this::smallestPossible)
                .filter(SizeRow::isOpen)
                .map(SizeRow::size);
        boolean onlyNeverMade = ruling.isOn(Hold.Reason.POSSIBLE_NEVER_MADE);
        Map<Size, SizeRow> passed = new LinkedHashMap<>();
        table.stream()
                .filter(row -> row.certainty() != Certainty.NO && !row.isOpen())
                .filter(row -> onlyNeverMade
                        ? row.wantsPistons(Certainty.POSSIBLE)
                        : smallest.filter(named -> row.size().compareTo(named) < 0)
                                .isPresent())
                .forEach(row -> passed.putIfAbsent(row.size(), row));
        return List.copyOf(passed.values());
    }

    private Optional<SizeRow> smallestPossible() {
        return ruling.verdict() == Verdict.NO_CERTAIN_SIZE ? SizeRow.smallestPossible(table) : Optional.empty();
    }

    /** All checks that were not made, of parts, holes and torques: they do not apply or cannot be reckoned. */
    public List<Check> notMade() {
        List<Check> all = new ArrayList<>(checks);
        holes.forEach(report -> all.addAll(report.checks()));
        torques.forEach(reminder -> all.addAll(reminder.checks()));
        return Check.ended(all, Outcome.NOT_CHECKED);
    }

    /** Where each finished hole stands among the sizes; empty for worn holes. */
    public List<FinishedHole> finishedHoles(Condition condition) {
        return condition == Condition.WORN
                ? List.of()
                : IntStream.range(0, holes.size())
                        .mapToObj(i -> FinishedHole.of(holes.get(i).hole(), i, table))
                        .toList();
    }

    /** For finished holes that differ the size that they can be cut to, for holes whose size wants parts one that wants none; empty otherwise. */
    public Optional<SizeRow> bringTogether(Condition condition) {
        return condition == Condition.WORN
                        || ruling.row().filter(SizeRow::isOpen).isPresent()
                ? Optional.empty()
                : FinishedRuling.bringTogether(table)
                        .filter(row -> row.isOpen() || ruling.row().isEmpty());
    }

    /** Against the size that serves; where no size is certain for a hole, against none. */
    private static Optional<HardestHoles> hardest(Condition condition, Ruling ruling, List<SizeRow> table) {
        if (condition == Condition.FINISHED) {
            return Optional.empty();
        }
        return ruling.verdict() == Verdict.REFER
                        || ruling.verdict() == Verdict.NO_CERTAIN_SIZE
                        || ruling.isOn(Hold.Reason.NO_SIZE_LEFT)
                ? HardestHoles.beyond(table)
                : ruling.wouldServe()
                        .or(ruling::row)
                        .filter(SizeRow::serves)
                        .flatMap(row -> HardestHoles.of(table, row));
    }

    /** Of rings only first, as it is said first; none where a worn hole contradicts what is told of it. */
    private static List<TurningPoint> turningPoints(
            FitTable fits, MatchRequest request, List<Hole> holes, List<SizeRow> table, Optional<RingsOnly> ringsOnly) {
        return ringsOnly
                .map(rings -> Stream.concat(
                                RingsTurning.around(rings, fits, request, holes).stream(),
                                new TurningPoints(fits, request, holes, table).around().stream())
                        .toList())
                .orElse(List.of());
    }

    private static Optional<RingsOnly> ringsOnly(
            FitTable fits, KitFinder kits, MatchRequest request, List<HoleReport> reports, Ruling first) {
        return request.condition() == Condition.FINISHED
                        || first.isOn(Hold.Reason.SMALLER_THAN_PRESENT_SIZE)
                        || first.isOn(Hold.Reason.SMALLER_THAN_WHEN_NEW)
                ? Optional.empty()
                : Optional.of(RingsOnly.of(
                        fits,
                        kits,
                        request,
                        reports.stream().map(HoleReport::hole).toList()));
    }

    private static List<Hole> holes(FitTable fits, MatchRequest request) {
        Engine engine = fits.shelf().engine();
        Optional<Length> presentLeast = request.present().reliable().map(fits::smallestHole);
        List<CylinderSurvey> surveys = Examination.of(request.cylinders());
        List<Hole> holes = new ArrayList<>(engine.cylinders().size());
        for (Cylinder cylinder : engine.cylinders()) {
            CylinderSurvey survey = surveys.get(holes.size());
            holes.add(Hole.of(engine.bore(), cylinder, survey, request.measuring(), presentLeast));
        }
        return holes;
    }

    private static Ruling rule(
            List<Hole> holes, SizeTable sizes, List<SizeRow> table, FitTable fits, MatchRequest request) {
        return beyondMachining(holes, fits.shelf().engine().build().construction())
                .orElseGet(() -> switch (request.condition()) {
                    case WORN ->
                        Contradiction.in(holes, request.present().reliable().map(fits::smallestHole))
                                .orElseGet(() -> new WornRuling(holes, sizes, table).rule(request.asked()));
                    case FINISHED -> new FinishedRuling(holes, table).rule(request.asked());
                });
    }

    private static Optional<Ruling> beyondMachining(List<Hole> holes, Construction construction) {
        List<Hold> holds = Stream.of(
                        Hold.where(
                                Hold.Reason.BEYOND_MACHINING,
                                holes,
                                hole -> hole.survey().has(Finding.Weight.BEYOND_MACHINING)),
                        Hold.where(
                                Hold.Reason.FINDING_NEVER_CUT,
                                holes,
                                hole -> hole.survey().isBeyondMachining(construction.mayBeBored())
                                        && !hole.survey().has(Finding.Weight.BEYOND_MACHINING)))
                .flatMap(Optional::stream)
                .toList();
        return holds.isEmpty() ? Optional.empty() : Optional.of(Ruling.without(Verdict.REFER, holds));
    }

    private static List<Check> checks(Engine engine, SizeRow row) {
        List<Check> checks = new ArrayList<>();
        List<Piston> chosen = row.holes().stream().map(HoleAtSize::piston).toList();
        row.choice().ifPresent(choice -> checks.addAll(choice.metalChecksWith(engine, chosen)));
        row.kit().ifPresent(kit -> checks.addAll(kit.outfit().checks()));
        row.gasket().ifPresent(fit -> checks.addAll(fit.checks()));
        return checks;
    }

    private static Ruling held(Ruling ruling, SizeRow row, List<HoleReport> reports, List<Check> checks) {
        List<Hold> holds = new ArrayList<>(ruling.holds());
        List<Check> unheld = new ArrayList<>(checks);
        holds.forEach(hold -> unheld.removeAll(hold.checks()));
        holds.addAll(Hold.of(
                unheld,
                reports,
                row.running(reports.stream().map(HoleReport::hole).toList())));
        if (row.isOpen() && row.kit().filter(Kit::isComplete).isEmpty()) {
            holds.add(Hold.shortOf(row.kit().map(Kit::missing).orElse(List.of())));
        }
        return ruling.with(row, holds);
    }
}
