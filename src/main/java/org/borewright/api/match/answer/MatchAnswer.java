package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import org.borewright.api.match.answer.deck.DeckAsFoundAnswer;
import org.borewright.api.match.answer.deck.GasketsAnswer;
import org.borewright.api.match.answer.hole.CylinderAnswer;
import org.borewright.api.match.answer.hole.WorstShapeAnswer;
import org.borewright.api.match.answer.size.CouldSaveAnswer;
import org.borewright.api.match.answer.size.HardestAnswer;
import org.borewright.api.match.answer.size.RungAnswer;
import org.borewright.api.match.answer.size.SizeAnswer;
import org.borewright.api.match.answer.size.TurningAnswer;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownCorrection;
import org.borewright.api.shown.ShownGauge;
import org.borewright.api.shown.ShownMoney;
import org.borewright.api.shown.Stencil;
import org.borewright.catalog.Revision;
import org.borewright.catalog.Shelf;
import org.borewright.kit.FinishedHole;
import org.borewright.kit.Match;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.ladder.Ladder;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The answer to a match on the wire.
 *
 * @param engine its code
 * @param revision the catalogue revision it stands on
 * @param unit of all lengths
 * @param date from which dates are reckoned
 * @param gauge what the readings were judged by; absent when nothing was measured
 * @param correctedFrom how warm the holes were, and how their wall grows; absent when nothing was measured
 * @param deck as found, and what is skimmed off it
 * @param verdict what may be done now
 * @param says the verdict in one plain sentence
 * @param size the size for the whole engine; absent when none is named
 * @param ready the day the job can go out: kit and then work, in calendar days; absent where no kit is complete
 * @param holds what stands in the way
 * @param ringsOnly whether new rings alone will do; absent for finished holes
 * @param ladder the ways to restore the engine, those that take least metal first; absent for finished holes
 * @param couldSave the smaller size that a reading might prove; absent when there is none
 * @param wouldChange the readings that would change the size, and how far they would have to move; none for finished holes
 * @param hardest the holes that drag the others to a larger size; absent where none does
 * @param finishedHoles where each finished hole stands; absent for worn holes
 * @param bringsTogether the size that finished holes can be cut to, and what that takes; absent when not needed
 * @param sizes every size
 * @param cylinders every hole
 * @param worstShape the greatest taper and out-of-round, each with its hole; absent where no hole has a grid
 * @param checks of parts, metal, gasket and skim at the size named, and of the flatness of the deck
 * @param gaskets every set of gaskets over the pistons of the size named, the preferred first; empty when none is named
 * @param bill what to order; absent when no size is named
 * @param operations what the shop does
 * @param torques what is tightened: reminders
 * @param total parts and work; absent where no kit is complete
 * @param cautions what must be said
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record MatchAnswer(
        String engine,
        Revision revision,
        String unit,
        LocalDate date,
        @Nullable ShownGauge gauge,
        @Nullable ShownCorrection correctedFrom,
        DeckAsFoundAnswer deck,
        String verdict,
        String says,
        @Nullable SizeAnswer size,
        @Nullable LocalDate ready,
        List<HoldAnswer> holds,
        @Nullable RingsOnlyAnswer ringsOnly,
        @Nullable List<RungAnswer> ladder,
        @Nullable CouldSaveAnswer couldSave,
        List<TurningAnswer> wouldChange,
        @Nullable HardestAnswer hardest,
        @Nullable List<FinishedHoleAnswer> finishedHoles,
        @Nullable TogetherAnswer bringsTogether,
        List<SizeRowAnswer> sizes,
        List<CylinderAnswer> cylinders,
        @Nullable WorstShapeAnswer worstShape,
        List<Stencil<ShownCheck>> checks,
        List<Stencil<GasketsAnswer>> gaskets,
        @Nullable Stencil<BillAnswer> bill,
        OperationsAnswer operations,
        List<Stencil<TorqueAnswer>> torques,
        @Nullable ShownMoney total,
        List<String> cautions) {

    /** The answer to a request, in the unit of the stencils. */
    public static MatchAnswer of(Shelf shelf, MatchRequest request, Match match, Stencils stencils) {
        LengthUnit unit = stencils.unit();
        return new MatchAnswer(
                shelf.engine().code(),
                shelf.revision(),
                unit.symbol(),
                request.on(),
                Hole.isAnyRead(match.surveyed()) ? ShownGauge.of(request.gauge(), unit) : null,
                ShownCorrection.of(request.climate(), shelf.engine(), match.surveyed()),
                DeckAsFoundAnswer.of(request.deck(), shelf.engine().limits(), unit),
                match.ruling().verdict().label(),
                Sentence.of(match, unit),
                match.ruling().row().map(SizeAnswer::of).orElse(null),
                OperationsAnswer.ready(match.job(), request.on()),
                match.ruling().holds().stream()
                        .map(hold -> HoldAnswer.of(hold, unit))
                        .toList(),
                RingsOnlyAnswer.of(match, request.on(), stencils),
                RungAnswer.ladder(Ladder.of(shelf.engine(), request, match), unit),
                CouldSaveAnswer.of(match.settling(), unit),
                TurningAnswer.of(match.turningPoints(), unit),
                HardestAnswer.of(match, shelf.engine().build().construction(), unit),
                finishedHoles(request, match, unit),
                TogetherAnswer.of(shelf, request, match, stencils),
                match.table().stream()
                        .map(row -> SizeRowAnswer.of(shelf.engine(), row, request.on(), stencils))
                        .toList(),
                match.holes().stream()
                        .map(report -> CylinderAnswer.of(
                                report, shelf.engine().build().construction().mayBeBored(), unit))
                        .toList(),
                WorstShapeAnswer.of(match.holes(), unit),
                stencils.checks(match.checks()),
                match.ruling().row().map(stencils::gaskets).orElse(List.of()),
                match.job().kit().map(kit -> stencils.bill(kit, request.on())).orElse(null),
                OperationsAnswer.of(match.work(), stencils),
                stencils.torques(match.torques()),
                match.job().total().map(ShownMoney::of).orElse(null),
                match.cautions().stream().map(Caution::text).toList());
    }

    private static @Nullable List<FinishedHoleAnswer> finishedHoles(
            MatchRequest request, Match match, LengthUnit unit) {
        List<FinishedHole> holes = match.finishedHoles(request.condition());
        return holes.isEmpty()
                ? null
                : holes.stream().map(hole -> FinishedHoleAnswer.of(hole, unit)).toList();
    }
}
