package org.borewright.api.asked;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Locale;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;

/**
 * A body of JSON as a tree, with every number as typed and every name that stands twice noted. NaN and Infinity are read so that they
 * can be refused at their place, with all other faults.
 */
public final class JsonBody {

    private static final int LONGEST_NUMBER = 40;
    private static final int DEEPEST = 20;

    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .streamReadConstraints(
                    StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
            .build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;
    private final Faults faults;

    private JsonBody(JsonParser parser, Faults faults) {
        this.parser = parser;
        this.faults = faults;
    }

    /** The place at the top of a body. @throws ProblemException if it is not JSON */
    public static Place read(byte[] body, Faults faults) {
        try (JsonParser parser = JSON.createParser(body)) {
            return Place.top(new JsonBody(parser, faults).read(), faults);
        } catch (IOException notText) {
            // All bytes are at hand: what fails is their decoding, and it may fail before there is a line or column.
            throw new ProblemException(Problem.of(
                    ProblemType.MALFORMED_JSON, "The bytes of the body are no text; JSON is sent in UTF-8."));
        }
    }

    private JsonNode read() throws IOException {
        try {
            return whole();
        } catch (StreamConstraintsException tooMuch) {
            throw malformed(
                    "The JSON is nested deeper or holds longer names than any request needs", parser.currentLocation());
        } catch (JsonProcessingException broken) {
            throw malformed("The JSON cannot be read", broken.getLocation());
        }
    }

    private JsonNode whole() throws IOException {
        if (parser.nextToken() == null) {
            throw malformed("The body is empty", parser.currentLocation());
        }
        JsonNode node = value();
        if (parser.nextToken() != null) {
            throw malformed("Something follows after the end of the JSON", parser.currentTokenLocation());
        }
        return node;
    }

    private JsonNode value() throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_STRING -> NODES.textNode(parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number();
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            case END_ARRAY, END_OBJECT, FIELD_NAME, NOT_AVAILABLE, VALUE_EMBEDDED_OBJECT ->
                throw malformed("The JSON breaks off", parser.currentLocation());
        };
    }

    private ObjectNode object() throws IOException {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            if (object.has(name)) {
                String pointer = parser.getParsingContext().pathAsPointer().toString();
                faults.add(Fault.of(
                        ProblemType.REPEATED_FIELD, pointer, "\"" + Place.shortened(name) + "\" is given twice."));
            }
            parser.nextToken();
            object.set(name, value());
        }
        return object;
    }

    private ArrayNode array() throws IOException {
        ArrayNode array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value());
        }
        return array;
    }

    private JsonNode number() throws IOException {
        boolean figure = !parser.isNaN() && parser.getTextLength() <= LONGEST_NUMBER;
        return figure ? figure(parser.getText()) : noFigure(parser.getText());
    }

    private static JsonNode figure(String typed) {
        try {
            return NODES.numberNode(new BigDecimal(typed));
        } catch (NumberFormatException exponentBeyondAll) {
            return noFigure(typed);
        }
    }

    /** Stays as it was typed, so that whoever reads it refuses it: it is a number as little as a text. */
    private static JsonNode noFigure(String typed) {
        return NODES.pojoNode(typed);
    }

    private static ProblemException malformed(String what, JsonLocation where) {
        return new ProblemException(Problem.of(
                ProblemType.MALFORMED_JSON,
                String.format(Locale.ROOT, "%s: line %d, column %d.", what, where.getLineNr(), where.getColumnNr())));
    }
}
