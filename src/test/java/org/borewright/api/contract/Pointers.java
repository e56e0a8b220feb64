package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Where the pointers of a refusal lead: to what was sent, or to a member that may stand there and was not sent. A pointer to anything else
 * sends whoever reads it astray.
 */
public final class Pointers {

    private static final Contract CONTRACT = Contract.read();

    private Pointers() {}

    /** Those of a refusal that lead to nothing. */
    public static List<String> astray(String path, String sent, String refusal) {
        JsonNode body = Contract.json(sent);
        JsonNode schema = schema(path, body);
        List<String> astray = new ArrayList<>();
        for (JsonNode error : Contract.json(refusal).path("errors")) {
            String pointer = error.path("pointer").asText("");
            if (pointer.startsWith("/") && !leads(schema, body, tokens(pointer))) {
                astray.add(pointer);
            }
        }
        return astray;
    }

    private static List<String> tokens(String pointer) {
        return Arrays.stream(pointer.substring(1).split("/", -1))
                .map(token -> token.replace("~1", "/").replace("~0", "~"))
                .toList();
    }

    /** That of the operation; where new rings alone are confirmed or judged, that of a match. */
    private static JsonNode schema(String path, JsonNode body) {
        JsonNode match = Contract.schema("MatchRequest");
        if (CONTRACT.judge(match).validate(body).isEmpty()) {
            return match;
        }
        Asked asked = new Asked("POST", path, Map.of(), "", "");
        return CONTRACT.operations().stream()
                .filter(operation -> operation.answers(asked))
                .map(operation -> operation.node().at("/requestBody/content/application~1json/schema"))
                .findFirst()
                .orElseThrow();
    }

    private static boolean leads(JsonNode listed, JsonNode value, List<String> tokens) {
        if (tokens.isEmpty()) {
            return true;
        }
        JsonNode schema = CONTRACT.resolved(listed);
        String token = tokens.get(0);
        List<String> rest = tokens.subList(1, tokens.size());
        if (value.isArray()) {
            return token.matches("0|[1-9][0-9]*")
                    && value.has(Integer.parseInt(token))
                    && leads(schema.path("items"), value.get(Integer.parseInt(token)), rest);
        }
        return value.has(token)
                ? leads(schema.at("/properties/" + token), value.get(token), rest)
                : rest.isEmpty()
                        && value.isObject()
                        && schema.path("properties").has(token);
    }
}
