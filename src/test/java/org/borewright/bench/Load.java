package org.borewright.bench;

import io.vertx.core.Future;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpClient;
import io.vertx.core.http.HttpClientOptions;
import io.vertx.core.http.HttpClientRequest;
import io.vertx.core.http.HttpClientResponse;
import io.vertx.core.http.HttpMethod;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;

/** A bounded load on loopback: so many requests over a few kept connections, each timed. */
final class Load {

    private static final int CONNECTIONS = 16;

    private final int port;
    private final Vertx vertx = Vertx.vertx();

    Load(int port) {
        this.port = port;
    }

    /**
     * What a load measured.
     *
     * @param perSecond answers in a second
     * @param p99Micros the latency that 99 of 100 answers stayed within
     * @param bytes of the last answer
     */
    record Measured(double perSecond, double p99Micros, int bytes) {}

    /** Sends so many requests, the bodies in turn, and waits for every answer. */
    Measured run(String path, String[] bodies, int requests) throws InterruptedException {
        HttpClient client = vertx.createHttpClient(new HttpClientOptions()
                .setDefaultHost("127.0.0.1")
                .setDefaultPort(port)
                .setMaxPoolSize(CONNECTIONS));
        Run run =
                new Run(client, path, Arrays.stream(bodies).map(Buffer::buffer).toArray(Buffer[]::new), requests);
        long start = System.nanoTime();
        for (int i = 0; i < CONNECTIONS; i++) {
            run.next();
        }
        run.done.await();
        double seconds = (System.nanoTime() - start) / 1e9;
        client.close();
        Arrays.sort(run.nanos);
        return new Measured(requests / seconds, run.nanos[(int) (requests * 0.99)] / 1e3, run.bytes);
    }

    void close() {
        vertx.close();
    }

    private static final class Run {

        private final HttpClient client;
        private final String path;
        private final Buffer[] bodies;
        private final long[] nanos;
        private final AtomicInteger sent = new AtomicInteger();
        private final CountDownLatch done;
        private volatile int bytes;

        private Run(HttpClient client, String path, Buffer[] bodies, int requests) {
            this.client = client;
            this.path = path;
            this.bodies = bodies;
            this.nanos = new long[requests];
            this.done = new CountDownLatch(requests);
        }

        private void next() {
            int index = sent.getAndIncrement();
            if (index >= nanos.length) {
                return;
            }
            long start = System.nanoTime();
            client.request(HttpMethod.POST, path)
                    .compose(request -> send(request, bodies[index % bodies.length]))
                    .compose(HttpClientResponse::body)
                    .onFailure(fault -> {
                        throw new IllegalStateException(fault);
                    })
                    .onSuccess(body -> {
                        nanos[index] = System.nanoTime() - start;
                        bytes = body.length();
                        done.countDown();
                        next();
                    });
        }

        private static Future<HttpClientResponse> send(HttpClientRequest request, Buffer body) {
            return request.putHeader("Content-Type", "application/json")
                    .send(body)
                    .map(response -> {
                        if (response.statusCode() != 200) {
                            throw new IllegalStateException("status " + response.statusCode());
                        }
                        return response;
                    });
        }
    }
}
