package org.borewright.api.hook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.order.answer.JournalAnswer;
import org.borewright.order.store.HookRow;
import org.borewright.order.store.JournalRow;

/**
 * Carries lines of the journal to whoever wants to be told. A line is told until it is taken (any status from 200 to 299), in order, so that
 * one may come twice but none is left out; position tells which it is. After a failure the pause doubles from one second to an hour.
 */
@ApplicationScoped
class Courier {

    private static final int LINES_AT_ONCE = 100;
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    /** Longer than a message can take: should this machine fall over, another carries on afterwards. */
    private static final Duration CLAIM = Duration.ofSeconds(30);

    private static final Duration LONGEST_PAUSE = Duration.ofHours(1);
    private static final int DOUBLED_AT_MOST = 12;
    private static final int LONGEST_FAILURE = 300;

    private final ObjectMapper json;
    private final Clock clock;
    private final HttpClient http = HttpClient.newBuilder()
            .connectTimeout(PATIENCE)
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();

    Courier(ObjectMapper json, Clock clock) {
        this.json = json;
        this.clock = clock;
    }

    @Scheduled(every = "1s", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void goRound() {
        QuarkusTransaction.requiringNew().call(() -> HookRow.due(now())).forEach(this::tell);
    }

    private void tell(HookRow hook) {
        boolean claimed = QuarkusTransaction.requiringNew().call(() -> hook.claim(now().plus(CLAIM)));
        if (!claimed) {
            return;
        }
        List<JournalRow> lines =
                QuarkusTransaction.requiringNew().call(() -> JournalRow.after(hook.position, LINES_AT_ONCE));
        Optional<String> failure = send(hook, JournalAnswer.of(hook.position, lines));
        QuarkusTransaction.requiringNew()
                .run(() -> HookRow.<HookRow>findByIdOptional(hook.id).ifPresent(row -> note(row, lines, failure)));
    }

    private void note(HookRow hook, List<JournalRow> told, Optional<String> failure) {
        if (failure.isEmpty()) {
            hook.position = told.get(told.size() - 1).position;
            hook.failures = 0;
            hook.nextTry = now();
        } else {
            hook.nextTry = now().plus(pause(hook.failures));
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
    private Optional<String> send(HookRow hook, JournalAnswer lines) {
        try {
            byte[] body = json.writeValueAsBytes(lines);
            URI to = URI.create(hook.url);
            HttpRequest.Builder message = HttpRequest.newBuilder(to)
                    .timeout(PATIENCE)
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofByteArray(body));
            Map<String, String> proof = Signature.headers(
                    to, body, "hook-" + hook.id, Base64.getDecoder().decode(hook.secret), now());
            proof.forEach(message::header);
            int status = http.send(message.build(), HttpResponse.BodyHandlers.discarding())
                    .statusCode();
            return status >= 200 && status < 300 ? Optional.empty() : Optional.of("answered with status " + status);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException(unwritable);
        } catch (IOException notReached) {
            return Optional.of(shortened("not reached: " + notReached));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.of("stopped");
        }
    }

    private static String shortened(String failure) {
        return failure.substring(0, Math.min(LONGEST_FAILURE, failure.length()));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
