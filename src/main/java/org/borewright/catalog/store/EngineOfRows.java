package org.borewright.catalog.store;

import static java.util.Comparator.comparingInt;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Build;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.EngineName;
import org.borewright.catalog.RodEnd;
import org.borewright.catalog.ServiceLimits;
import org.borewright.catalog.store.row.CylinderRow;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.fit.CommonPractice;
import org.borewright.fit.shape.Choke;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.HeadShape;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.WallShape;
import org.borewright.measure.Expansion;

/** An engine from its row and the rows of its cylinders; what the row leaves open is common practice. */
final class EngineOfRows {

    private EngineOfRows() {}

    static Engine of(EngineRow row, List<CylinderRow> cylinders) {
        return new Engine(
                new EngineName(row.engine, row.model, row.maker),
                new Build(row.strokes, row.layout, row.construction, row.surface, row.torquePlate, row.steps),
                cylinders.stream()
                        .sorted(comparingInt(hole -> hole.order))
                        .map(EngineOfRows::cylinder)
                        .toList(),
                bore(row),
                wall(row),
                deck(row),
                new RodEnd(new PinSeat(row.rodBore, row.rodFit), row.pinPressed, row.smallEndBearing),
                limits(row));
    }

    /** The expansion of a material, its figures as typed in 10⁻⁶/K. */
    static Expansion expansion(double perKelvin, Optional<Double> uncertainty) {
        return new Expansion(
                perKelvin / 1e6, uncertainty.map(figure -> figure / 1e6).orElse(Expansion.USUAL_UNCERTAINTY));
    }

    private static Expansion wallExpansion(EngineRow row) {
        if (row.expansionUncertainty == null && row.construction == Construction.SLEEVED_ALUMINIUM_BARREL) {
            return new Expansion(row.expansion / 1e6, Expansion.SLEEVE_IN_ALUMINIUM_UNCERTAINTY);
        }
        return expansion(row.expansion, Optional.ofNullable(row.expansionUncertainty));
    }

    private static Cylinder cylinder(CylinderRow row) {
        return new Cylinder(row.cylinder, row.hand, Optional.ofNullable(row.pitchToNext));
    }

    private static BoreSpec bore(EngineRow row) {
        return new BoreSpec(
                row.bore,
                row.newBore,
                wallExpansion(row),
                row.labelNames,
                Optional.ofNullable(row.honeStock).orElseGet(CommonPractice::honeStock),
                Optional.ofNullable(row.honeCleanUp).orElseGet(CommonPractice::honeCleanUp),
                Optional.ofNullable(row.centring).orElseGet(CommonPractice::centringError),
                Optional.ofNullable(row.largestOversize).orElseGet(() -> CommonPractice.largestOversize(row.steps)));
    }

    private static WallShape wall(EngineRow row) {
        return new WallShape(
                Optional.ofNullable(row.sleeveOutside),
                Optional.ofNullable(row.wallLeast),
                Optional.ofNullable(row.spigotOutside),
                Optional.ofNullable(row.spigotWallLeast),
                Optional.ofNullable(row.bridgeLeast));
    }

    private static DeckShape deck(EngineRow row) {
        HeadShape head = new HeadShape(
                row.chamber, row.headFlat, Optional.ofNullable(row.headMouth), row.gasketLand, row.ratioGreatest);
        return new DeckShape(row.barrelHeight, row.stroke, row.rod, row.pistonToHead, head);
    }

    private static ServiceLimits limits(EngineRow row) {
        return new ServiceLimits(
                row.wearAllowance,
                row.taperAllowance,
                row.outOfRoundAllowance,
                Optional.ofNullable(row.choke).map(Choke::new),
                Optional.ofNullable(row.finishedShape).orElseGet(CommonPractice::finishedShape),
                row.deckFlatness,
                row.skimGreatest,
                row.massSpread);
    }
}
