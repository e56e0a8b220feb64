package org.borewright.api.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.borewright.api.match.Workbench;
import org.borewright.api.match.Workbenches;
import org.borewright.api.match.answer.MatchAnswer;
import org.borewright.api.match.request.Asked;
import org.borewright.api.match.request.MatchReader;
import org.borewright.api.order.answer.Sold;
import org.borewright.catalog.PartNumber;
import org.borewright.kit.Match;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.NewRings;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.order.Difference;
import org.borewright.order.Errand;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.desk.OrderDesk;
import org.borewright.order.desk.Paper;
import org.borewright.order.desk.StockWatch;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.PaperRow;
import org.borewright.order.store.QuoteRow;
import org.borewright.order.store.ReservationRow;

/** Takes in surveys: the question of a match, answered as a match, and kept with the order. */
@ApplicationScoped
class Surveying {

    private final MatchReader reader;
    private final Workbenches workbenches;
    private final OrderDesk desk;
    private final StockWatch shelf;
    private final Counter counter;

    Surveying(MatchReader reader, Workbenches workbenches, OrderDesk desk, StockWatch shelf, Counter counter) {
        this.reader = reader;
        this.workbenches = workbenches;
        this.desk = desk;
        this.shelf = shelf;
        this.counter = counter;
    }

    /** Before prices are named: what can be had may have changed within the last second. */
    void lookAtTheShelf() {
        shelf.look();
    }

    OrderRow survey(Errand errand, byte[] body) {
        Surveyed surveyed = read(errand, body);
        return desk.survey(errand, surveyed.paper(), surveyed.holes());
    }

    OrderRow didNotCleanUp(Errand errand, byte[] body) {
        Surveyed surveyed = read(errand, body);
        return desk.didNotCleanUp(errand, surveyed.paper(), surveyed.holes());
    }

    /** Answers a survey of the engine ordered as a match, with what is on record of its block. No rings are asked about before they are bought. */
    Surveyed read(Errand errand, byte[] body) {
        return answered(errand, body, told(body, rings -> NewRings.ANY), Sold.NOTHING);
    }

    /** The same once rings are bought for it. */
    Surveyed readWith(Sold sold, Errand errand, byte[] body) {
        return answered(errand, body, told(body, rings -> NewRings.bought(sold.ringSets())), sold);
    }

    /** The same on the day it leaves with them. */
    Surveyed readLeavingWith(Sold sold, Errand errand, byte[] body) {
        return answered(errand, body, told(body, rings -> rings.leavingWith(sold.ringSets())), sold);
    }

    private Asked told(byte[] body, UnaryOperator<NewRings> rings) {
        Asked told = reader.read(body);
        return told.with(told.request().with(rings.apply(told.request().rings())));
    }

    private Surveyed answered(Errand errand, byte[] body, Asked told, Sold sold) {
        OrderRow order = OrderRow.findById(errand.order());
        Asked asked = recalled(order, told);
        needEngine(order, asked.fits());
        Workbench ofAll = workbenches.of(asked);
        Workbench bench = bench(order, ofAll).having(sold.numbers());
        Match match = Match.of(bench.fits(), bench.kits(), asked.request());
        MatchAnswer answer = MatchAnswer.of(bench.fits().shelf(), asked.request(), match, bench.in(asked.unit()));
        return new Surveyed(
                asked,
                match,
                bench.fits().equals(ofAll.fits())
                        ? match.table()
                        : Match.of(ofAll.fits(), ofAll.kits(), asked.request()).table(),
                new Paper(answer.says(), new String(body, StandardCharsets.UTF_8), counter.written(answer)),
                told.request().cylinders().stream()
                        .filter(hole -> hole.wall().lastFinish().isPresent())
                        .map(CylinderSurvey::cylinder)
                        .collect(Collectors.toSet()));
    }

    /** The last survey of an order, read again. */
    Asked last(long number) {
        OrderRow order = OrderRow.findById(number);
        String request = PaperRow.last(number, PaperRow.Kind.SURVEY).orElseThrow().request;
        return recalled(order, told(request.getBytes(StandardCharsets.UTF_8), told -> NewRings.ANY));
    }

    /** What answers a question of an order that was surveyed. */
    Workbench bench(OrderRow order, Asked asked) {
        return bench(order, workbenches.of(asked));
    }

    /**
     * Nobody else gets what is put aside for an order, so for the order itself it lies on the shelf, and is supplied where all of it is here,
     * whatever became of it since. It is counted after the shelf was, so what goes back meanwhile is not counted twice.
     */
    private Workbench bench(OrderRow order, Workbench ofAll) {
        Map<PartNumber, Integer> own = new TreeMap<>();
        Set<PartNumber> whole = new TreeSet<>();
        for (ReservationRow row : ReservationRow.of(order.number)) {
            PartNumber number = new PartNumber(row.number);
            if (row.putAside > 0) {
                own.put(number, row.putAside);
            }
            if (row.toCome == 0) {
                whole.add(number);
            }
        }
        return own.isEmpty() ? ofAll : ofAll.having(putAside(order).in(whole)).withMore(own);
    }

    /** What the quote sells that parts are put aside for: the one accepted, or that was before holes did not clean up. */
    private Sold putAside(OrderRow order) {
        return Optional.ofNullable(order.acceptedQuote)
                .or(() -> Optional.ofNullable(order.quoteGivenUp))
                .flatMap(quote -> QuoteRow.of(order.number, quote))
                .map(counter::offer)
                .map(Sold::of)
                .orElse(Sold.NOTHING);
    }

    /**
     * A survey of an order answered anew, of a deck as it is by now, with what was sold, and with the pistons of the owner where they are to
     * go in.
     */
    Match match(Asked survey, Deck deck, Sold sold, Optional<Choice> own) {
        Workbench shop = workbenches.of(survey).having(sold.numbers());
        Workbench bench = own.map(shop::withOwn).orElse(shop);
        return Match.of(bench.fits(), bench.kits(), survey.request().with(deck));
    }

    /** The question of a survey, with what is on record of the block. */
    private static Asked recalled(OrderRow order, Asked asked) {
        return asked.with(BlockRecord.of(order).recalledBy(asked.request()));
    }

    /** @throws RefusedException where something else is asked about than the engine of the order */
    static void needEngine(OrderRow order, FitTable fits) {
        String engine = fits.shelf().engine().code();
        if (!order.engine.equals(engine)) {
            throw new RefusedException(
                    new Refusal.OfAnother(order.number, List.of(Difference.ofEngine(engine, order.engine))));
        }
    }
}
