package org.borewright.order.desk;

import java.util.Optional;
import org.borewright.order.store.AnsweredRow;

/**
 * How a request was answered.
 *
 * @param status of HTTP
 * @param location the path of what was made; empty where nothing was
 * @param version that the order has now; empty where none was moved
 * @param body the whole answer
 */
public record Reply(int status, Optional<String> location, Optional<Integer> version, String body) {

    static Reply of(AnsweredRow row) {
        return new Reply(row.status, Optional.ofNullable(row.location), Optional.ofNullable(row.version), row.body);
    }
}
