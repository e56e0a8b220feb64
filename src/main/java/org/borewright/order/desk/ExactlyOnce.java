package org.borewright.order.desk;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.PersistenceException;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Supplier;
import org.borewright.order.store.AnsweredRow;

/**
 * Does what a request asks exactly once, however often it is sent: the key of the request is kept with its answer in the very transaction
 * that does the work. Of two that arrive together the second waits for the first at the key; what is refused keeps no key, and may be sent
 * again.
 */
@ApplicationScoped
public class ExactlyOnce {

    private static final int TRIES = 5;

    private final Clock clock;

    ExactlyOnce(Clock clock) {
        this.clock = clock;
    }

    /**
     * The answer to a request: of the work, or of the time before.
     *
     * @param key the sender's own name for it
     * @param fingerprint of all that was sent
     * @param work done inside of the transaction
     * @return empty when the key was used for something else
     */
    public Optional<Reply> reply(String key, String fingerprint, Supplier<Reply> work) {
        for (int tried = 1; ; tried++) {
            Optional<AnsweredRow> before =
                    QuarkusTransaction.requiringNew().call(() -> AnsweredRow.<AnsweredRow>findByIdOptional(key));
            if (before.isPresent()) {
                return before.filter(row -> row.fingerprint.equals(fingerprint)).map(Reply::of);
            }
            try {
                return Optional.of(QuarkusTransaction.requiringNew().call(() -> first(key, fingerprint, work)));
            } catch (PersistenceException inTheWay) {
                // Somebody with the same key was first, or two waited for each other: nothing was done, so it may be
                // tried again.
                if (tried == TRIES) {
                    throw inTheWay;
                }
            }
        }
    }

    /** The key goes in before the work is done: whoever has the same waits there, and finds the answer afterwards. */
    private Reply first(String key, String fingerprint, Supplier<Reply> work) {
        AnsweredRow row = new AnsweredRow();
        row.requestKey = key;
        row.fingerprint = fingerprint;
        row.at = clock.instant();
        row.body = "";
        row.persistAndFlush();
        Reply reply = work.get();
        row.status = reply.status();
        row.location = reply.location().orElse(null);
        row.version = reply.version().orElse(null);
        row.body = reply.body();
        return reply;
    }
}
