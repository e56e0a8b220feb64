package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.borewright.api.shown.ShownMoney;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.jspecify.annotations.Nullable;

/**
 * The size that finished holes can be cut to, and what that takes.
 *
 * @param size its label
 * @param design the pistons' design
 * @param maker who makes them
 * @param operations what the shop would do
 * @param total parts and work; absent where no kit is complete
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record TogetherAnswer(
        String size,
        String design,
        String maker,
        OperationsAnswer operations,
        @Nullable ShownMoney total) {

    static @Nullable TogetherAnswer of(Shelf shelf, MatchRequest request, Match match, Stencils stencils) {
        return match.bringTogether(request.condition())
                .map(row ->
                        of(row, ShopWork.of(shelf, row.holes(), request.deck().skim()), stencils))
                .orElse(null);
    }

    private static TogetherAnswer of(SizeRow row, ShopWork work, Stencils stencils) {
        PistonDesign design = row.choice().map(Choice::design).orElseThrow();
        return new TogetherAnswer(
                row.size().label(),
                design.code(),
                design.maker(),
                OperationsAnswer.of(work, stencils),
                new Job(row.kit(), work).total().map(ShownMoney::of).orElse(null));
    }
}
