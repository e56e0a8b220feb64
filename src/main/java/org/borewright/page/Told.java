package org.borewright.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** An answer of the API as a template reads it: objects as maps, and every figure as the very text that the answer told it in. */
public final class Told {

    private static final JsonFactory JSON = new JsonFactory();

    private final JsonParser parser;

    private Told(JsonParser parser) {
        this.parser = parser;
    }

    /** The object that an answer is. */
    public static Map<String, Object> of(byte[] answer) {
        try (JsonParser parser = JSON.createParser(answer)) {
            parser.nextToken();
            return new Told(parser).object();
        } catch (IOException noAnswerOfOurs) {
            throw new UncheckedIOException(noAnswerOfOurs);
        }
    }

    private @Nullable Object value() throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object();
            case START_ARRAY -> list();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            case VALUE_STRING, VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getText();
            case END_OBJECT, END_ARRAY, FIELD_NAME, NOT_AVAILABLE, VALUE_EMBEDDED_OBJECT ->
                throw new IllegalStateException("an answer does not begin with " + parser.currentToken());
        };
    }

    private Map<String, Object> object() throws IOException {
        Map<String, Object> object = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            Object value = value();
            if (value != null) {
                object.put(name, value);
            }
        }
        return object;
    }

    private List<@Nullable Object> list() throws IOException {
        List<@Nullable Object> list = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(value());
        }
        return list;
    }
}
