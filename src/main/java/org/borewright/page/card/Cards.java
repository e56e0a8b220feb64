package org.borewright.page.card;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.borewright.api.order.OrderResource;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.order.OrderKind;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.PaperRow;
import org.borewright.order.store.QuoteRow;
import org.borewright.page.Past;
import org.borewright.page.Told;

/**
 * Writes bench cards. What was confirmed stands on them as it was confirmed; before that nothing but what is planned, for nobody may bore
 * by a figure that no measured piston stands behind.
 */
@ApplicationScoped
class Cards {

    private final OrderResource orders;

    Cards(OrderResource orders) {
        this.orders = orders;
    }

    /**
     * The card of an order.
     *
     * @param number as it stands in the path
     * @param site the address that the pages are reached under, without a stroke at its end
     * @throws ProblemException if there is no such order
     */
    @Transactional
    Card of(String number, String site) {
        OrderAnswer order = orders.order(number);
        OrderRow row = OrderRow.findById(order.number());
        String address = site + "/orders/" + order.number();
        Optional<Card.Confirmed> confirmed = confirmed(row);
        return new Card(
                order,
                address,
                Code.of(address),
                confirmed.map(plan -> says(row, plan)).orElseGet(() -> says(row)),
                confirmed.isPresent() ? null : planned(row).map(Cards::inWords).orElse(null),
                confirmed.orElse(null));
    }

    /** An order that was measured anew, for it did not clean up, is confirmed no longer. */
    private static Optional<Card.Confirmed> confirmed(OrderRow order) {
        return Optional.of(order)
                .filter(standing -> standing.state.isConfirmed())
                .flatMap(standing -> PaperRow.last(standing.number, PaperRow.Kind.BENCH))
                .map(paper -> new Card.Confirmed(
                        paper.at,
                        paper.by,
                        Told.of(paper.answer.getBytes(StandardCharsets.UTF_8)),
                        QuoteRow.of(order.number, order.acceptedQuote)
                                .map(quote -> quote.ringSets.stream().sorted().toList())
                                .orElse(List.of())));
    }

    private static String says(OrderRow order, Card.Confirmed plan) {
        return Past.says(order.state)
                .orElse(
                        plan.told().containsKey("holes")
                                ? "The pistons are confirmed: bore and hone each hole to its own figures."
                                : "New rings go on the pistons that are in it: nothing is bored, and nothing is honed to size.");
    }

    private static String says(OrderRow order) {
        if (order.kind == OrderKind.PARTS_ALONE) {
            return "This order is for parts alone: nothing of it is done on the bench.";
        }
        return switch (order.state) {
            case RECEIVED -> "Not surveyed yet: measure every hole first.";
            case SURVEYED -> "Surveyed, and not quoted yet: cut nothing.";
            case QUOTED -> "Quoted, and not accepted yet: cut nothing.";
            case ACCEPTED -> "Not confirmed yet: measure the pistons and confirm them before anything is cut.";
            case DECLINED, WITHDRAWN -> "This order has ended: nothing more is done on the bench.";
            case CONFIRMED, FINISHED, RELEASED ->
                throw new IllegalStateException("order " + order.number + " was confirmed without a paper");
        };
    }

    /** The quote that the work would go by: the one accepted, else the last, where it stands on the last survey. */
    private static Optional<QuoteRow> planned(OrderRow order) {
        return switch (order.state) {
            case ACCEPTED -> QuoteRow.of(order.number, order.acceptedQuote);
            case QUOTED -> {
                Optional<PaperRow> survey = PaperRow.last(order.number, PaperRow.Kind.SURVEY);
                yield QuoteRow.of(order.number).stream()
                        .reduce((before, after) -> after)
                        .filter(quote -> survey.isPresent() && survey.get().id == quote.survey);
            }
            case RECEIVED, SURVEYED, CONFIRMED, FINISHED, RELEASED, DECLINED, WITHDRAWN -> Optional.empty();
        };
    }

    private static String inWords(QuoteRow quote) {
        return quote.size == null ? "new rings on the pistons that are in it" : quote.size;
    }
}
