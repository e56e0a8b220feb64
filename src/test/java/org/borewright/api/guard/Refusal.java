package org.borewright.api.guard;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A refusal as it came over the wire: a whole problem document, and nothing of what goes on inside the service.
 *
 * @param status of HTTP
 * @param document the problem
 */
record Refusal(int status, JsonNode document) {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern STATUS = Pattern.compile("HTTP/1\\.1 (\\d{3}) ");

    /** Names of classes, and lines of a stack trace. */
    private static final Pattern INSIDE = Pattern.compile(
            "\\b(java|javax|jakarta|io|org|com)\\.[a-z]+\\.|[a-z](Exception|Error)\\b|\\sat [\\w.$]+\\(");

    /** The refusal in an answer, which must be one. */
    static Refusal in(String answer) {
        String body = answer.substring(answer.indexOf("\r\n\r\n") + 4);
        int status = status(answer);
        assertThat(status).as(answer).isBetween(400, 499);
        assertThat(answer.toLowerCase(Locale.ROOT)).contains("content-type: application/problem+json\r\n");
        assertThat(INSIDE.matcher(body).find()).as(body).isFalse();
        Refusal refusal = new Refusal(status, read(body));
        refusal.isWhole();
        return refusal;
    }

    /** The status of an answer. */
    static int status(String answer) {
        Matcher status = STATUS.matcher(answer);
        assertThat(status.lookingAt()).as(answer).isTrue();
        return Integer.parseInt(status.group(1));
    }

    /** The kind of problem, as its page is called. */
    String kind() {
        return document.path("type").textValue().replace("/problems/", "");
    }

    /** The places of all faults. */
    List<String> pointers() {
        return errors().map(error -> error.path("pointer").textValue()).toList();
    }

    /** The fault of a place, which there must be. */
    JsonNode fault(String pointer) {
        return errors().filter(error -> error.path("pointer").textValue().equals(pointer))
                .findFirst()
                .orElseThrow(() -> new AssertionError(pointer + " in " + document));
    }

    private Stream<JsonNode> errors() {
        return document.path("errors").valueStream();
    }

    private void isWhole() {
        assertThat(document.path("status").intValue()).isEqualTo(status);
        for (String member : List.of("type", "title", "detail", "instance", "wayOut")) {
            assertThat(document.path(member).asText()).as(member).isNotBlank();
        }
        assertThat(document.path("type").textValue()).startsWith("/problems/");
        assertThat(status == 422 && errors().findAny().isEmpty()).isFalse();
        errors().forEach(error -> {
            assertThat(error.path("pointer").isTextual()).as(error.toString()).isTrue();
            assertThat(error.path("reason").asText()).as(error.toString()).isNotBlank();
            assertThat(error.path("wayOut").asText()).as(error.toString()).isNotBlank();
        });
    }

    private static JsonNode read(String body) {
        try {
            return JSON.readTree(body);
        } catch (JsonProcessingException broken) {
            throw new AssertionError(body, broken);
        }
    }
}
