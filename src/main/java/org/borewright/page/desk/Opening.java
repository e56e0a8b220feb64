package org.borewright.page.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.borewright.api.order.OrderMoves;
import org.borewright.api.order.OrderResource;
import org.borewright.api.problem.ProblemException;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.SentForm;
import org.borewright.page.Told;
import org.borewright.page.order.Orders;

/**
 * Makes an order of what the desk found: it is received, surveyed with the form, and quoted. Each is an errand of its own under a key made
 * of that of the form, so that a form sent twice makes one order, and one that was cut short goes on where it stopped.
 */
@ApplicationScoped
class Opening {

    private static final List<String> OF_THE_ORDER = List.of("/customer", "/block", "/notes", "/kind", "by", "key");

    private final OrderResource orders;
    private final OrderMoves moves;
    private final Orders pages;

    Opening(OrderResource orders, OrderMoves moves, Orders pages) {
        this.orders = orders;
        this.moves = moves;
        this.pages = pages;
    }

    /** Whether a field belongs to the order, and not to the question. */
    static boolean isOfTheOrder(String name) {
        return OF_THE_ORDER.contains(name) || name.startsWith("/barrels/");
    }

    /** @throws ProblemException where no order came of it */
    Response order(Form form, Question question) {
        Form ordered = withBarrels(form.only(Opening::isOfTheOrder), question)
                .with("/engine", question.engine().engine());
        Response received =
                orders.receive(SentForm.making("/orders", under(ordered, "opened"), ordered.body()), ordered.body());
        String number = Objects.requireNonNull(Told.of(body(received)).get("number"), "an order without a number")
                .toString();
        if (question.known().isOfHoles()) {
            try {
                Response surveyed = moves.survey(
                        sent(number, "survey", ordered, received),
                        question.asked().body());
                moves.quote(
                        sent(number, "quotes", ordered, surveyed),
                        "{\"alternatives\":true}".getBytes(StandardCharsets.UTF_8));
            } catch (ProblemException refused) {
                return pages.shown(number, ordered, Optional.of(refused.problem()));
            }
        }
        return Page.seeOther("/orders/" + number);
    }

    /** With the names of the cylinders, which nobody types, beside the tags of their barrels where one is told. */
    private static Form withBarrels(Form form, Question question) {
        Form ordered = form;
        if (question.holes().stream()
                .anyMatch(hole -> !form.typed(hole.barrel()).isBlank())) {
            for (Question.Hole hole : question.holes()) {
                ordered = ordered.with(hole.barrelAt(), hole.cylinder());
            }
        }
        return ordered;
    }

    private static SentForm sent(String number, String move, Form ordered, Response before) {
        return new SentForm(
                number,
                move,
                under(ordered, move).with("version", before.getEntityTag().getValue()));
    }

    /** The key of one of its errands; one that is missing stays so. */
    private static Form under(Form form, String errand) {
        String key = form.typed("key");
        return key.isBlank() ? form : form.with("key", key + "-" + errand);
    }

    private static byte[] body(Response answer) {
        return answer.getEntity().toString().getBytes(StandardCharsets.UTF_8);
    }
}
