package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.LinkedHashMap;
import java.util.Map;
import org.borewright.api.match.request.SampleRequest;

/** Spoils a request that keeps its schema in one place after the other, so that each time a single rule of the schema is broken. */
final class Spoiling {

    private static final String NOBODY_KNOWS = "\"nobody knows?\"";

    private final Contract contract;
    private final JsonNode request;
    private final Map<String, String> spoilt = new LinkedHashMap<>();

    private Spoiling(Contract contract, JsonNode request) {
        this.contract = contract;
        this.request = request;
    }

    /** The spoilt requests, by what is wrong with them. */
    static Map<String, String> of(Contract contract, JsonNode schema, JsonNode request) {
        Spoiling spoiling = new Spoiling(contract, request);
        spoiling.value("", schema);
        return spoiling.spoilt;
    }

    private void value(String place, JsonNode said) {
        JsonNode schema = contract.resolved(said);
        JsonNode value = request.at(place);
        if (!place.isEmpty()) {
            put(place, value.isObject() ? "[]" : "{}");
        }
        if (value.isObject()) {
            object(place, schema, value);
        } else if (value.isArray()) {
            list(place, schema, (ArrayNode) value);
        } else {
            figure(place, schema);
        }
    }

    private void object(String place, JsonNode schema, JsonNode value) {
        put(place + "/nobody-knows", "1");
        schema.path("required").forEach(name -> put(place + "/" + name.textValue(), "nothing"));
        Contract.named(value).keySet().forEach(name -> value(place + "/" + name, schema.at("/properties/" + name)));
    }

    private void list(String place, JsonNode schema, ArrayNode value) {
        if (schema.has("minItems")) {
            put(place, "[]");
        }
        if (schema.has("maxItems")) {
            ArrayNode tooMany = JsonNodeFactory.instance.arrayNode();
            while (tooMany.size() <= schema.get("maxItems").intValue()) {
                tooMany.add(value.get(0));
            }
            put(place, tooMany.toString());
        }
        for (int i = 0; i < value.size(); i++) {
            value(place + "/" + i, schema.get("items"));
        }
    }

    private void figure(String place, JsonNode schema) {
        if (schema.has("enum") || schema.has("pattern")) {
            put(place, NOBODY_KNOWS);
        }
        if (schema.has("minimum")) {
            put(place, Integer.toString(schema.get("minimum").intValue() - 1));
        }
        if (schema.has("exclusiveMinimum")) {
            put(place, schema.get("exclusiveMinimum").asText());
        }
        if (schema.has("maximum")) {
            put(place, Integer.toString(schema.get("maximum").intValue() + 1));
        }
    }

    private void put(String place, String json) {
        String shown = json.length() > 40 ? json.substring(0, 40) + "…" : json;
        spoilt.put(
                place + " " + shown, SampleRequest.of(request).with(place, json).text());
    }
}
