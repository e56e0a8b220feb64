package org.borewright.api.match.request;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** A request that holds together, to be spoilt in one place. */
public final class SampleRequest {

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private final JsonNode root;

    private SampleRequest(JsonNode root) {
        this.root = root;
    }

    /** An inline four, worn: one grid with a scored wall, three single diameters. */
    public static SampleRequest inlineFour() {
        return in("/api/match/ostravel-4-worn.json");
    }

    /** The request of a file. */
    public static SampleRequest in(String resource) {
        try (InputStream file = SampleRequest.class.getResourceAsStream(resource)) {
            return new SampleRequest(JSON.readTree(file));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** Any other request. */
    public static SampleRequest of(JsonNode request) {
        return new SampleRequest(request.deepCopy());
    }

    /** The same request with something else at a place, or nothing where the text is {@code nothing}. */
    public SampleRequest with(String pointer, String json) {
        JsonPointer place = JsonPointer.compile(pointer);
        JsonNode parent = root.at(place.head());
        String last = place.last().getMatchingProperty();
        JsonNode value = json.equals("nothing") ? null : read(json);
        if (parent instanceof ObjectNode object) {
            if (value == null) {
                object.remove(last);
            } else {
                object.set(last, value);
            }
        } else {
            ArrayNode list = (ArrayNode) parent;
            int index = place.last().getMatchingIndex();
            if (value == null) {
                list.remove(index);
            } else if (index < list.size()) {
                list.set(index, value);
            } else {
                list.add(value);
            }
        }
        return this;
    }

    /** Its text. */
    public String text() {
        return root.toString();
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException(json, broken);
        }
    }
}
