package org.borewright.page.order;

import jakarta.ws.rs.core.UriInfo;
import java.util.LinkedHashMap;
import java.util.Map;
import org.borewright.api.order.answer.OrdersAnswer;
import org.borewright.order.State;
import org.borewright.page.Form;
import org.jspecify.annotations.Nullable;

/**
 * A page of a list that goes on from a number, and what it was asked with.
 *
 * @param form what is looked for
 * @param further the address of the page that follows; absent on the last
 */
record Listing(Form form, @Nullable String further) {

    static Listing of(UriInfo asked, OrdersAnswer found) {
        Map<String, String> fields = new LinkedHashMap<>();
        asked.getQueryParameters().forEach((name, values) -> fields.put(name, values.get(0)));
        Long after = found.after();
        return new Listing(
                new Form(fields),
                after == null
                        ? null
                        : asked.getRequestUriBuilder()
                                .replaceQueryParam("after", after)
                                .build()
                                .getRawQuery());
    }

    /** The states to choose among. */
    static Map<String, String> states() {
        Map<String, String> states = new LinkedHashMap<>();
        states.put("", "any");
        for (State state : State.values()) {
            states.put(state.label(), state.label());
        }
        return states;
    }
}
