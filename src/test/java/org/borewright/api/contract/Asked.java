package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.borewright.api.guard.Wire;
import org.borewright.api.match.request.SampleRequest;

/**
 * A request as it goes over the wire, for no client may put right what the contract says of it.
 *
 * @param method of HTTP
 * @param target path and query, escaped
 * @param headers by name, in any case
 * @param body nothing where it is empty
 * @param from where the order stands that it is about; nothing where it is about none
 */
record Asked(String method, String target, Map<String, String> headers, String body, String from) {

    private static final List<String> METHODS = List.of("get", "post", "delete");

    static Asked get(String target) {
        return new Asked("GET", target, Map.of("Host", "shop"), "", "");
    }

    /**
     * What an example says was asked: a method with its path, and where there is a body either its {@code text} or an {@code example}
     * of the contract, with something put {@code instead} of what stands at a JSON Pointer, and {@code paddedTo} so many bytes; a
     * header that is null is left out. What is about an order says {@code from} where it is asked.
     */
    static Asked of(JsonNode said, Contract contract) {
        String method = METHODS.stream().filter(said::has).findFirst().orElseThrow();
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put("Host", "shop");
        String body = body(said, contract);
        if (!body.isEmpty()) {
            headers.put("Content-Type", "application/json");
        }
        Contract.named(said.path("headers")).forEach((name, value) -> headers.put(name, value.asText("")));
        headers.values().removeIf(String::isEmpty);
        return new Asked(
                method.toUpperCase(Locale.ROOT),
                said.get(method).textValue(),
                headers,
                body,
                said.path("from").asText());
    }

    private static String body(JsonNode said, Contract contract) {
        if (!said.has("example")) {
            return said.path("text").asText("");
        }
        JsonNode example =
                contract.at("/components/examples/" + said.get("example").textValue() + "/value");
        SampleRequest request = SampleRequest.of(example);
        Contract.named(said.path("instead")).forEach((pointer, value) -> request.with(pointer, value.toString()));
        String text = request.text();
        return text + " ".repeat(Math.max(0, said.path("paddedTo").asInt() - text.length()));
    }

    /** The target without its query. */
    String path() {
        return target.split("\\?", 2)[0];
    }

    /** The same of another path or query. */
    Asked at(String other) {
        return new Asked(method, other, headers, body, from);
    }

    /** The same with another header. */
    Asked with(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(headers);
        more.put(name, value);
        more.values().removeIf(String::isEmpty);
        return new Asked(method, target, more, body, from);
    }

    /** The same with one more parameter. */
    Asked and(String parameter) {
        return at(target + (target.contains("?") ? "&" : "?") + parameter);
    }

    /** The same with another body. */
    Asked saying(String other) {
        return new Asked(method, target, headers, other, from);
    }

    /** The same of an order that stands elsewhere. */
    Asked from(String where) {
        Asked moved = new Asked(method, target, headers, body, where);
        return headers.containsKey("If-Match") ? moved.with("If-Match", "\"" + Walked.version(where) + "\"") : moved;
    }

    Answer answer() {
        if (!from.isEmpty()) {
            return Walked.to(from).answer(this);
        }
        StringBuilder head = new StringBuilder(method + " " + target + " HTTP/1.1\n");
        headers.forEach(
                (name, value) -> head.append(name).append(": ").append(value).append('\n'));
        if (!body.isEmpty()) {
            head.append("Content-Length: ")
                    .append(body.getBytes(StandardCharsets.UTF_8).length)
                    .append('\n');
        }
        try (Wire wire = Wire.open()) {
            return Answer.read(wire.send(head + "\n" + body).answer());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
