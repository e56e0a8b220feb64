package org.borewright.api.order.request;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.api.asked.DateReader;
import org.borewright.api.guard.Parameters;
import org.borewright.order.State;
import org.borewright.order.store.OrderRow;

/**
 * Which orders are asked for: those that answer every condition given, by number, from the one after a number on. A page is not disturbed
 * by orders that come in meanwhile.
 *
 * @param sought the conditions
 * @param limit how many at the most
 */
public record OrderQuery(OrderRow.Sought sought, int limit) {

    /** Reads it. @throws ProblemException if a parameter cannot be used */
    public static OrderQuery read(Parameters parameters) {
        Optional<State> state = state(parameters);
        Optional<String> engine = parameters.text("engine");
        Optional<String> customer = parameters.text("customer");
        Optional<String> block = parameters.text("block");
        Optional<LocalDate> from = day(parameters, "from");
        Optional<LocalDate> to = day(parameters, "to");
        from.filter(first -> to.filter(first::isAfter).isPresent())
                .ifPresent(first -> parameters.fault("to", "The last day is before the first.", first + " or later"));
        OrderQuery query = new OrderQuery(
                new OrderRow.Sought(state, engine, customer, block, from, to, after(parameters)),
                parameters.whole("limit", 1, 200, 50));
        parameters.end();
        return query;
    }

    /** The position after which a page begins. */
    public static long after(Parameters parameters) {
        return parameters
                .number("after", BigDecimal.ZERO, BigDecimal.valueOf(999_999_999_999_999_999L), 0)
                .map(BigDecimal::longValueExact)
                .orElse(0L);
    }

    private static Optional<State> state(Parameters parameters) {
        Optional<String> text = parameters.text("state");
        Optional<State> state = text.flatMap(State::of);
        if (text.isPresent() && state.isEmpty()) {
            parameters.fault(
                    "state",
                    "No order is in such a state.",
                    String.join(
                            ", ", Stream.of(State.values()).map(State::label).toList()));
        }
        return state;
    }

    private static Optional<LocalDate> day(Parameters parameters, String name) {
        Optional<LocalDate> day = parameters.text(name).flatMap(text -> {
            try {
                return Optional.of(LocalDate.parse(text));
            } catch (DateTimeParseException noDay) {
                parameters.fault(name, "This is no day of the calendar.", "as in 2026-12-01");
                return Optional.empty();
            }
        });
        Optional<LocalDate> read = day.filter(DateReader::isInRange);
        if (day.isPresent() && read.isEmpty()) {
            parameters.fault(name, "The date is out of range.", DateReader.RANGE);
        }
        return read;
    }
}
