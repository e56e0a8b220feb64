package org.borewright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.WallLeft;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.choice.Block;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.WornHoles;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;

/** Makes the table of every size for the holes of one request. */
final class SizeTable {

    private final FitTable fits;
    private final KitFinder kits;
    private final MatchRequest request;
    private final List<Hole> holes;
    private final WornHoles worn;
    private final FinishedHoles finished;

    SizeTable(FitTable fits, KitFinder kits, MatchRequest request, List<Hole> holes) {
        this.fits = fits;
        this.kits = kits;
        this.request = request;
        this.holes = holes;
        this.worn = new WornHoles(fits.shelf().engine(), request.present());
        this.finished = new FinishedHoles(fits.shelf().engine());
    }

    /** All rows, rising by size; within a size by finish. */
    List<SizeRow> rows() {
        List<SizeRow> rows = new ArrayList<>();
        for (Size size : fits.shelf().sizes()) {
            List<Choice> choices = fits.at(size);
            if (choices.isEmpty()) {
                rows.add(SizeRow.neverMade(size, fits.neverMade(size)));
            }
            choices.stream().map(this::row).forEach(rows::add);
        }
        return rows;
    }

    private SizeRow row(Choice choice) {
        List<HoleAtSize> fates =
                IntStream.range(0, holes.size()).mapToObj(i -> fate(choice, i)).toList();
        List<GasketFit> gaskets = gaskets(choice);
        List<Check> walls =
                holes.stream().flatMap(hole -> wall(hole, choice).stream()).toList();
        List<Block> blocks = blocks(choice, gaskets, walls);
        List<GasketFit> fitting = gaskets.stream().filter(GasketFit::fits).toList();
        Optional<Kit> kit = kits.best(choice, fates, fitting, ShopWork.of(fits.shelf(), fates, request.skim()));
        Optional<GasketFit> gasket = kit.flatMap(found -> fitting.stream()
                        .filter(fit -> fit.kit().equals(found.gaskets()))
                        .findFirst())
                .or(() -> gaskets.stream().findFirst());
        return new SizeRow(choice.size(), Optional.of(choice), fates, walls, blocks, gasket, kit);
    }

    private HoleAtSize fate(Choice choice, int hole) {
        return switch (request.condition()) {
            case WORN -> worn.at(choice, holes.get(hole), choice.pistons().get(hole));
            case FINISHED -> finished.at(holes.get(hole), choice.pistons().get(hole));
        };
    }

    private List<GasketFit> gaskets(Choice choice) {
        if (request.skim().equals(Length.ZERO)) {
            return choice.gaskets();
        }
        return choice.gaskets().stream()
                .map(fit -> GasketFit.of(fits.shelf().engine(), fit.kit(), choice.largest(), request.skim()))
                .toList();
    }

    private List<Block> blocks(Choice choice, List<GasketFit> gaskets, List<Check> walls) {
        List<Block> blocks = new ArrayList<>(choice.blocks());
        if (isCutThough(choice.size())) {
            blocks.add(Block.of(Block.Reason.NEVER_BORED));
        }
        List<Check> thin =
                walls.stream().filter(check -> check.outcome() == Outcome.OUT).toList();
        if (!thin.isEmpty()) {
            blocks.add(new Block(Block.Reason.WALL, thin));
        }
        if (gaskets.stream().noneMatch(GasketFit::fits)) {
            blocks.add(new Block(
                    Block.Reason.GASKET,
                    gaskets.stream()
                            .flatMap(fit -> fit.checks().stream())
                            .filter(check -> check.outcome().holds())
                            .toList()));
        }
        return blocks;
    }

    private boolean isCutThough(Size size) {
        Engine engine = fits.shelf().engine();
        return !engine.build().construction().mayBeBored()
                && size.oversize()
                        .isMoreThan(request.present().size().map(Size::oversize).orElse(Length.ZERO));
    }

    /** The wall of one hole at the largest finish of a choice. */
    Optional<Check> wall(Hole hole, Choice choice) {
        Engine engine = fits.shelf().engine();
        Length present = hole.at20().smallest().orElse(engine.bore().asNew().least());
        return WallLeft.check(
                engine.wall(),
                hole.survey().wall(),
                present,
                choice.largest().shape().largestFinish(),
                engine.bore().centringError());
    }
}
