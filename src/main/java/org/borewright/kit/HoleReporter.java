package org.borewright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Engine;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Check;
import org.borewright.fit.CleanUp;
import org.borewright.fit.CleanUpCheck;
import org.borewright.fit.Clearance;
import org.borewright.fit.FinishedShape;
import org.borewright.fit.ShapeShown;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.choice.RingChecks;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.kit.hole.WornShape;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.borewright.kit.table.SizeTable;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;

/** Reports on every hole, and asks all the rules that concern it at the size named. */
final class HoleReporter {

    private final MatchRequest request;
    private final SizeTable sizes;
    private final Engine engine;

    HoleReporter(MatchRequest request, SizeTable sizes, Engine engine) {
        this.request = request;
        this.sizes = sizes;
        this.engine = engine;
    }

    /** The reports, in the engine's order. */
    List<HoleReport> report(List<Hole> holes, Optional<SizeRow> named) {
        List<HoleReport> reports = new ArrayList<>(holes.size());
        for (Hole hole : holes) {
            reports.add(report(hole, named, reports.size()));
        }
        return reports;
    }

    private HoleReport report(Hole hole, Optional<SizeRow> named, int index) {
        Optional<BoreShape> shape =
                hole.at20() instanceof Grid grid ? Optional.of(BoreShape.of(grid)) : Optional.empty();
        boolean mayBeBored = engine.build().construction().mayBeBored();
        Optional<CleanUp> cleanUp =
                request.condition() == Condition.WORN && mayBeBored ? Optional.of(hole.cleanUp()) : Optional.empty();
        Optional<HoleAtSize> fate = named.filter(row -> row.choice().isPresent())
                .map(row -> row.holes().get(index));
        Optional<RingSet> rings =
                named.flatMap(SizeRow::kit).map(kit -> kit.outfit().rings());
        return new HoleReport(
                hole,
                shape,
                cleanUp,
                fate,
                fate.flatMap(at -> rings.map(set -> gaps(hole, at, set))).orElse(List.of()),
                named.map(row -> checks(hole, row, fate)).orElse(List.of()));
    }

    private List<Check> checks(Hole hole, SizeRow row, Optional<HoleAtSize> fate) {
        List<Check> checks = new ArrayList<>();
        fate.flatMap(at -> cleanUp(hole, at)).ifPresent(checks::add);
        hole.contradictedProbe().ifPresent(checks::add);
        sizes.wall(hole, row).ifPresent(checks::add);
        fate.filter(at -> at.work() == Work.AS_IS && hole.diameters().isPresent())
                .ifPresent(at -> checks.addAll(asItIs(hole, row, at.piston().shape())));
        checks.addAll(shape(hole, fate));
        return checks;
    }

    /**
     * Of a hole that is finished already and is not cut again, and of a worn one that is left as it is. What was too little read is named,
     * and holds nothing: it may still prove that a hole is bad, but never that it is good.
     */
    private List<? extends Check> shape(Hole hole, Optional<HoleAtSize> fate) {
        List<? extends Check> asked = shapeAsRead(hole, fate);
        return asked.isEmpty() || ShapeShown.by(hole.at20(), engine.deck().stroke())
                ? asked
                : asked.stream()
                        .map(check -> check.outcome().holds() ? check : ShapeShown.notShown(check.rule()))
                        .toList();
    }

    private List<? extends Check> shapeAsRead(Hole hole, Optional<HoleAtSize> fate) {
        if (fate.filter(at -> at.work() != Work.AS_IS).isPresent()) {
            return List.of();
        }
        if (request.condition() == Condition.FINISHED) {
            return hole.at20() instanceof Grid grid
                    ? FinishedShape.check(
                            grid, hole.ofReading(), engine.limits().honed())
                    : FinishedShape.NOT_CHECKED;
        }
        if (fate.isEmpty()) {
            return List.of();
        }
        return hole.at20() instanceof Grid grid
                ? WornShape.check(grid, hole.ofReading(), engine.limits())
                : WornShape.NOT_CHECKED;
    }

    private static List<Check> asItIs(Hole hole, SizeRow row, PistonShape piston) {
        Limits diameters = hole.diameters().orElseThrow();
        List<Check> checks = new ArrayList<>(Clearance.check(diameters, hole.ofReading(), piston));
        row.kit()
                .ifPresent(kit -> checks.addAll(RingChecks.gapsIn(
                        diameters, hole.ofReading(), kit.outfit().rings(), piston)));
        return checks;
    }

    private Optional<Check> cleanUp(Hole hole, HoleAtSize fate) {
        return switch (fate.work()) {
            case REBORE -> byBar(hole, fate.finish().minus(engine.bore().honeStock()));
            case HONE_ONLY ->
                hole.honeCleanUp()
                        .map(needed -> CleanUpCheck.byHone(needed, honedAtMost(hole, fate), hole.ofReading()));
            case AS_IS -> Optional.empty();
        };
    }

    private Length honedAtMost(Hole hole, HoleAtSize fate) {
        return switch (request.condition()) {
            case WORN -> fate.finish();
            case FINISHED -> FinishedHoles.honedAtMost(hole, fate.piston());
        };
    }

    private Optional<Check> byBar(Hole hole, Length barSize) {
        return switch (request.condition()) {
            case WORN -> hole.cleanUp().worst().map(worst -> CleanUpCheck.byBar(worst, barSize, hole.ofDeciding()));
            case FINISHED ->
                hole.cleanUp().best().map(needed -> CleanUpCheck.byBarInFinished(needed, barSize, hole.ofReading()));
        };
    }

    /** In the hole as it is, or in any that it may become, measured with the gauge of the request; none where nobody knows what it is. */
    private List<RingGapIn> gaps(Hole hole, HoleAtSize fate, RingSet rings) {
        PistonShape piston = fate.piston().shape();
        if (fate.work() == Work.AS_IS) {
            return hole.diameters()
                    .map(measured -> RingGapIn.in(measured, hole.ofReading(), List.of(rings), piston))
                    .orElse(List.of());
        }
        Limits finishes = piston.finishes();
        return RingGapIn.inAny(
                finishes,
                engine.limits().honed().widens(),
                request.measuring().budget(finishes.least(), engine.bore().expansion()),
                List.of(rings),
                piston);
    }
}
