package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.borewright.order.Move;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.ReservationRow;
import org.jspecify.annotations.Nullable;

/**
 * An order on the wire.
 *
 * @param number its number
 * @param version counts the changes; also its ETag, and what a change is sent with
 * @param kind rebuild or parts alone
 * @param state where it stands
 * @param next the moves that can be made as things stand: none that needs parts, while some are to come
 * @param customer how the shop knows them
 * @param engine its code
 * @param block the shop's tag; absent for parts alone
 * @param barrels the tag of each, by the name of its cylinder; absent where they are not told apart
 * @param notes anything
 * @param openedAt when it was noted
 * @param openedOn the day
 * @param acceptedQuote the quote that the customer said yes to; absent where no yes stands
 * @param heldUntil until when its parts stay put aside; absent where nothing is, or something is to come, or it stays so
 * @param held what is put aside for it, by number; absent in a list
 * @param judgement what the bench said; absent but where it was just asked
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record OrderAnswer(
        long number,
        int version,
        String kind,
        String state,
        List<String> next,
        String customer,
        String engine,
        @Nullable String block,
        @Nullable List<OrderAnswer.BarrelAnswer> barrels,
        String notes,
        Instant openedAt,
        LocalDate openedOn,
        @Nullable Integer acceptedQuote,
        @Nullable Instant heldUntil,
        @Nullable List<OrderAnswer.HeldAnswer> held,
        @Nullable JudgementAnswer judgement) {

    /**
     * A barrel.
     *
     * @param cylinder it sits at
     * @param tag the shop's tag on it
     */
    public record BarrelAnswer(String cylinder, String tag) {

        static @Nullable List<BarrelAnswer> of(OrderRow row) {
            List<BarrelAnswer> barrels = new ArrayList<>();
            row.barrelsInTurn().forEach((cylinder, tag) -> barrels.add(new BarrelAnswer(cylinder, tag)));
            return barrels.isEmpty() ? null : barrels;
        }
    }

    /**
     * What is put aside of one number.
     *
     * @param number of a box or loose part
     * @param putAside of those on the shelf
     * @param toCome awaited
     * @param expectedOn the day they were to be here by when the order began to wait; absent where nothing is to come, or nobody knows
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record HeldAnswer(
            String number,
            int putAside,
            int toCome,
            @Nullable LocalDate expectedOn) {

        static HeldAnswer of(ReservationRow row) {
            return new HeldAnswer(row.number, row.putAside, row.toCome, row.expectedOn);
        }
    }

    /** An order and what is held for it. */
    public static OrderAnswer whole(OrderRow row, List<ReservationRow> held) {
        return of(
                row,
                held.stream().anyMatch(of -> of.toCome > 0),
                held.stream().map(HeldAnswer::of).toList());
    }

    /** An order in a list. */
    static OrderAnswer brief(OrderRow row, boolean partsToCome) {
        return of(row, partsToCome, null);
    }

    private static OrderAnswer of(OrderRow row, boolean partsToCome, @Nullable List<HeldAnswer> held) {
        return new OrderAnswer(
                row.number,
                row.version,
                row.kind.label(),
                row.state.label(),
                row.kind.next(row.state, partsToCome).stream().map(Move::label).toList(),
                row.customer,
                row.engine,
                row.block,
                BarrelAnswer.of(row),
                row.notes,
                row.openedAt,
                row.openedOn,
                row.acceptedQuote,
                row.heldUntil,
                held,
                null);
    }

    /** The same with what the bench just said. */
    public OrderAnswer with(JudgementAnswer told) {
        return new OrderAnswer(
                number,
                version,
                kind,
                state,
                next,
                customer,
                engine,
                block,
                barrels,
                notes,
                openedAt,
                openedOn,
                acceptedQuote,
                heldUntil,
                held,
                told);
    }
}
