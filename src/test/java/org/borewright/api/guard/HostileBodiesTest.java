package org.borewright.api.guard;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.GZIPOutputStream;
import org.borewright.api.match.request.SampleRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies that hold no request: whatever is sent, the answer is a problem document and never our own fault. */
@QuarkusTest
class HostileBodiesTest {

    private static final byte[] BODY = SampleRequest.inlineFour().text().getBytes(StandardCharsets.UTF_8);

    /** A control, marks of JSON, a byte that UTF-8 never has, and the halves of a letter. */
    private static final byte[] HOSTILE = {
        0, '"', '{', '}', ']', ',', ':', '\\', '\n', -1, (byte) 0xC3, (byte) 0x80, 'e'
    };

    @Test
    void aRequestThatBreaksOffAnywhereIsNotJson() throws IOException {
        try (Wire wire = Wire.open()) {
            for (int length = 0; length < BODY.length; length++) {
                assertThat(refusal(wire, Arrays.copyOf(BODY, length)).kind())
                        .as("the first %d bytes", length)
                        .isEqualTo("malformed-json");
            }
        }
    }

    @Test
    void aRequestWithAnyByteSpoiltIsAnsweredOrRefused() throws IOException {
        int refused = 0;
        try (Wire wire = Wire.open()) {
            for (int at = 0; at < BODY.length; at++) {
                byte[] spoilt = BODY.clone();
                spoilt[at] = HOSTILE[at % HOSTILE.length];
                String answer = wire.post("/api/match", spoilt).answer();
                if (Refusal.status(answer) != 200) {
                    Refusal.in(answer);
                    refused++;
                }
            }
        }
        assertThat(refused).isGreaterThan(BODY.length / 2);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "'[', 100000",
        "'{\"a\":', 40000",
        "'[', 21",
        "'[[],', 21",
        "'[{},', 50000",
        "'{\"a\":[', 30000",
        "'[\"', 100000",
    })
    void whatIsNestedDeeperThanAnyRequestIsNotRead(String opened, int times) throws IOException {
        try (Wire wire = Wire.open()) {
            assertThat(refusal(wire, opened.repeat(times)).kind()).isEqualTo("malformed-json");
        }
    }

    @ParameterizedTest(name = "a name of {0} letters")
    @ValueSource(ints = {1, 1_000, 50_000, 60_000, 200_000})
    void aNameOfAnyLengthIsRefused(int letters) throws IOException {
        try (Wire wire = Wire.open()) {
            assertThat(refusal(wire, "{\"" + "x".repeat(letters) + "\":1}").status())
                    .isIn(400, 422);
        }
    }

    @ParameterizedTest(name = "a number of {0} digits")
    @ValueSource(ints = {40, 41, 999, 1_000, 1_001, 100_000, 250_000})
    void aNumberOfAnyLengthIsRefused(int digits) throws IOException {
        try (Wire wire = Wire.open()) {
            assertThat(refusal(wire, "9".repeat(digits)).status()).isIn(400, 422);
            assertThat(refusal(wire, "{\"temperature\":-0." + "3".repeat(digits) + "}")
                            .status())
                    .isIn(400, 422);
        }
    }

    @Test
    void aHundredThousandFaultsAreNotToldOneByOne() throws IOException {
        try (Wire wire = Wire.open()) {
            StringBuilder fields = new StringBuilder("{\"a\":0");
            for (int i = 0; fields.length() < 200_000; i++) {
                fields.append(",\"x").append(i).append("\":").append(i);
            }
            assertThat(refusal(wire, fields + "}").pointers()).hasSize(100);
            assertThat(refusal(wire, "{\"cylinders\":[" + "{},".repeat(60_000) + "{}]}")
                            .pointers())
                    .contains("/cylinders")
                    .hasSizeLessThanOrEqualTo(100);
        }
    }

    /** What begins like UTF-16 or UTF-32 and then is not. */
    @ParameterizedTest(name = "the bytes {0}")
    @ValueSource(
            strings = {
                "00",
                "ff",
                "efbbbf",
                "feff",
                "fffe",
                "feff00",
                "0000feff",
                "fffe0000",
                "0000fffe7b7d6161",
                "feff0000",
                "0000007b00",
                "7b0000007fffffff",
                "feffdc00d800",
                "1f8b0800",
                "efbbbfefbbbf7b7d",
                "7b227522",
                "22c080",
                "22eda080",
                "22f8888080",
                "c3"
            })
    void bytesThatAreNoTextAreNotJson(String bytes) throws IOException {
        try (Wire wire = Wire.open()) {
            assertThat(refusal(wire, HexFormat.of().parseHex(bytes)).kind()).isEqualTo("malformed-json");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"ISO-8859-1", "windows-1252"})
    void aLetterInAnotherCharsetIsNotJsonWhateverTheHeaderSays(String charset) throws IOException {
        byte[] body = SampleRequest.inlineFour()
                .with("/engine", "\"MOTÖRCHEN\"")
                .text()
                .getBytes(Charset.forName(charset));
        try (Wire wire = Wire.open()) {
            assertThat(Refusal.in(wire.post("/api/match", "Content-Type: application/json; charset=" + charset, body)
                                    .answer())
                            .kind())
                    .isEqualTo("malformed-json");
        }
    }

    @Test
    void aCompressedBodyIsRefusedAsSuch() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream packed = new GZIPOutputStream(bytes)) {
            packed.write(BODY);
        }
        try (Wire wire = Wire.open()) {
            String head = "Content-Type: application/json\nContent-Encoding: ";
            for (String coding : new String[] {"gzip", "deflate", "br", "none-such", "identity, gzip"}) {
                assertThat(Refusal.in(wire.post("/api/match", head + coding, bytes.toByteArray())
                                        .answer())
                                .kind())
                        .isEqualTo("wrong-media-type");
            }
            assertThat(Refusal.status(
                            wire.post("/api/match", head + "identity", BODY).answer()))
                    .isEqualTo(200);
        }
    }

    /** What is no HTTP is answered by the server below us, which has no words: its answer tells nothing, and nothing of the inside. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Content-Length: -1",
                "Content-Length: +5",
                "Content-Length: abc",
                "Content-Length: 0x10",
                "Content-Length: 5,6",
                "Content-Length: 99999999999999999999",
                "Content-Length: 5\nContent-Length: 6",
                "Content-Length: 5\nTransfer-Encoding: chunked",
                "Transfer-Encoding: chunked, gzip",
            })
    void aBodyWithoutALengthThatHoldsIsNoRequest(String length) throws IOException {
        try (Wire wire = Wire.open()) {
            String answer = wire.send("POST /api/match HTTP/1.1\nHost: shop\nContent-Type: application/json\n" + length
                            + "\n\n5\n{   }\n0\n\n")
                    .answer();
            assertThat(answer).startsWith("HTTP/1.1 400 ").endsWith("\r\n\r\n").doesNotContain("xception");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"zz\n{}\n0\n\n", "-1\n{}\n0\n\n", "FFFFFFFFFF\n{}\n0\n\n", "2\n{}\nzz\n\n", "\n\n\n"})
    void chunksThatDoNotHoldTogetherEndTheirConnectionAndNoOther(String chunks) throws IOException {
        try (Wire broken = Wire.open();
                Wire other = Wire.open()) {
            String head = "POST /api/match HTTP/1.1\nHost: shop\nContent-Type: application/json\n";
            assertThat(broken.send(head + "Transfer-Encoding: chunked\n\n" + chunks)
                            .answer())
                    .isEqualTo("(closed)");
            assertThat(Refusal.status(other.post("/api/match", BODY).answer())).isEqualTo(200);
        }
    }

    private static Refusal refusal(Wire wire, String body) throws IOException {
        return refusal(wire, body.getBytes(StandardCharsets.UTF_8));
    }

    private static Refusal refusal(Wire wire, byte[] body) throws IOException {
        return Refusal.in(wire.post("/api/match", body).answer());
    }
}
