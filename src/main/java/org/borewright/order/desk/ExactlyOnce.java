package org.borewright.order.desk;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.PessimisticLockException;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.store.AnsweredRow;
import org.jboss.logging.Logger;

/**
 * Does what a request asks exactly once, however often it is sent: the key of the request is kept with its answer in the very transaction
 * that does the work. Of two that arrive together the second waits for the first at the key; what is refused keeps no key, and may be sent
 * again. Where others were in the way it is tried again after a while, which is another for each, and in the end refused.
 */
@ApplicationScoped
public class ExactlyOnce {

    private static final Logger LOG = Logger.getLogger(ExactlyOnce.class);

    private static final int TRIES = 5;

    /** Before the second try, in milliseconds; doubled for each after it. */
    private static final long LONGEST_PAUSE = 20;

    /**
     * The SQLSTATEs of H2 and PostgreSQL for a key that came twice, two that waited for each other, and a lock or a row that was not to be
     * had.
     */
    private static final List<String> OTHERS_IN_THE_WAY = List.of("23505", "40001", "40P01", "55P03", "HYT00", "90131");

    private final Clock clock;

    ExactlyOnce(Clock clock) {
        this.clock = clock;
    }

    /**
     * The answer to a request: of the work, or of the time before.
     *
     * @param key the sender's own name for it
     * @param fingerprint of what was asked for and where, without the version that it was meant for
     * @param work done inside of the transaction
     * @return empty when the key was used for something else
     * @throws RefusedException as the work does, or if others were in the way each time
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
            } catch (RuntimeException failed) {
                if (!othersWereInTheWay(failed)) {
                    throw failed;
                }
                // Nothing was done, so it may be tried again.
                if (tried == TRIES || !pauses(tried)) {
                    LOG.warn("A change was given up after " + tried + " tries", failed);
                    throw new RefusedException(new Refusal.Busy());
                }
            }
        }
    }

    /** Whether nothing but others kept it from being done: it may be tried again. */
    public static boolean othersWereInTheWay(Throwable failed) {
        return Stream.iterate(failed, Objects::nonNull, Throwable::getCause).anyMatch(ExactlyOnce::isOfOthers);
    }

    private static boolean isOfOthers(Throwable cause) {
        if (cause instanceof SQLException refused) {
            String state = refused.getSQLState();
            return state != null && OTHERS_IN_THE_WAY.contains(state);
        }
        return cause instanceof PessimisticLockException;
    }

    /** @return whether it was let to */
    private static boolean pauses(int tried) {
        try {
            Thread.sleep(ThreadLocalRandom.current().nextLong(LONGEST_PAUSE << (tried - 1)));
            return true;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
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
