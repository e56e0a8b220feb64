package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What an operation is asked to see all it can answer: once as it should be, then with everything wrong that its form lets be wrong. */
final class Provoked {

    private static final int BODY_LIMIT = 256 * 1024;

    private Provoked() {}

    /** The requests, the right one first. */
    static List<Asked> of(Operation operation) {
        Asked right = right(operation);
        List<Asked> requests = new ArrayList<>();
        requests.add(right);
        requests.add(right.with("Accept", "text/html"));
        requests.add(right.with("If-None-Match", "*"));
        requests.add(right.and("nobody-knows=1"));
        forms(operation).forEach(form -> requests.add(right.with("Accept", form)));
        if (operation.path().contains("{")) {
            requests.add(right.at(
                    right.target().replace(right.path(), operation.path().replaceAll("\\{[^}]*}", "nobody-knows"))));
        }
        if (!right.body().isEmpty()) {
            requests.add(right.with("Content-Type", "text/plain"));
            requests.add(right.saying("{"));
            requests.add(right.saying("{\"nobody-knows\": 1}"));
            requests.add(right.saying(
                    right.body() + " ".repeat(BODY_LIMIT + 1 - right.body().length())));
        }
        if (right.headers().containsKey("Idempotency-Key")) {
            requests.add(right.with("Idempotency-Key", ""));
        }
        if (right.headers().containsKey("If-Match")) {
            requests.add(right.with("If-Match", ""));
            requests.add(right.with("If-Match", "\"99\""));
            requests.add(right.from("withdrawn"));
        } else if (operation.statuses().contains("409")) {
            requests.add(right.from("received"));
        }
        return requests;
    }

    private static Set<String> forms(Operation operation) {
        return Contract.named(operation.response(200).path("content")).keySet();
    }

    /** The request that every required parameter, at its example, and the first example of the body make. */
    static Asked right(Operation operation) {
        String target = operation.path();
        for (Map.Entry<String, JsonNode> parameter :
                operation.parameters("path").entrySet()) {
            target = target.replace("{" + parameter.getKey() + "}", example(parameter.getValue()));
        }
        Asked right = new Asked(operation.method().toUpperCase(Locale.ROOT), target, Map.of("Host", "shop"), "", "");
        for (Map.Entry<String, JsonNode> parameter : required(operation, "query")) {
            right = right.and(parameter.getKey() + "=" + example(parameter.getValue()));
        }
        for (Map.Entry<String, JsonNode> header : required(operation, "header")) {
            right = right.with(header.getKey(), header.getValue().get("example").asText());
        }
        if (operation.node().has("requestBody")) {
            right = right.with("Content-Type", "application/json").saying(body(operation));
        }
        String from = operation.node().path("x-from").asText();
        return from.isEmpty() ? right : right.from(from);
    }

    private static List<Map.Entry<String, JsonNode>> required(Operation operation, String in) {
        return operation.parameters(in).entrySet().stream()
                .filter(parameter -> parameter.getValue().path("required").asBoolean())
                .toList();
    }

    /** The first example of the body. */
    private static String body(Operation operation) {
        String example = Contract.examplesOf(operation.node().get("requestBody"))
                .iterator()
                .next();
        return operation
                .contract()
                .at("/components/examples/" + example + "/value")
                .toString();
    }

    /** The example of a parameter, as it stands in a path or query. */
    static String example(JsonNode parameter) {
        return escaped(parameter.get("example").asText());
    }

    static String escaped(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
