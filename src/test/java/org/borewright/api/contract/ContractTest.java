package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.borewright.api.guard.Routes;
import org.junit.jupiter.api.Test;

/** The contract says what runs: its operations are the routes there are, and the service hands it out. */
@QuarkusTest
class ContractTest {

    private static final Contract CONTRACT = Contract.read();

    @Inject
    Routes routes;

    @Test
    void the_service_hands_out_the_file_of_the_repository() throws IOException {
        Answer answer = Asked.get("/api/openapi").answer();

        assertThat(answer.type()).isEqualTo("application/yaml");
        assertThat(answer.body()).isEqualTo(Files.readString(Contract.FILE, StandardCharsets.UTF_8));
    }

    @Test
    void its_operations_are_the_routes_there_are() {
        assertThat(operations(CONTRACT)).isEmpty();
    }

    @Test
    void an_operation_on_one_side_alone_is_found() {
        assertThat(operations(CONTRACT.with("/paths/~1problems", "{\"put\": {}}")))
                .containsExactlyInAnyOrder(
                        "operations: PUT /problems is in the contract alone",
                        "operations: GET /problems is in the service alone");
    }

    private List<String> operations(Contract contract) {
        return Differences.between(
                "operations",
                contract.operations().stream().map(Operation::name).toList(),
                routes.all().stream()
                        .map(route -> route.method() + " " + route.path())
                        .toList());
    }
}
