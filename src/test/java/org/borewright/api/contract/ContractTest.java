package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.borewright.api.guard.Routes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The contract says what runs: its operations are the routes there are, the service hands it out, and it leaves nothing unsaid. */
@QuarkusTest
class ContractTest {

    private static final Contract CONTRACT = Contract.read();

    @Inject
    Routes routes;

    @Test
    void theServiceHandsOutTheFileOfTheRepository() throws IOException {
        Answer answer = Asked.get("/api/openapi").answer();

        assertThat(answer.type()).contains("application/yaml");
        assertThat(answer.body()).isEqualTo(Files.readString(Contract.FILE, StandardCharsets.UTF_8));
    }

    @Test
    void itsOperationsAreTheRoutesThereAre() {
        assertThat(operations(CONTRACT)).isEmpty();
    }

    @Test
    void anOperationOnOneSideAloneIsFound() {
        assertThat(operations(CONTRACT.with("/paths/~1problems", "{\"put\": {}}")))
                .containsExactlyInAnyOrder(
                        "operations: PUT /problems is in the contract alone",
                        "operations: GET /problems is in the service alone");
    }

    @Test
    void nothingInItIsWithoutADescription() {
        assertThat(undescribed(CONTRACT)).isEmpty();
    }

    @Test
    void everyObjectIsClosed() {
        assertThat(open(CONTRACT)).isEmpty();
    }

    @Test
    void whateverBearsANameIsUsedAndWhateverIsUsedIsThere() {
        assertThat(references(CONTRACT)).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/paths/~1problems/get/summary | nothing | /paths/~1problems/get",
                "/components/responses/FaultyBody/description | nothing | /components/responses/FaultyBody",
                "/components/parameters/Size/description | nothing | /components/parameters/Size",
                "/components/headers/ETag/description | \"\" | /components/headers/ETag",
                "/components/schemas/Bill/description | nothing | /components/schemas/Bill",
                "/components/schemas/Bill/properties/complete/description | nothing | /components/schemas/Bill/properties/complete",
                "/components/schemas/Verdict/description | nothing | /components/schemas/MatchAnswer/properties/verdict",
                "/paths/~1problems~1{problem}/get/responses/200/description | nothing | /paths/~1problems~1{problem}/get/responses/200",
            })
    void whatIsWithoutADescriptionIsFound(String place, String planted, String found) {
        assertThat(undescribed(CONTRACT.with(place, planted))).contains(found);
    }

    @Test
    void anOpenObjectIsFound() {
        assertThat(open(CONTRACT.with("/components/schemas/Grid/additionalProperties", "nothing")))
                .containsExactly("/components/schemas/Grid");
    }

    @Test
    void aNameThatNobodyUsesAndAUseWithoutANameAreFound() {
        assertThat(references(CONTRACT.with("/components/schemas/Colour", "{}")))
                .containsExactly("names: #/components/schemas/Colour is in the contract alone");
        assertThat(references(CONTRACT.with("/components/schemas/Colour", "{\"$ref\": \"#/components/schemas/Hue\"}")))
                .contains("names: #/components/schemas/Hue is in the service alone");
    }

    private List<String> operations(Contract contract) {
        return Differences.between(
                "operations",
                contract.operations().stream().map(Operation::name).toList(),
                routes.ofTheApi().stream()
                        .map(route -> route.method() + " " + route.path())
                        .toList());
    }

    private static List<String> undescribed(Contract contract) {
        List<String> found = new ArrayList<>();
        walk("", contract.document(), (place, node) -> {
            boolean operation = node.has("operationId");
            boolean said = operation || place.matches(".*/(responses|parameters|headers|schemas|properties)/[^/]+");
            if ((said && isBlank(contract, node, "description")) || (operation && isBlank(contract, node, "summary"))) {
                found.add(place);
            }
        });
        return found;
    }

    /** What is referred to may say it. */
    private static boolean isBlank(Contract contract, JsonNode node, String member) {
        return node.path(member).asText().isBlank()
                && contract.resolved(node).path(member).asText().isBlank();
    }

    private static List<String> open(Contract contract) {
        List<String> found = new ArrayList<>();
        walk("", contract.document(), (place, node) -> {
            boolean object = node.path("type").asText().equals("object")
                    || node.path("properties").isObject();
            if (object
                    && (!node.path("additionalProperties").isBoolean()
                            || node.get("additionalProperties").asBoolean())) {
                found.add(place);
            }
        });
        return found;
    }

    private static List<String> references(Contract contract) {
        List<String> named = new ArrayList<>();
        Contract.named(contract.document().get("components"))
                .forEach((kind, all) ->
                        Contract.named(all).keySet().forEach(name -> named.add("#/components/" + kind + "/" + name)));
        return Differences.between("names", named, contract.document().findValuesAsText("$ref"));
    }

    /** Every object and list of a document but what stands in an example, each with its JSON Pointer. */
    private static void walk(String place, JsonNode node, BiConsumer<String, JsonNode> visit) {
        if (place.equals("/components/examples")) {
            return;
        }
        if (node.isObject()) {
            visit.accept(place, node);
            for (Map.Entry<String, JsonNode> member : Contract.named(node).entrySet()) {
                walk(place + "/" + member.getKey().replace("/", "~1"), member.getValue(), visit);
            }
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            walk(place + "/" + i, node.get(i), visit);
        }
    }
}
