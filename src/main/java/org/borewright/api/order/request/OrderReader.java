package org.borewright.api.order.request;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.borewright.api.asked.EngineReader;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.store.Shelves;
import org.borewright.order.OrderKind;
import org.borewright.order.desk.OrderDesk;

/** Reads what an order begins with, and the short bodies that move one. */
@ApplicationScoped
public class OrderReader {

    /** Letters, digits, hyphen, dot: what can be stamped on a tag. */
    private static final Pattern TAG = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]{0,39}");

    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_NOTES = 1_500;

    private final Shelves shelves;

    OrderReader(Shelves shelves) {
        this.shelves = shelves;
    }

    /**
     * The customer's yes.
     *
     * @param quote to which quote
     * @param mayWait whether they wait for what can be had but is not there
     */
    public record Yes(int quote, boolean mayWait) {}

    /** A new order. */
    public OrderDesk.Opening opening(byte[] body, String by) {
        Faults faults = Faults.ofBody();
        Place top = ShortBody.top(body, faults, "kind", "customer", "engine", "block", "barrels", "notes");
        OrderKind kind = top.at("kind").isGiven()
                ? top.at("kind")
                        .word(List.of(OrderKind.values()), OrderKind::label)
                        .orElse(OrderKind.REBUILD)
                : OrderKind.REBUILD;
        Optional<String> customer = kept(top.at("customer"), top.at("customer").text(), LONGEST_NAME);
        top.at("customer").need("It is not said for whom the order is.");
        Optional<Engine> engine =
                EngineReader.read(top.at("engine"), shelves.catalogue()).map(Shelf::engine);
        Optional<String> block = block(top.at("block"), kind);
        List<OrderDesk.Opening.Barrel> barrels = barrels(top.at("barrels"), kind, block, engine);
        String notes = notes(top.at("notes")).orElse("");
        faults.raise();
        return new OrderDesk.Opening(
                kind, customer.orElseThrow(), engine.orElseThrow().code(), block, barrels, notes, by);
    }

    /** Whether a text can be the tag of a block or barrel. */
    public static boolean isTag(String text) {
        return TAG.matcher(text).matches();
    }

    /** The tag that stands somewhere; notes a fault where it cannot be one. */
    static Optional<String> tag(Place place) {
        Optional<String> tag = place.text().map(String::strip);
        if (tag.isPresent() && !isTag(tag.get())) {
            place.fault(
                    ProblemType.WRONG_FORM,
                    "This cannot be a tag.",
                    "1 to 40 letters, digits, hyphens and dots, a letter or digit first");
        }
        return tag;
    }

    private static List<OrderDesk.Opening.Barrel> barrels(
            Place place, OrderKind kind, Optional<String> block, Optional<Engine> engine) {
        if (place.isGiven() && kind == OrderKind.PARTS_ALONE) {
            place.fault(ProblemType.WRONG_FORM, "An order for parts alone has no barrels in the shop.", "no tags");
            return List.of();
        }
        return new BarrelsReader(block).read(place, engine);
    }

    private static Optional<String> block(Place place, OrderKind kind) {
        Optional<String> tag = tag(place);
        if (kind == OrderKind.REBUILD) {
            place.need("The block has no tag: the life of its holes is kept by it.");
        } else if (tag.isPresent()) {
            place.fault(ProblemType.WRONG_FORM, "An order for parts alone has no block in the shop.", "no tag");
        }
        return tag;
    }

    /** Why an order ends. */
    public String reason(byte[] body) {
        return ShortBody.only(body, "reason", "It is not said why.", "\"why\"", OrderReader::reason);
    }

    /** Other notes; none where those before are to go. */
    public String notes(byte[] body) {
        return ShortBody.only(
                body,
                "notes",
                "It is not said what is to stand in the notes.",
                "\"what is to be noted\"",
                OrderReader::notes);
    }

    /** The customer's yes. */
    public Yes yes(byte[] body) {
        Faults faults = Faults.ofBody();
        Place top = ShortBody.top(body, faults, "quote", "mayWait");
        top.at("quote").need("It is not said which quote the customer said yes to.");
        Optional<Integer> quote = count(top.at("quote"), 1_000_000);
        boolean mayWait = top.at("mayWait").truth().orElse(false);
        faults.raise();
        return new Yes(quote.orElseThrow(), mayWait);
    }

    /** How many of a number arrived. */
    public int arrived(byte[] body) {
        return ShortBody.only(body, "quantity", "It is not said how many arrived.", "2", place -> count(place, 10_000));
    }

    /** Refuses all that is said where nothing is asked; an empty body is fine. */
    public void nothing(byte[] body) {
        Faults faults = Faults.ofBody();
        ShortBody.top(body, faults);
        faults.raise();
    }

    /** A whole number from 1 to a limit. */
    static Optional<Integer> count(Place place, int most) {
        return place.number().flatMap(number -> {
            boolean fits = number.stripTrailingZeros().scale() <= 0
                    && number.signum() > 0
                    && number.compareTo(BigDecimal.valueOf(most)) <= 0;
            if (!fits) {
                place.fault(ProblemType.BAD_FIGURE, "This is no whole number in its range.", "1 to " + most);
                return Optional.empty();
            }
            return Optional.of(number.intValueExact());
        });
    }

    private static Optional<String> reason(Place place) {
        return kept(place, place.lines(), LONGEST_NOTES);
    }

    private static Optional<String> notes(Place place) {
        Optional<String> text = place.lines().map(String::strip);
        if (text.isPresent() && text.get().length() > LONGEST_NOTES) {
            place.fault(ProblemType.WRONG_FORM, "This text is too long.", "at most " + LONGEST_NOTES + " characters");
        }
        return text.filter(said -> said.length() <= LONGEST_NOTES);
    }

    /** A text of one character at the least. */
    private static Optional<String> kept(Place place, Optional<String> typed, int longest) {
        Optional<String> text = typed.map(String::strip);
        Optional<String> kept = text.filter(said -> !said.isEmpty() && said.length() <= longest);
        if (text.isPresent() && kept.isEmpty()) {
            place.fault(ProblemType.WRONG_FORM, "This text is empty or too long.", "1 to " + longest + " characters");
        }
        return kept;
    }
}
