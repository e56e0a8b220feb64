package org.borewright.api.hook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.borewright.api.order.answer.JournalAnswer;
import org.borewright.order.store.HookRow;
import org.borewright.order.store.JournalRow;
import org.jboss.logging.Logger;

/**
 * Carries lines of the journal to whoever wants to be told. A line is told until it is taken (any status from 200 to 299), in order, so that
 * one may come twice but none is left out; position tells which it is. After a failure the pause doubles from one second to an hour. Nobody
 * waits for a receiver that is slow, or fails, but that receiver.
 */
@ApplicationScoped
class Courier {

    private static final Logger LOG = Logger.getLogger(Courier.class);

    private static final int LINES_AT_ONCE = 100;
    private static final int HOOKS_AT_ONCE = 16;

    /** Longer than a message can take: should this machine fall over, another carries on afterwards. */
    private static final int PATIENCES_CLAIMED = 3;

    private static final Duration LONGEST_PAUSE = Duration.ofHours(1);
    private static final int DOUBLED_AT_MOST = 12;

    private final ObjectMapper json;
    private final Clock clock;
    private final Duration patience;
    private final Post post;
    private final ExecutorService runners = Executors.newFixedThreadPool(HOOKS_AT_ONCE);
    private final Semaphore free = new Semaphore(HOOKS_AT_ONCE);

    Courier(ObjectMapper json, Clock clock, HookSettings settings) {
        this.json = json;
        this.clock = clock;
        this.patience = settings.patience();
        this.post = new Post(patience);
    }

    /** Sends a runner to each that is due; for whom none is free, it is due the next time, and then the first. */
    @Scheduled(
            every = "1s",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP,
            skipExecutionIf = Scheduled.ApplicationNotRunning.class)
    void goRound() {
        List<HookRow> due = QuarkusTransaction.requiringNew().call(() -> HookRow.due(clock.instant()));
        for (HookRow hook : due) {
            if (runners.isShutdown() || !free.tryAcquire()) {
                return;
            }
            runners.execute(() -> run(hook));
        }
    }

    /** Nobody is interrupted: that would close the file of the database under whoever is writing to it. */
    @PreDestroy
    void goHome() throws InterruptedException {
        runners.shutdown();
        post.stop();
        runners.awaitTermination(patience.toMillis(), TimeUnit.MILLISECONDS);
    }

    private void run(HookRow hook) {
        try {
            if (claim(hook)) {
                tell(hook);
            }
        } catch (InterruptedException stopped) {
            // Nothing is noted: whoever comes next takes it on when the claim has run out.
            Thread.currentThread().interrupt();
        } catch (RuntimeException failed) {
            LOG.errorf(failed, "Hook %d could not be claimed, or it could not be noted what it was told.", hook.id);
        } finally {
            free.release();
        }
    }

    private boolean claim(HookRow hook) {
        return QuarkusTransaction.requiringNew()
                .call(() -> hook.claim(clock.instant().plus(patience.multipliedBy(PATIENCES_CLAIMED))));
    }

    private void tell(HookRow hook) throws InterruptedException {
        List<JournalRow> lines =
                QuarkusTransaction.requiringNew().call(() -> JournalRow.after(hook.position, LINES_AT_ONCE));
        Optional<String> failure = send(hook, lines);
        // Held, for it may be ended meanwhile.
        QuarkusTransaction.requiringNew()
                .run(() -> HookRow.<HookRow>findByIdOptional(hook.id, LockModeType.PESSIMISTIC_WRITE)
                        .ifPresent(row -> note(row, lines, failure)));
    }

    private void note(HookRow hook, List<JournalRow> told, Optional<String> failure) {
        if (failure.isEmpty()) {
            hook.position = told.get(told.size() - 1).position;
            hook.failures = 0;
            hook.nextTry = clock.instant();
        } else {
            hook.nextTry = clock.instant().plus(pause(hook.failures));
            hook.failures++;
        }
        hook.lastFailure = failure.orElse(null);
    }

    /** One second, then twice as long after every failure, up to an hour. */
    static Duration pause(int failuresBefore) {
        Duration doubled = Duration.ofSeconds(1L << Math.min(failuresBefore, DOUBLED_AT_MOST));
        return doubled.compareTo(LONGEST_PAUSE) < 0 ? doubled : LONGEST_PAUSE;
    }

    /** @return why it was not taken; empty where it was */
    private Optional<String> send(HookRow hook, List<JournalRow> lines) throws InterruptedException {
        try {
            URI to = Signature.target(URI.create(hook.url));
            byte[] body = json.writeValueAsBytes(JournalAnswer.of(hook.position, lines));
            byte[] secret = Base64.getDecoder().decode(hook.secret);
            return post.send(to, body, Signature.headers(to, body, "hook-" + hook.id, secret, clock.instant()));
        } catch (JsonProcessingException | RuntimeException failed) {
            LOG.errorf(failed, "No message could be made for hook %d; it is tried again.", hook.id);
            return Optional.of("not sent: no message could be made; the log of the service says why");
        }
    }
}
