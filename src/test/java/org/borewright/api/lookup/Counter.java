package org.borewright.api.lookup;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The counter of the shop: asks the running service, and has the files of the demo catalogue beside to compare with. */
public final class Counter {

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private Counter() {}

    /** Asks for a path with its query, sent as it is written. */
    public static Response ask(String path) {
        return given().urlEncodingEnabled(false).get(path);
    }

    /** What is answered at a path that leads somewhere. */
    public static JsonNode answer(String path) {
        return body(ask(path), 200);
    }

    /** What is answered at a path that leads nowhere, or to which the question is wrong. */
    public static JsonNode refusal(String path, int status) {
        Response answer = ask(path);
        assertThat(answer.contentType()).isEqualTo("application/problem+json");
        return body(answer, status);
    }

    /** The body of an answer of a status. */
    public static JsonNode body(Response answer, int status) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(status);
        return read(answer.asString());
    }

    /** JSON with its figures as written. */
    public static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException broken) {
            throw new AssertionError(json, broken);
        }
    }

    /** A text as it is written in a path or query. */
    public static String escaped(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** The texts of a member of each item. */
    public static List<String> texts(JsonNode items, String member) {
        return items.valueStream().map(item -> item.path(member).asText()).toList();
    }

    /** The texts of a list. */
    public static List<String> texts(JsonNode items) {
        return items.valueStream().map(JsonNode::asText).toList();
    }

    /** The lines of a file of the demo catalogue. */
    public static List<NamedCsvRecord> lines(String file) {
        try (CsvReader<NamedCsvRecord> lines = CsvReader.builder().ofNamedCsvRecord(Path.of("catalog-data", file))) {
            return lines.stream().toList();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** A column of a file of the demo catalogue. */
    public static Stream<String> column(String file, String column) {
        return lines(file).stream().map(line -> line.getField(column));
    }
}
