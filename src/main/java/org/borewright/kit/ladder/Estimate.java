package org.borewright.kit.ladder;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;

/**
 * What an engine may come to before it is measured: each rung of its ladder with parts, work, days and rebuilds left, and the reading that
 * would decide. It is a match of what is known so far, so that the same readings later lead to the same answer.
 *
 * @param match of what is known
 * @param branches the rungs, those that take least metal first
 * @param skim taken off a deck that is not proven flat, though nobody asked for so much; empty where the deck needs no more than is asked
 */
public record Estimate(Match match, List<Branch> branches, Optional<Length> skim) {

    /** Copies the branches. */
    public Estimate {
        branches = List.copyOf(branches);
    }

    /**
     * The estimate for worn holes of which little or nothing is measured. A deck that is known to be out of flat is reckoned as skimmed, for
     * that is what the job will come to.
     */
    public static Estimate of(FitTable fits, KitFinder kits, MatchRequest told) {
        Engine engine = fits.shelf().engine();
        MatchRequest request = told.with(told.deck().skimmedFlat(engine.limits()));
        Match match = Match.of(fits, kits, request);
        Optional<RingsOnly> rings = RingsOnly.supposing(fits, kits, request, match.surveyed());
        LargestHoles largest = new LargestHoles(fits, request, match);
        List<Branch> branches = Ladder.of(engine, request, match).stream()
                .map(rung -> rung.certainty() == Certainty.NO
                        ? new Branch(rung, Optional.empty(), Optional.empty(), Optional.empty())
                        : switch (rung.way()) {
                            case RINGS_ONLY ->
                                new Branch(
                                        rung,
                                        rings.map(RingsOnly::job),
                                        leftNow(match, request),
                                        rings.flatMap(RingsOnly::rings).flatMap(largest::ofRings));
                            case HONE_ONLY, NEW_PISTONS, REBORE -> toSize(rung, fits, request, largest);
                            case SLEEVE -> new Branch(rung, Optional.empty(), Optional.empty(), Optional.empty());
                        })
                .toList();
        return new Estimate(
                match,
                branches,
                Optional.of(request.deck().skim())
                        .filter(skim -> skim.isMoreThan(told.deck().skim())));
    }

    private static Branch toSize(Rung rung, FitTable fits, MatchRequest request, LargestHoles largest) {
        SizeRow row = rung.row().orElseThrow();
        Optional<Job> job = Optional.of(row)
                .filter(SizeRow::isOpen)
                .map(open -> new Job(
                        row.kit(),
                        ShopWork.of(fits.shelf(), row.holes(), request.deck().skim())));
        return new Branch(rung, job, row.left(), job.flatMap(offered -> largest.of(row)));
    }

    /** Nothing is taken out: those left are those left now. */
    private static Optional<RebuildsLeft> leftNow(Match match, MatchRequest request) {
        Optional<Size> present = request.present().reliable();
        return match.table().stream()
                .filter(row -> present.filter(row.size()::equals).isPresent())
                .findFirst()
                .flatMap(SizeRow::left);
    }
}
