package org.borewright.api.match.answer;

import java.time.LocalDate;
import java.util.List;
import org.borewright.api.shown.ShownMoney;
import org.borewright.api.shown.Stencil;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.ShopWork;
import org.jspecify.annotations.Nullable;

/**
 * What the shop does, in order.
 *
 * @param lines each operation
 * @param days all of it takes
 */
public record OperationsAnswer(List<Stencil<OperationsAnswer.LineAnswer>> lines, int days) {

    /**
     * One operation.
     *
     * @param operation its code
     * @param name in words
     * @param per hole or engine
     * @param quantity on how many
     * @param price for one
     * @param total price × quantity
     * @param days it takes
     */
    public record LineAnswer(
            String operation, String name, String per, int quantity, ShownMoney price, ShownMoney total, int days) {

        /** A line on the wire. */
        public static LineAnswer of(ShopWork.Line line) {
            return new LineAnswer(
                    line.operation().code(),
                    line.operation().name(),
                    line.operation().per().label(),
                    line.quantity(),
                    ShownMoney.of(line.operation().price()),
                    ShownMoney.of(line.total()),
                    line.operation().days());
        }
    }

    /** The day a job can go out; absent where its kit is never complete. */
    static @Nullable LocalDate ready(Job job, LocalDate on) {
        return job.days().isPresent() ? on.plusDays(job.days().getAsInt()) : null;
    }

    static OperationsAnswer of(ShopWork work, Stencils stencils) {
        return new OperationsAnswer(stencils.operations(work), work.days());
    }
}
