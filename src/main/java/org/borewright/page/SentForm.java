package org.borewright.page;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.borewright.api.order.request.Caller;
import org.borewright.api.order.request.Sent;

/**
 * A change of an order that comes from a form instead of a request with headers: {@code by}, {@code key} and {@code version} stand in
 * fields of these names. The key was made with the form, so that a form sent twice is done once.
 */
public final class SentForm extends Sent {

    private final String order;
    private final String move;
    private final Form form;

    /** Of the form of a move, such as {@code accept}, of an order of this number. */
    public SentForm(String order, String move, Form form) {
        this.order = order;
        this.move = move;
        this.form = form;
    }

    /** Who sends a form that makes something, such as an order. */
    public static Caller making(String what, Form form, byte[] body) {
        return caller(what, form, Optional.empty(), body);
    }

    @Override
    public String order() {
        return order;
    }

    @Override
    public Caller caller(byte[] body) {
        return caller("/orders/" + order + "/" + move, form, Optional.of("\"" + form.typed("version") + "\""), body);
    }

    private static Caller caller(String path, Form form, Optional<String> version, byte[] body) {
        String whole = String.join("\n", path, form.typed("by"), new String(body, StandardCharsets.UTF_8));
        return Caller.sending(form.typed("by"), form.typed("key"), version, whole);
    }
}
