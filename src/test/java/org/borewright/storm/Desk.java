package org.borewright.storm;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;

/**
 * A desk at one of the machines.
 *
 * @param port of the machine
 */
record Desk(int port) {

    private static final Duration PATIENCE = Duration.ofSeconds(90);
    private static final HttpClient HTTP = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(PATIENCE)
            .build();
    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * A change that is asked for.
     *
     * @param path of what is to be changed
     * @param version it was last seen at; 0 where something new is made
     * @param key of the request
     * @param body what is sent
     */
    record Change(String path, int version, String key, String body) {

        /** With a key that no other has. */
        static Change of(String path, int version, String body) {
            return new Change(path, version, UUID.randomUUID().toString(), body);
        }
    }

    /**
     * What came back.
     *
     * @param status of HTTP
     * @param body the text
     */
    record Answer(int status, String body) {

        JsonNode json() {
            try {
                return JSON.readTree(body);
            } catch (IOException torn) {
                throw new IllegalStateException(body, torn);
            }
        }

        /** As it must be. @throws IllegalStateException if it is another status */
        Answer need(int wanted) {
            if (status != wanted) {
                throw new IllegalStateException("status " + status + ", not " + wanted + ": " + body);
            }
            return this;
        }
    }

    Answer send(Change change) throws IOException, InterruptedException {
        return of(HTTP.send(request(change), HttpResponse.BodyHandlers.ofString()));
    }

    CompletableFuture<Answer> sending(Change change) {
        return HTTP.sendAsync(request(change), HttpResponse.BodyHandlers.ofString())
                .thenApply(Desk::of);
    }

    JsonNode seen(String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(at(path)).timeout(PATIENCE).build();
        return of(HTTP.send(request, HttpResponse.BodyHandlers.ofString()))
                .need(200)
                .json();
    }

    private HttpRequest request(Change change) {
        HttpRequest.Builder request = HttpRequest.newBuilder(at(change.path + "?by=Ada"))
                .timeout(PATIENCE)
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", change.key)
                .POST(HttpRequest.BodyPublishers.ofString(change.body));
        if (change.version > 0) {
            request.header("If-Match", "\"" + change.version + "\"");
        }
        return request.build();
    }

    private URI at(String path) {
        return URI.create("http://127.0.0.1:" + port + path);
    }

    private static Answer of(HttpResponse<String> response) {
        return new Answer(response.statusCode(), response.body());
    }
}
