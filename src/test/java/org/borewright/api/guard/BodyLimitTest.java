package org.borewright.api.guard;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import org.borewright.api.match.request.SampleRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class BodyLimitTest {

    private static final int KIBIBYTE = 1024;

    @ParameterizedTest(name = "{0} bytes")
    @ValueSource(ints = {BodyLimit.MOST_BYTES + 1, 1_000_000, 8_000_000})
    void aBodyBeyondTheLimitIsRefusedAndTheConnectionGoesOn(int bytes) throws IOException {
        try (Wire wire = Wire.open()) {
            isRefused(wire.post("/api/match", padded(bytes)).answer());
            isAnswered(wire.post("/api/match", sample()).answer());
        }
    }

    @ParameterizedTest(name = "{0} bytes")
    @ValueSource(ints = {BodyLimit.MOST_BYTES + 1, 1_000_000, 8_000_000})
    void aBodyOfUnknownLengthIsRefusedOnceItPassesTheLimit(int bytes) throws IOException {
        try (Wire wire = Wire.open()) {
            isRefused(
                    wire.postInChunks("/api/match", padded(bytes), 4 * KIBIBYTE).answer());
            isAnswered(wire.post("/api/match", sample()).answer());
        }
    }

    @ParameterizedTest(name = "{0} bytes")
    @ValueSource(ints = {2 * KIBIBYTE, 10 * KIBIBYTE, 11 * KIBIBYTE, 100 * KIBIBYTE, BodyLimit.MOST_BYTES})
    void aBodyUpToTheLimitIsReadWhetherItsLengthIsToldOrNot(int bytes) throws IOException {
        try (Wire wire = Wire.open()) {
            isAnswered(wire.post("/api/match", padded(bytes)).answer());
            isAnswered(wire.postInChunks("/api/match", padded(bytes), KIBIBYTE).answer());
            isAnswered(wire.postInChunks("/api/match", padded(bytes), 64 * KIBIBYTE)
                    .answer());
            isAnswered(wire.post("/api/match", sample()).answer());
        }
    }

    @Test
    void aBodyIsNotSentAtAllWhenItsLengthIsRefusedBeforehand() throws IOException {
        try (Wire wire = Wire.open()) {
            isRefused(wire.send(head("Content-Length: 999999999999\nExpect: 100-continue"))
                    .answer());
        }
    }

    @Test
    void whoeverAsksBeforehandMayGoOn() throws IOException {
        try (Wire wire = Wire.open()) {
            wire.send(head("Transfer-Encoding: chunked\nExpect: 100-continue"));
            assertThat(wire.answer()).startsWith("HTTP/1.1 100 ");
            wire.send(Integer.toHexString(sample().length()) + "\n" + sample() + "\n0\n\n");
            isAnswered(wire.answer());
        }
    }

    @Test
    void aBodyWithoutAMediaTypeIsRefused() throws IOException {
        try (Wire wire = Wire.open()) {
            assertThat(wire.send("POST /api/match HTTP/1.1\nHost: shop\nContent-Length: 2\n\n{}")
                            .answer())
                    .startsWith("HTTP/1.1 415 ")
                    .contains("application/problem+json", "/problems/wrong-media-type");
        }
    }

    private static String head(String fields) {
        return "POST /api/match HTTP/1.1\nHost: shop\nContent-Type: application/json\n" + fields + "\n\n";
    }

    private static void isRefused(String answer) {
        assertThat(answer)
                .startsWith("HTTP/1.1 413 ")
                .contains("application/problem+json", "/problems/body-too-large", "262144");
    }

    private static void isAnswered(String answer) {
        assertThat(answer).startsWith("HTTP/1.1 200 ").contains("\"verdict\"");
    }

    private static String sample() {
        return SampleRequest.inlineFour().text();
    }

    /** A request made longer by blanks, which JSON allows. */
    private static String padded(int bytes) {
        String sample = sample();
        return sample + " ".repeat(Math.max(0, bytes - sample.length()));
    }
}
