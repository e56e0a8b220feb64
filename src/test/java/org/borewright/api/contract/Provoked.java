package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What an operation is asked to see all it can answer: once as it should be, then with everything wrong that its form lets be wrong. */
final class Provoked {

    private static final String POSTED = "{\"post\": \"%s\", \"example\": \"%s\"%s}";

    private Provoked() {}

    /** The requests, the right one first. */
    static List<Asked> of(Operation operation) {
        Asked right = right(operation);
        List<Asked> requests = new ArrayList<>();
        requests.add(right);
        requests.add(right.with("Accept", "text/html"));
        requests.add(right.with("If-None-Match", "*"));
        requests.add(right.at(right.target() + "?nobody-knows=1"));
        if (operation.path().contains("{")) {
            requests.add(right.at(operation.path().replaceAll("\\{[^}]*}", "nobody-knows")));
        }
        if (!right.body().isEmpty()) {
            requests.add(right.with("Content-Type", "text/plain"));
            requests.add(Posted.to(operation.path()).asked("{"));
            requests.add(Posted.to(operation.path()).asked("{}"));
            requests.add(posted(operation, ", \"paddedTo\": 262145"));
        }
        return requests;
    }

    /** The request that every required parameter, at its example, makes. */
    static Asked right(Operation operation) {
        if (operation.node().has("requestBody")) {
            return posted(operation, "");
        }
        String path = operation.path();
        for (Map.Entry<String, JsonNode> parameter :
                operation.parameters("path").entrySet()) {
            path = path.replace("{" + parameter.getKey() + "}", example(parameter.getValue()));
        }
        return Asked.get(path);
    }

    /** The example of a parameter, as it stands in a path or query. */
    static String example(JsonNode parameter) {
        return escaped(parameter.get("example").asText());
    }

    static String escaped(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** The first example of the body. */
    private static Asked posted(Operation operation, String more) {
        String example = Contract.examplesOf(operation.node().get("requestBody"))
                .iterator()
                .next();
        return Asked.of(Contract.json(POSTED.formatted(operation.path(), example, more)), operation.contract());
    }
}
