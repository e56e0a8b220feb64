package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

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

    /** What it says of a status. */
    JsonNode response(int status) {
        JsonNode responses = node.get("responses");
        String named = Integer.toString(status);
        return contract.resolved(responses.get(responses.has(named) ? named : "default"));
    }
}
