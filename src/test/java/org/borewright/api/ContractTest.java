package org.borewright.api;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The contract says what runs: its operations are the routes there are, and its examples are really answered as it says. */
@QuarkusTest
class ContractTest {

    private static final Path CONTRACT = Path.of("openapi", "borewright.yaml");

    @Test
    void its_operations_are_the_routes_there_are() throws IOException {
        JsonNode running = new YAMLMapper().readTree(given().get("/q/openapi").asString());

        assertThat(operations(contract())).isEqualTo(operations(running));
    }

    @Test
    void the_example_of_the_match_is_answered_as_the_contract_says() throws IOException {
        JsonNode contract = contract();
        JsonNode example = contract.at("/paths/~1api~1match/post/requestBody/content/application~1json/example");
        String answer = given().contentType("application/json")
                .body(example.toString())
                .post("/api/match")
                .then()
                .statusCode(200)
                .extract()
                .asString();

        assertThat(answerSchema(contract).validate(answer, InputFormat.JSON)).isEmpty();
    }

    private static JsonNode contract() throws IOException {
        return new YAMLMapper().readTree(CONTRACT.toFile());
    }

    /** The schema of the match answer, with all it refers to. */
    private static Schema answerSchema(JsonNode contract) {
        var schema = new ObjectMapper().createObjectNode();
        schema.put("$ref", "#/components/schemas/MatchAnswer");
        schema.set("components", contract.get("components"));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema);
    }

    private static Set<String> operations(JsonNode document) {
        Set<String> operations = new TreeSet<>();
        document.get("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .properties()
                        .forEach(method -> operations.add(method.getKey() + " " + path.getKey())));
        return operations;
    }
}
