package org.borewright.api.contract;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.keyword.NonValidationKeyword;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The contract as a document whose references are followed. Figures stay as they are written, so that 0.250 differs from 0.25. */
record Contract(JsonNode document) {

    static final Path FILE = Path.of("openapi", "borewright.yaml");

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();
    private static final ObjectMapper YAML = YAMLMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();
    private static final SchemaRegistry DIALECT = SchemaRegistry.withDefaultDialect(
            Dialect.builder(Dialects.getDraft202012())
                    .keyword(new NonValidationKeyword("components"))
                    .build(),
            registry -> registry.schemaRegistryConfig(
                    SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build()));

    static Contract read() {
        return new Contract(yaml(FILE));
    }

    static JsonNode yaml(Path file) {
        try {
            return YAML.readTree(file.toFile());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException(text, broken);
        }
    }

    /** What stands at a JSON Pointer. */
    JsonNode at(String pointer) {
        return resolved(document.at(pointer));
    }

    /** What a node refers to, or the node itself. */
    JsonNode resolved(JsonNode node) {
        return node.has("$ref") ? at(node.get("$ref").textValue().substring(1)) : node;
    }

    /** The schemas that bear a name. */
    Map<String, JsonNode> schemas() {
        return named(document.at("/components/schemas"));
    }

    /** The examples that bear a name. */
    Map<String, JsonNode> examples() {
        return named(document.at("/components/examples"));
    }

    /** The names of the examples given of a body, of a request or of an answer. */
    static Set<String> examplesOf(JsonNode body) {
        Set<String> names = new LinkedHashSet<>();
        body.path("content")
                .forEach(media -> media.path("examples").forEach(example -> {
                    String place = example.get("$ref").textValue();
                    names.add(place.substring(place.lastIndexOf('/') + 1));
                }));
        return names;
    }

    /** What refers to the schema of a name. */
    static JsonNode schema(String name) {
        return JSON.createObjectNode().put("$ref", "#/components/schemas/" + name);
    }

    /** The members of an object, in order. */
    static Map<String, JsonNode> named(JsonNode object) {
        Map<String, JsonNode> members = new LinkedHashMap<>();
        object.properties().forEach(member -> members.put(member.getKey(), member.getValue()));
        return members;
    }

    List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        named(document.at("/paths"))
                .forEach((path, methods) -> named(methods)
                        .forEach((method, node) -> operations.add(new Operation(this, method, path, node))));
        return operations;
    }

    /** One of them, by its name. */
    Operation operation(String name) {
        return operations().stream()
                .filter(operation -> operation.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** A schema of this contract, ready to judge: JSON Schema 2020-12 with its formats. */
    Schema judge(JsonNode schema) {
        ObjectNode whole = JSON.createObjectNode();
        whole.putArray("allOf").add(schema);
        whole.set("components", document.get("components"));
        return DIALECT.getSchema(whole);
    }

    /** The same contract with something else at a place, or nothing there where the text is {@code nothing}. */
    Contract with(String pointer, String json) {
        JsonNode planted = document.deepCopy();
        JsonPointer place = JsonPointer.compile(pointer);
        ObjectNode parent = (ObjectNode) planted.at(place.head());
        String last = place.last().getMatchingProperty();
        if (json.equals("nothing")) {
            if (parent.remove(last) == null) {
                throw new IllegalArgumentException(pointer);
            }
        } else {
            parent.set(last, json(json));
        }
        return new Contract(planted);
    }
}
