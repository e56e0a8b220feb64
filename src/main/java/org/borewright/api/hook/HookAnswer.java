package org.borewright.api.hook;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.borewright.order.store.HookRow;
import org.jspecify.annotations.Nullable;

/**
 * Somebody who is told of changes, on the wire.
 *
 * @param id its number; the messages are signed with the key {@code hook-} and this
 * @param url where the messages go
 * @param position the last line of the journal they have taken
 * @param failures how often in a row a message was not taken
 * @param lastFailure why, the last time; absent after a success
 * @param nextTry not before
 * @param madeAt when
 * @param secret what the messages are signed with, in base 64; told once, when it is made
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record HookAnswer(
        long id,
        String url,
        long position,
        int failures,
        @Nullable String lastFailure,
        Instant nextTry,
        Instant madeAt,
        @Nullable String secret) {

    /** Without its secret. */
    static HookAnswer of(HookRow row) {
        return of(row, null);
    }

    /** Just made, with its secret. */
    static HookAnswer withSecret(HookRow row) {
        return of(row, row.secret);
    }

    private static HookAnswer of(HookRow row, @Nullable String secret) {
        return new HookAnswer(
                row.id, row.url, row.position, row.failures, row.lastFailure, row.nextTry, row.madeAt, secret);
    }
}
