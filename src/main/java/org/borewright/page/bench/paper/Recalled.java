package org.borewright.page.bench.paper;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.page.Form;

/** Fills a form in again from a body that was sent, every figure as it was written there. */
public final class Recalled {

    private static final JsonFactory JSON = new JsonFactory();
    private static final String CANNOT_BE_MEASURED = "–";

    private final JsonParser parser;
    private final Map<String, String> fields = new LinkedHashMap<>();

    private Recalled(JsonParser parser) {
        this.parser = parser;
    }

    /** The form that a body of JSON stands for: {@link Form#body} the other way round. */
    public static Form of(String body) {
        try (JsonParser parser = JSON.createParser(body)) {
            Recalled recalled = new Recalled(parser);
            recalled.value(parser.nextToken(), "");
            return new Form(recalled.fields);
        } catch (IOException neverKept) {
            throw new UncheckedIOException(neverKept);
        }
    }

    /** The form of what was asked on a paper that was fetched whole. */
    public static Form of(PaperAnswer paper) {
        return of(Objects.requireNonNull(paper.request(), "a whole paper has its question"));
    }

    private void value(JsonToken token, String pointer) throws IOException {
        switch (token) {
            case START_OBJECT -> object(pointer);
            case START_ARRAY -> list(pointer);
            case VALUE_TRUE, VALUE_FALSE -> fields.put("truth:" + pointer, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> fields.put("number:" + pointer, parser.getText());
            case VALUE_NULL -> fields.put("number:" + pointer, CANNOT_BE_MEASURED);
            case VALUE_STRING -> fields.put(pointer, parser.getText());
            case END_OBJECT, END_ARRAY, FIELD_NAME, NOT_AVAILABLE, VALUE_EMBEDDED_OBJECT ->
                throw new IllegalStateException("no body has " + token + " at " + pointer);
        }
    }

    private void object(String pointer) throws IOException {
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName().replace("~", "~0").replace("/", "~1");
            value(parser.nextToken(), pointer + "/" + name);
        }
    }

    private void list(String pointer) throws IOException {
        int index = 0;
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            value(token, pointer + "/" + index++);
        }
    }
}
