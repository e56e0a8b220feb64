package org.borewright.api.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.borewright.api.match.Workbench;
import org.borewright.api.match.answer.HoldAnswer;
import org.borewright.api.match.answer.MatchAnswer;
import org.borewright.api.match.request.Asked;
import org.borewright.api.order.answer.OfferDocument;
import org.borewright.api.order.request.QuoteAsked;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Size;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.LengthUnit;
import org.borewright.order.Errand;
import org.borewright.order.OrderKind;
import org.borewright.order.desk.OrderDesk;
import org.borewright.order.desk.OrderDesk.Offer;
import org.borewright.order.desk.OrderSettings;
import org.borewright.order.quote.Proposal;
import org.borewright.order.quote.Sum;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.QuoteRow;

/** Names a price for what the last survey of an order says, with the prices and stock of the day. */
@ApplicationScoped
class Quoting {

    private final Surveying surveying;
    private final OrderDesk desk;
    private final OrderSettings settings;
    private final Counter counter;

    Quoting(Surveying surveying, OrderDesk desk, OrderSettings settings, Counter counter) {
        this.surveying = surveying;
        this.desk = desk;
        this.settings = settings;
        this.counter = counter;
    }

    QuoteRow quote(Errand errand, byte[] body) {
        OrderRow order = OrderRow.findById(errand.order());
        Asked surveyed = surveying.last(order.number);
        LocalDate today = desk.today();
        QuoteAsked asked = QuoteAsked.read(body, surveyed.fits());
        Optional<Choice> own = asked.own();
        MatchRequest told = surveyed.request().on(today);
        MatchRequest request = own.map(Choice::size).map(told::asking).orElse(told);
        Workbench shop = surveying.bench(order, surveyed);
        Workbench bench = own.map(shop::withOwn).orElse(shop);
        Estimate estimate = Estimate.of(bench.fits(), bench.kits(), request);
        List<Proposal> proposals = Proposal.of(request, estimate).stream()
                .map(proposal -> order.kind == OrderKind.PARTS_ALONE ? proposal.withoutWork() : proposal)
                .map(proposal -> own.map(pistons -> proposal.with(pistons, estimate.match()))
                        .orElse(proposal))
                .toList();
        Proposal chosen = asked.choosing()
                .among(proposals, request, estimate.match())
                .orElseThrow(() -> nothing(order, proposals, estimate.match(), surveyed.unit()));
        OfferDocument document = OfferDocument.of(
                new OfferDocument.Basis(
                        settings.shopName(),
                        order.engine,
                        surveyed.catalogue().revision(),
                        Optional.ofNullable(order.quoteGivenUp),
                        settings.terms(),
                        today),
                chosen,
                asked.alternatives() ? others(proposals, chosen) : List.of(),
                estimate.match(),
                counter.written(
                        MatchAnswer.of(bench.fits().shelf(), request, estimate.match(), bench.in(surveyed.unit()))));
        return desk.quote(errand, offer(chosen, bench.fits().shelf().parts(), document));
    }

    private static List<Proposal> others(List<Proposal> proposals, Proposal chosen) {
        return proposals.stream().filter(other -> !other.equals(chosen)).toList();
    }

    private Offer offer(Proposal chosen, Parts made, OfferDocument document) {
        Sum sum = chosen.sum(settings.terms());
        String says = String.format(
                Locale.ROOT,
                "%s, %s %s%s%s",
                named(chosen),
                sum.total().amount().toPlainString(),
                sum.total().currency(),
                document.conditional() ? ", conditional" : "",
                document.inPlaceOf() == null ? "" : ", in place of quote " + document.inPlaceOf());
        return new Offer(
                document.validUntil(),
                says,
                chosen.size().map(Size::label),
                chosen.sold(made),
                chosen.ringSets(),
                parts(chosen.kit()),
                counter.written(document));
    }

    private static List<Offer.Part> parts(Kit kit) {
        Map<String, Offer.Part> byNumber = new TreeMap<>();
        for (Kit.Line line : kit.lines()) {
            Offer.Part part = new Offer.Part(line.box().number().text(), line.quantity(), line.leadDays());
            byNumber.merge(part.number(), part, Quoting::together);
        }
        return List.copyOf(byNumber.values());
    }

    private static Offer.Part together(Offer.Part one, Offer.Part other) {
        return new Offer.Part(
                one.number(), one.quantity() + other.quantity(), Math.max(one.leadDays(), other.leadDays()));
    }

    private static String named(Proposal proposal) {
        return proposal.way()
                + proposal.size().map(size -> " to " + size.label()).orElse("")
                + (proposal.own().isPresent() ? " with the owner's own pistons" : "");
    }

    /** Names the ways that there are; where there is none, the way out is that of what holds. */
    private static ProblemException nothing(OrderRow order, List<Proposal> proposals, Match match, LengthUnit unit) {
        List<HoldAnswer> holds = match.ruling().holds().stream()
                .map(hold -> HoldAnswer.of(hold, unit))
                .toList();
        String says = holds.stream().map(hold -> " " + hold.says()).collect(Collectors.joining());
        String ways = proposals.isEmpty()
                ? " There is no way that a price can be named for."
                : proposals.stream()
                        .map(Quoting::named)
                        .collect(Collectors.joining(", ", " A price can be named for: ", "."));
        String detail = "The survey of order " + order.number + " says \""
                + match.ruling().verdict().label() + "\"." + says + ways;
        return new ProblemException(
                Problem.of(ProblemType.NOTHING_TO_QUOTE, detail, wayOut(holds, !proposals.isEmpty())));
    }

    private static String wayOut(List<HoldAnswer> holds, boolean waysNamed) {
        if (holds.isEmpty()) {
            return waysNamed
                    ? "Ask for one of the ways named, or survey anew."
                    : "Find the parts elsewhere, or ask again once they can be had.";
        }
        return holds.stream().map(HoldAnswer::next).distinct().collect(Collectors.joining(" "))
                + (waysNamed ? " Or ask for one of the ways named." : "");
    }
}
