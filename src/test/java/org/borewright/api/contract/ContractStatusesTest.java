package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The statuses, media types and headers of the contract are those that each operation answers with, when all that can be is provoked. */
@QuarkusTest
class ContractStatusesTest {

    private static final Contract CONTRACT = Contract.read();

    /** By operation. */
    private static final Map<String, List<Answer>> ANSWERS = new TreeMap<>();

    /** On every answer alike: of HTTP itself, and what keeps a browser from making more of an answer. */
    private static final Set<String> ON_EVERY_ANSWER = Set.of(
            "content-length",
            "content-type",
            "content-security-policy",
            "cross-origin-resource-policy",
            "referrer-policy",
            "transfer-encoding",
            "x-content-type-options");

    @Test
    void eachOperationAnswersWithTheStatusesItNames() {
        assertThat(statuses(CONTRACT)).isEmpty();
    }

    @Test
    void eachAnswerHasTheFormAndTheHeadersItNames() {
        assertThat(forms(CONTRACT)).isEmpty();
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/paths/~1api~1engines/get/responses/304 | nothing | GET /api/engines: 304 is in the service alone",
                "/paths/~1api~1match/post/responses/413 | nothing | POST /api/match: 413 is in the service alone",
                "/paths/~1problems/get/responses/409 | {} | GET /problems: 409 is in the contract alone",
            })
    void aStatusOnOneSideAloneIsFound(String place, String planted, String words) {
        assertThat(statuses(CONTRACT.with(place, planted))).containsExactly(words);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/components/responses/NotChanged/headers/ETag | nothing | GET /api/engines, 304, headers: etag is in the service alone",
                "/components/headers/MayBeKept/schema | {\"const\": \"no-store\"} | GET /api/engines, 200, Cache-Control: max-age=60, public",
                "/components/headers/ETag/schema/pattern | \"^[^\\\"]*$\" | GET /api/engines, 200, ETag: \"",
                "/paths/~1problems/get/responses/200/headers/Link | {\"required\": true, \"schema\": {}} | GET /problems, 200, headers: link is in the contract alone",
                "/components/responses/BodyTooLarge/content | {\"text/plain\": {}} | POST /api/match, 413, form: text/plain is in the contract alone",
                "/components/responses/NotChanged/content | {\"application/json\": {}} | GET /api/engines, 304, form: application/json is in the contract alone",
            })
    void aHeaderOrFormThatSaysOtherwiseIsFound(String place, String planted, String words) {
        assertThat(forms(CONTRACT.with(place, planted)))
                .anySatisfy(difference -> assertThat(difference).startsWith(words));
    }

    /** What the service answers does not depend on what is planted in the contract, and is asked for once. */
    private static List<Answer> answers(Operation operation) {
        return ANSWERS.computeIfAbsent(
                operation.name(),
                name -> Provoked.of(CONTRACT.operation(name)).stream()
                        .map(Asked::answer)
                        .toList());
    }

    private static List<String> statuses(Contract contract) {
        List<String> found = new ArrayList<>();
        for (Operation operation : contract.operations()) {
            Set<String> answered = new TreeSet<>();
            answers(operation).forEach(answer -> answered.add(Integer.toString(answer.status())));
            found.addAll(Differences.between(operation.name(), operation.statuses(), answered));
        }
        return found;
    }

    private static List<String> forms(Contract contract) {
        List<String> found = new ArrayList<>();
        for (Operation operation : contract.operations()) {
            Map<Integer, Set<String>> written = new TreeMap<>();
            for (Answer answer : answers(operation)) {
                answer.type()
                        .ifPresentOrElse(
                                type -> written.computeIfAbsent(answer.status(), status -> new TreeSet<>())
                                        .add(type),
                                () -> written.putIfAbsent(answer.status(), new TreeSet<>()));
                found.addAll(headers(
                        contract,
                        operation.name() + ", " + answer.status(),
                        operation.response(answer.status()),
                        answer));
            }
            written.forEach((status, types) -> found.addAll(Differences.between(
                    operation.name() + ", " + status + ", form",
                    Contract.named(operation.response(status).path("content")).keySet(),
                    types)));
        }
        return found;
    }

    private static List<String> headers(Contract contract, String what, JsonNode response, Answer answer) {
        Set<String> written = new TreeSet<>(answer.headers().keySet());
        written.removeAll(ON_EVERY_ANSWER);
        Set<String> named = new TreeSet<>();
        Map<String, JsonNode> headers = new TreeMap<>();
        Contract.named(response.path("headers")).forEach((name, listed) -> {
            JsonNode header = contract.resolved(listed);
            if (header.path("required").asBoolean() || written.contains(name.toLowerCase(Locale.ROOT))) {
                named.add(name.toLowerCase(Locale.ROOT));
                headers.put(name, header);
            }
        });
        List<String> found = Differences.between(what + ", headers", named, written);
        headers.forEach((name, header) -> {
            String value = answer.headers().getOrDefault(name.toLowerCase(Locale.ROOT), "");
            contract.judge(header.path("schema"))
                    .validate(TextNode.valueOf(value))
                    .forEach(error -> found.add("%s, %s: %s %s".formatted(what, name, value, error)));
        });
        return found;
    }
}
