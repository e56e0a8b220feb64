package org.borewright.kit.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.WallLeft;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.WornHoles;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.Wall;

/** Makes the table of every size for the holes of one request. */
public final class SizeTable {

    private final FitTable fits;
    private final KitFinder kits;
    private final MatchRequest request;
    private final List<Hole> holes;
    private final WornHoles worn;
    private final FinishedHoles finished;

    /** The table of a request, its holes corrected to 20 °C. */
    public SizeTable(FitTable fits, KitFinder kits, MatchRequest request, List<Hole> holes) {
        this.fits = fits;
        this.kits = kits;
        this.request = request;
        this.holes = holes;
        this.worn = new WornHoles(fits.shelf().engine(), request.present());
        this.finished = new FinishedHoles(fits.shelf().engine());
    }

    /** All rows, rising by size; within a size by finish. */
    public List<SizeRow> rows() {
        Map<Size, RebuildsLeft> rebuilds = isSurveyed()
                ? RebuildsLeft.of(fits.shelf(), fits.choices(), finish -> walls(hole -> wall(hole, finish)))
                : fits.left();
        List<SizeRow> rows = new ArrayList<>();
        for (Size size : fits.shelf().sizes()) {
            List<Choice> choices = fits.at(size);
            Optional<RebuildsLeft> left = Optional.ofNullable(rebuilds.get(size));
            if (choices.isEmpty()) {
                List<Check> walls = walls(hole -> wall(hole, fits.finishWithoutPistons(size)));
                rows.add(SizeRow.neverMade(size, withoutPistons(size), walls, left, fits.neverMade(size, walls)));
            }
            for (Choice choice : choices) {
                rows.add(row(choice, left));
            }
        }
        return rows;
    }

    private SizeRow row(Choice choice, Optional<RebuildsLeft> left) {
        List<HoleAtSize> fates = new ArrayList<>(holes.size());
        List<Check> walls = walls(hole -> wall(hole, choice));
        Certainty least = Certainty.CERTAIN;
        for (int i = 0; i < holes.size(); i++) {
            fates.add(fate(choice, i));
            least = least.and(fates.get(i).certainty());
        }
        List<GasketFit> gaskets = fits.gaskets(choice, request.deck().lowered());
        List<GasketFit> fitting = GasketFit.fitting(gaskets);
        Optional<Kit> kit = kits.best(choice, fates, fitting, request.deck().skim());
        Optional<GasketFit> gasket = kit.flatMap(found -> found.over(fitting))
                .or(() -> gaskets.stream().findFirst());
        return new SizeRow(
                choice.size(),
                Optional.of(choice),
                least,
                fates,
                walls,
                left,
                choice.allBlocks(
                        fits.shelf().engine(),
                        wouldBeCut(choice.size()),
                        walls,
                        gaskets,
                        request.deck().skimmedBefore().orElse(Length.ZERO)),
                gaskets,
                gasket,
                kit);
    }

    /** The never made stands beside the certainty, not mixed in; a finished hole is not asked what it might be honed to. */
    private Certainty withoutPistons(Size size) {
        return request.condition() == Condition.FINISHED
                ? Certainty.NO
                : holes.stream().map(hole -> withoutPistons(size, hole)).reduce(Certainty.CERTAIN, Certainty::and);
    }

    /** Whether a worn hole would come out clean at a size for which no piston was ever made: at the least new hole of it. */
    public Certainty withoutPistons(Size size, Hole hole) {
        return worn.withoutPiston(
                size, hole, fits.shelf().engine().newBore(size).least());
    }

    private HoleAtSize fate(Choice choice, int hole) {
        return switch (request.condition()) {
            case WORN -> worn.at(choice, holes.get(hole), choice.pistons().get(hole));
            case FINISHED -> finished.at(holes.get(hole), choice.pistons().get(hole));
        };
    }

    /** Whether all wear on one wall would be cut out as the gauge reads it, though that be not proven. */
    public boolean clearsAtWorst(Hole hole, HoleAtSize fate) {
        Length bar = fate.finish().minus(fits.shelf().engine().bore().honeStock());
        return hole.cleanUp().worst().filter(bar::isMoreThan).isPresent();
    }

    /** Whether some probe could prove it: two walls share a diameter, so that one of them stands off any axis by half of it at the least. */
    public boolean mayBeProvenByProbe(Hole hole, HoleAtSize fate) {
        Length within = hole.wallWithin(fate.finish(), fits.shelf().engine().bore());
        return hole.diameters()
                .filter(measured -> within.doubled().isLessThan(measured.greatest()))
                .isEmpty();
    }

    private boolean wouldBeCut(Size size) {
        Engine engine = fits.shelf().engine();
        return !engine.build().construction().mayBeBored()
                && size.oversize()
                        .isMoreThan(request.present().size().map(Size::oversize).orElse(Length.ZERO));
    }

    /** The wall of one hole at the largest finish of a row: as made, or as it was found to be. */
    public Optional<Check> wall(Hole hole, SizeRow row) {
        return row.choice()
                .map(choice -> wall(hole, choice))
                .orElseGet(() -> wall(hole, fits.finishWithoutPistons(row.size())));
    }

    private Optional<Check> wall(Hole hole, Choice choice) {
        Wall found = hole.survey().wall();
        if (choice.wallAsMade().isPresent()
                && !found.sleevedBefore()
                && found.least().isEmpty()) {
            return choice.wallAsMade();
        }
        return wall(hole, choice.largest().shape().largestFinish());
    }

    private Optional<Check> wall(Hole hole, Length finish) {
        Engine engine = fits.shelf().engine();
        Length present = hole.diameters()
                .map(Limits::least)
                .or(() -> request.present().reliable().map(fits::smallestHole))
                .orElse(engine.bore().asNew().least());
        return WallLeft.check(
                engine.wall(),
                hole.survey().wall(),
                present,
                finish,
                engine.bore().centringError());
    }

    /** The wall of every hole that has a least, each with its hole. */
    private List<Check> walls(Function<Hole, Optional<Check>> wall) {
        List<Check> walls = new ArrayList<>(holes.size());
        for (Hole hole : holes) {
            wall.apply(hole).ifPresent(check -> walls.add(check.at(hole.place())));
        }
        return walls;
    }

    /** Whether the wall of some hole is known better than from the engine as it left the maker. */
    private boolean isSurveyed() {
        return holes.stream()
                .map(hole -> hole.survey().wall())
                .anyMatch(wall -> wall.sleevedBefore() || wall.least().isPresent());
    }
}
