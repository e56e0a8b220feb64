package org.borewright.api.contract;

import static java.util.stream.Collectors.joining;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** One operation of the contract. */
record Operation(Contract contract, String method, String path, JsonNode node) {

    /** Such as {@code GET /problems}. */
    String name() {
        return method.toUpperCase(Locale.ROOT) + " " + path;
    }

    /** The parameters of the path, the query or the head, by name. */
    Map<String, JsonNode> parameters(String in) {
        Map<String, JsonNode> parameters = new LinkedHashMap<>();
        for (JsonNode listed : node.path("parameters")) {
            JsonNode parameter = contract.resolved(listed);
            if (parameter.get("in").textValue().equals(in)) {
                parameters.put(parameter.get("name").textValue(), parameter);
            }
        }
        return parameters;
    }

    /** The statuses it names one by one. */
    SortedSet<String> statuses() {
        SortedSet<String> statuses =
                new TreeSet<>(Contract.named(node.get("responses")).keySet());
        statuses.remove("default");
        return statuses;
    }

    /** Whether a request is one of its. */
    boolean answers(Asked asked) {
        String form = Arrays.stream(path.split("/", -1))
                .map(part -> part.startsWith("{") ? "[^/]+" : Pattern.quote(part))
                .collect(joining("/"));
        return method.equalsIgnoreCase(asked.method()) && asked.path().matches(form);
    }

    /** Its answers that are JSON, by status. */
    Map<String, JsonNode> bodies() {
        Map<String, JsonNode> bodies = new LinkedHashMap<>();
        Contract.named(node.get("responses")).forEach((status, listed) -> {
            JsonNode response = contract.resolved(listed);
            if (response.path("content").fieldNames().hasNext()
                    && response.get("content").fieldNames().next().endsWith("json")) {
                bodies.put(status, response);
            }
        });
        return bodies;
    }

    /** What it says of a status. */
    JsonNode response(int status) {
        JsonNode responses = node.get("responses");
        String named = Integer.toString(status);
        return contract.resolved(responses.get(responses.has(named) ? named : "default"));
    }
}
