package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import org.borewright.api.match.answer.hole.PresentPistonAnswer;
import org.borewright.api.match.answer.hole.RingGapAnswer;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownMoney;
import org.borewright.api.shown.Stencil;
import org.borewright.fit.Certainty;
import org.borewright.kit.Match;
import org.borewright.kit.rings.RingsInHole;
import org.borewright.kit.rings.RingsOnly;
import org.jspecify.annotations.Nullable;

/**
 * Whether new rings alone will do, and the kit for it.
 *
 * @param certainty in the least certain hole
 * @param cylinders the conditions of each hole
 * @param rings the number of the ring set; absent where none is known
 * @param ready the day it can go out; absent where no kit is complete
 * @param bill what to order; absent where rings alone will not do, or no kit can be assembled
 * @param operations what the shop does; absent with the bill
 * @param total parts and work; absent where no kit is complete
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RingsOnlyAnswer(
        String certainty,
        List<RingsInHoleAnswer> cylinders,
        @Nullable String rings,
        @Nullable LocalDate ready,
        @Nullable Stencil<BillAnswer> bill,
        @Nullable OperationsAnswer operations,
        @Nullable ShownMoney total) {

    /**
     * Whether new rings alone will do in one hole.
     *
     * @param cylinder its name
     * @param certainty whether they will
     * @param presentPiston as measured; absent where it was not, or its design is not known
     * @param ringGaps at its smallest and its largest place; absent where they cannot be known
     * @param checks every condition
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record RingsInHoleAnswer(
            String cylinder,
            String certainty,
            @Nullable PresentPistonAnswer presentPiston,
            @Nullable List<RingGapAnswer> ringGaps,
            List<Stencil<ShownCheck>> checks) {

        static RingsInHoleAnswer of(RingsInHole hole, Stencils stencils) {
            return new RingsInHoleAnswer(
                    hole.cylinder(),
                    hole.certainty().label(),
                    hole.piston()
                            .map(piston -> PresentPistonAnswer.of(piston, stencils.unit()))
                            .orElse(null),
                    hole.ringGaps().isEmpty() ? null : RingGapAnswer.of(hole.ringGaps(), stencils.unit()),
                    stencils.checks(hole.checks()));
        }
    }

    /** What a match says of rings only; absent for finished holes. */
    static @Nullable RingsOnlyAnswer of(Match match, LocalDate on, Stencils stencils) {
        return match.ringsOnly().map(rings -> of(rings, on, stencils)).orElse(null);
    }

    private static RingsOnlyAnswer of(RingsOnly rings, LocalDate on, Stencils stencils) {
        boolean offered = rings.certainty() != Certainty.NO && rings.job().kit().isPresent();
        return new RingsOnlyAnswer(
                rings.certainty().label(),
                rings.holes().stream()
                        .map(hole -> RingsInHoleAnswer.of(hole, stencils))
                        .toList(),
                rings.rings().map(set -> set.number().text()).orElse(null),
                offered ? OperationsAnswer.ready(rings.job(), on) : null,
                offered ? stencils.bill(rings.job().kit().get(), on) : null,
                offered ? OperationsAnswer.of(rings.job().work(), stencils) : null,
                offered ? rings.job().total().map(ShownMoney::of).orElse(null) : null);
    }
}
