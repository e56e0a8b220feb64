package org.borewright.page;

import java.util.Optional;
import org.borewright.order.State;

/** What stands over the figures of holes that were signed: a sheet that hangs on at the machine must send nobody back to cut them. */
public final class Past {

    private static final String RECORD = ": nothing more is cut. The figures stay as a record.";

    private Past() {}

    /** The sentence, of an order whose holes are signed; empty before. */
    public static Optional<String> says(State state) {
        return switch (state) {
            case FINISHED -> Optional.of("The holes are finished and signed" + RECORD);
            case RELEASED -> Optional.of("It has left, finished and signed" + RECORD);
            case RECEIVED, SURVEYED, QUOTED, ACCEPTED, CONFIRMED, DECLINED, WITHDRAWN -> Optional.empty();
        };
    }
}
