package org.borewright.api.hook;

import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.channels.UnresolvedAddressException;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Flow;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import javax.net.ssl.SSLException;
import org.jspecify.annotations.Nullable;

/**
 * Takes a message to its receiver, and tells in words why it was not taken. From the first look for the address to the status of the answer
 * it takes so long at the most; what follows the status is not read.
 */
final class Post {

    private final Duration patience;
    private final HttpClient http =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

    private final CompletableFuture<HttpResponse<Void>> stopped = new CompletableFuture<>();

    Post(Duration patience) {
        this.patience = patience;
    }

    /**
     * Sends it.
     *
     * @param proof of the sender
     * @return why it was not taken; empty where it was
     * @throws InterruptedException if this machine is stopped meanwhile: nobody knows then whether it was taken
     */
    Optional<String> send(URI to, byte[] body, Map<String, String> proof) throws InterruptedException {
        try {
            HttpRequest.Builder message = HttpRequest.newBuilder(to)
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofByteArray(body));
            proof.forEach(message::header);
            return answer(http.sendAsync(message.build(), status -> new Unread()));
        } catch (IllegalArgumentException nowhere) {
            return Optional.of("not reached: no message can be sent to such a url");
        }
    }

    private Optional<String> answer(CompletableFuture<HttpResponse<Void>> sent) throws InterruptedException {
        try {
            int status = sent.applyToEither(stopped, Function.identity())
                    .get(patience.toMillis(), TimeUnit.MILLISECONDS)
                    .statusCode();
            return status >= 200 && status < 300 ? Optional.empty() : Optional.of("answered with status " + status);
        } catch (TimeoutException tooLong) {
            sent.cancel(true);
            return Optional.of(String.format(
                    Locale.ROOT, "not reached: no answer within %.1f seconds", patience.toMillis() / 1e3));
        } catch (ExecutionException failed) {
            if (stopped.isDone()) {
                sent.cancel(true);
                throw new InterruptedException("this machine is stopped");
            }
            return Optional.of("not reached: " + why(failed.getCause()));
        } catch (InterruptedException interrupted) {
            sent.cancel(true);
            throw interrupted;
        }
    }

    /** Waits for no receiver any more. */
    void stop() {
        stopped.completeExceptionally(new CancellationException());
    }

    private static String why(@Nullable Throwable failure) {
        if (failure instanceof ConnectException) {
            return failure.getCause() instanceof UnresolvedAddressException
                    ? "no machine is known by this name"
                    : "the machine takes no connection there";
        } else if (failure instanceof SSLException) {
            return "its certificate does not hold, or it speaks no TLS that is trusted";
        } else if (failure instanceof IOException) {
            return "the connection broke off before it answered, or it does not speak HTTP";
        }
        return "no message can be sent to such a url";
    }

    /** The body of an answer: it is given up before it begins, however long it would be. */
    private static final class Unread implements HttpResponse.BodySubscriber<Void> {

        @Override
        public CompletionStage<Void> getBody() {
            return CompletableFuture.completedFuture(null);
        }

        @Override
        public void onSubscribe(Flow.Subscription body) {
            body.cancel();
        }

        @Override
        public void onNext(List<ByteBuffer> unread) {}

        @Override
        public void onError(Throwable given) {}

        @Override
        public void onComplete() {}
    }
}
