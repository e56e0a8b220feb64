package org.borewright.api.hook;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.borewright.api.hook.Signature.Component;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Signed as the standards say. */
class SignatureTest {

    /** The shared secret of RFC 9421, appendix B.1.5. */
    private static final byte[] SECRET = Base64.getDecoder()
            .decode("uzvJfB4u3N0Jy4T7NZ75MDVcr8zSTInedJtkgcu46YW4XByzNJjxBdtjUkdJPBtbmHhIDi6pcl8jsasjlTMtDQ==");

    /** RFC 9421, appendix B.2.5: signing a request using hmac-sha256. */
    @Test
    void itSignsTheExampleOfTheStandardAsTheStandardDoes() {
        List<Component> components = List.of(
                new Component("date", "Tue, 20 Apr 2021 02:07:55 GMT"),
                new Component("@authority", "example.com"),
                new Component("content-type", "application/json"));

        String input = Signature.input(components, Instant.ofEpochSecond(1_618_884_473), "test-shared-secret");

        assertThat(input)
                .isEqualTo(
                        "(\"date\" \"@authority\" \"content-type\");created=1618884473;keyid=\"test-shared-secret\"");
        assertThat(Signature.signature(components, input, SECRET))
                .isEqualTo("pxcQw6G3AjtMBQjwo8XzkZf/bws5LelbaMk5rGIGtE8=");
    }

    /** RFC 9530, appendix D: the digest of {@code {"hello": "world"}}, as also in the examples of RFC 9421. */
    @Test
    void itDigestsTheExampleOfTheStandardAsTheStandardDoes() {
        assertThat(Signature.digest("{\"hello\": \"world\"}".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo("sha-256=:X48E9qOokqqrvdts8nOJRJN3OWDUoyWxBf7kbu9DBPE=:");
    }

    @Test
    void aBodyChangedOnTheWayHasAnotherSignature() {
        assertThat(signed("{\"lines\":1}").get("Signature"))
                .isNotEqualTo(signed("{\"lines\":2}").get("Signature"));
        assertThat(signed("{\"lines\":1}")).isEqualTo(signed("{\"lines\":1}"));
    }

    /** RFC 9110, 4.2.3: these name the same place, and a receiver finds the second in the request. */
    @ParameterizedTest
    @CsvSource({
        "https://store.example, https://store.example/",
        "https://store.example?told=1, https://store.example/?told=1",
        "https://Store.Example:443/Told, https://store.example/Told",
        "http://store.example:80, http://store.example/",
        "http://store.example:443/told, http://store.example:443/told",
        "https://store.example:80/a%2Fb?c=%20d, https://store.example:80/a%2Fb?c=%20d",
        "http://[::1]:8081/, http://[::1]:8081/"
    })
    void aUrlIsSignedAsAReceiverFindsIt(URI url, URI found) {
        assertThat(Signature.target(url)).isEqualTo(found).hasToString(found.toString());
    }

    private static Map<String, String> signed(String body) {
        return Signature.headers(
                URI.create("https://store.example/told"),
                body.getBytes(StandardCharsets.UTF_8),
                "hook-1",
                SECRET,
                Instant.EPOCH);
    }

    @ParameterizedTest
    @CsvSource({"0, PT1S", "1, PT2S", "2, PT4S", "11, PT34M8S", "12, PT1H", "13, PT1H", "100000, PT1H"})
    void thePauseDoublesFromASecondToAnHour(int failuresBefore, Duration pause) {
        assertThat(Courier.pause(failuresBefore)).isEqualTo(pause);
    }
}
