package org.borewright.page.bench.paper;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.borewright.api.order.OrderResource;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.api.order.answer.QuoteAnswer;

/** Finds what the API tells of an order and its papers. */
@ApplicationScoped
public class Folders {

    private final OrderResource orders;

    Folders(OrderResource orders) {
        this.orders = orders;
    }

    /** The folder of an order. @throws ProblemException if there is none of this number */
    public Folder open(OfOrder of) {
        OrderAnswer order = orders.order(of.order);
        return new Folder(
                order,
                lastOfEachKind(of).stream()
                        .map(paper -> orders.paper(of.order, Long.toString(paper.id()), of.called))
                        .toList(),
                Optional.ofNullable(order.acceptedQuote()).map(quote -> offer(of, quote)));
    }

    private Collection<PaperAnswer> lastOfEachKind(OfOrder of) {
        Map<String, PaperAnswer> last = new LinkedHashMap<>();
        orders.papers(of.order, of.called).forEach(paper -> last.put(paper.kind(), paper));
        return last.values();
    }

    private Answer offer(OfOrder of, int quote) {
        QuoteAnswer given = orders.quote(of.order, Integer.toString(quote));
        return Answer.of(Objects.requireNonNull(given.offer(), "a whole quote has its offer"));
    }
}
