package org.borewright.order;

import java.util.Optional;
import java.util.stream.Stream;

/** Where an order stands. */
public enum State {
    /** Noted; the block is on its way or on the bench, not measured yet. */
    RECEIVED("received"),
    /** The holes are known as well as they are going to be before a price is named. */
    SURVEYED("surveyed"),
    /** A price was named. */
    QUOTED("quoted"),
    /** The customer said yes, and the parts are put aside. */
    ACCEPTED("accepted"),
    /** The pistons are measured and paired: boring may start, and what is put aside stays so. */
    CONFIRMED("confirmed"),
    /** Every hole was measured after honing, judged and signed. */
    FINISHED("finished"),
    /** It has left, and the parts with it. */
    RELEASED("released"),
    /** The customer said no. */
    DECLINED("declined"),
    /** It was called off. */
    WITHDRAWN("withdrawn");

    private final String label;

    State(String label) {
        this.label = label;
    }

    /** The state of that word; empty where there is none. */
    public static Optional<State> of(String label) {
        return Stream.of(values()).filter(state -> state.label.equals(label)).findFirst();
    }

    /** Whether the customer's yes to a quote stands here. */
    public boolean isAgreed() {
        return this == ACCEPTED || isConfirmed();
    }

    /** Whether its pistons are confirmed here: what is to be bored and honed stands. */
    public boolean isConfirmed() {
        return this == CONFIRMED || this == FINISHED || this == RELEASED;
    }

    /** The word as typed and shown. */
    public String label() {
        return label;
    }
}
