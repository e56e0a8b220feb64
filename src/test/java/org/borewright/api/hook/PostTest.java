package org.borewright.api.hook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What becomes of a message, with receivers that speak HTTP badly, slowly or not at all. */
class PostTest {

    private static final Duration PATIENCE = Duration.ofMillis(800);

    private final Post post = new Post(PATIENCE);

    /** How a receiver behaves once somebody has connected. */
    private interface Manner {
        void meet(OutputStream back) throws IOException, InterruptedException;
    }

    private Optional<String> sentTo(Manner manner) throws IOException, InterruptedException {
        try (ServerSocket receiver = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            Thread meeting = new Thread(() -> {
                try (Socket caller = receiver.accept()) {
                    hear(caller.getInputStream());
                    manner.meet(caller.getOutputStream());
                } catch (IOException | InterruptedException gone) {
                    // The other side has hung up, as it may.
                }
            });
            meeting.setDaemon(true);
            meeting.start();
            return sentTo("http://127.0.0.1:" + receiver.getLocalPort() + "/told");
        }
    }

    /** To the last byte of the message, for whoever hangs up on half of it breaks the connection off for both. */
    private static void hear(InputStream message) throws IOException {
        int heard = message.read();
        while (heard >= 0 && heard != '}') {
            heard = message.read();
        }
    }

    private Optional<String> sentTo(String url) throws InterruptedException {
        return post.send(URI.create(url), "{}".getBytes(StandardCharsets.UTF_8), Map.of("Content-Digest", "none"));
    }

    private static byte[] bytes(String text) {
        return text.replace("_", "\r\n").getBytes(StandardCharsets.ISO_8859_1);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            nullValues = "taken",
            value = {
                "HTTP/1.1 200 OK_Content-Length: 2__ok | taken",
                "HTTP/1.1 204 No Content__ | taken",
                "HTTP/1.1 299 Odd_Content-Length: 0__ | taken",
                "HTTP/1.1 302 Found_Location: /elsewhere_Content-Length: 0__ | answered with status 302",
                "HTTP/1.1 500 Oh_Content-Length: 0__ | answered with status 500",
                "HTTP/1.1 200 OK_Content-Length: 999999999__begins | taken",
                "good day__ | not reached: the connection broke off before it answered, or it does not speak HTTP",
                "HTTP/1.1 2 | not reached: the connection broke off before it answered, or it does not speak HTTP",
            })
    void theStatusTells(String answer, String failure) throws IOException, InterruptedException {
        assertThat(sentTo(back -> {
                    back.write(bytes(answer));
                    back.flush();
                    Thread.sleep(50);
                }))
                .isEqualTo(Optional.ofNullable(failure));
    }

    @Test
    void aBodyWithoutEndIsNotWaitedFor() throws IOException, InterruptedException {
        long began = System.nanoTime();

        assertThat(sentTo(back -> {
                    back.write(bytes("HTTP/1.1 200 OK_Transfer-Encoding: chunked__"));
                    while (true) {
                        back.write(bytes("3_and_"));
                        back.flush();
                        Thread.sleep(20);
                    }
                }))
                .isEmpty();
        assertThat(Duration.ofNanos(System.nanoTime() - began)).isLessThan(PATIENCE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "HTTP/1.1 200 OK_X-Wait: "})
    void whoeverNeverComesToTheStatusIsGivenUp(String begins) throws IOException, InterruptedException {
        long began = System.nanoTime();

        assertThat(sentTo(back -> {
                    back.write(bytes(begins));
                    while (true) {
                        back.write(bytes(begins.isEmpty() ? "" : "more "));
                        back.flush();
                        Thread.sleep(20);
                    }
                }))
                .contains("not reached: no answer within 0.8 seconds");
        assertThat(Duration.ofNanos(System.nanoTime() - began)).isBetween(PATIENCE, PATIENCE.multipliedBy(3));
    }

    @Test
    void aPortThatNobodyListensAtIsToldInWords() throws IOException, InterruptedException {
        int shut;
        try (ServerSocket soonShut = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            shut = soonShut.getLocalPort();
        }

        assertThat(sentTo(String.format(Locale.ROOT, "http://127.0.0.1:%d/", shut)))
                .contains("not reached: the machine takes no connection there");
    }

    @Test
    void aNameThatNobodyBearsIsToldInWords() throws InterruptedException {
        assertThat(new Post(Duration.ofSeconds(20)).send(URI.create("http://nobody.invalid/"), new byte[0], Map.of()))
                .contains("not reached: no machine is known by this name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://127.0.0.1:99999/", "ftp://127.0.0.1/", "told"})
    void whatIsNoAddressIsAFailureLikeAnyOther(String url) throws InterruptedException {
        assertThat(sentTo(url)).contains("not reached: no message can be sent to such a url");
    }

    /** Nobody knows then whether it was taken. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whoIsStoppedWhileItWaitsHasNothingToTell(boolean isInterrupted) throws IOException {
        Post waiting = new Post(Duration.ofSeconds(20));
        ExecutorService sender = Executors.newSingleThreadExecutor();
        try (ServerSocket silent = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            URI to = URI.create("http://127.0.0.1:" + silent.getLocalPort() + "/");
            Future<Optional<String>> sent = sender.submit(() -> waiting.send(to, new byte[0], Map.of()));
            try (Socket caller = silent.accept()) {
                if (isInterrupted) {
                    sender.shutdownNow();
                } else {
                    waiting.stop();
                }

                assertThatThrownBy(() -> sent.get(5, TimeUnit.SECONDS)).hasCauseInstanceOf(InterruptedException.class);
                assertThat(caller.isConnected()).isTrue();
            }
        } finally {
            sender.shutdownNow();
        }
    }
}
