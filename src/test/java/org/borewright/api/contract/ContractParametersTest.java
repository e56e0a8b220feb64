package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The parameters of the contract are those that the service reads, each with the range that it keeps. */
@QuarkusTest
class ContractParametersTest {

    private static final Contract CONTRACT = Contract.read();
    private static final String KNOWN = "known here: ";

    /** What the service answers does not depend on what is planted in the contract: the same is asked once. */
    private static final Map<Asked, Answer> ANSWERS = new HashMap<>();

    @Test
    void theNamesAreThoseThatTheServiceKnows() {
        assertThat(names(CONTRACT)).isEmpty();
    }

    @Test
    void theRangesAndUsualValuesAreThoseThatTheServiceKeeps() {
        assertThat(ranges(CONTRACT)).isEmpty();
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/components/parameters/Unit/name | \"units\" | GET /api/engines/{engine}, query: units is in the contract alone",
                "/components/parameters/Unit/name | \"units\" | GET /api/engines/{engine}, query: unit is in the service alone",
                "/components/parameters/Unit/required | true | GET /api/engines, unit: required, and answered without",
                "/components/parameters/Size/name | \"step\" | GET /api/engines/{engine}/sizes/{size}/fit, path: step is in the contract alone",
                "/components/parameters/Size/required | false | GET /api/engines/{engine}/sizes/{size}/fit, size: not required, and there is no path without",
            })
    void aNameThatSaysOtherwiseIsFound(String place, String planted, String words) {
        assertThat(names(CONTRACT.with(place, planted))).contains(words);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"maximum\": 99} | GET /api/engines, size: 100 is answered with 200",
                "{\"maximum\": 101} | GET /api/engines, size: 101 is answered with 400",
                "{\"minimum\": 0} | GET /api/engines, size: 0 is answered with 400",
                "{\"minimum\": 2} | GET /api/engines, size: 1 is answered with 200",
                "{\"enum\": [\"some\"]} | GET /api/engines, size: some is answered with 400",
                "{\"maxLength\": 2} | GET /api/engines, size: xx is answered with 400",
                "{\"default\": 5} | GET /api/engines, size: 5 is not the usual value",
            })
    void aRangeThatSaysOtherwiseIsFound(String planted, String words) {
        assertThat(ranges(CONTRACT.with("/paths/~1api~1engines/get/parameters/5/schema", planted)))
                .contains(words);
    }

    private static List<String> names(Contract contract) {
        List<String> found = new ArrayList<>();
        for (Operation operation : contract.operations()) {
            String name = operation.name();
            Map<String, JsonNode> query = operation.parameters("query");
            found.addAll(Differences.between(name + ", query", query.keySet(), known(operation)));
            found.addAll(Differences.between(
                    name + ", path", operation.parameters("path").keySet(), inPath(operation)));
            query.forEach((parameter, said) -> {
                if (said.path("required").asBoolean() && isFine(bare(operation))) {
                    found.add(name + ", " + parameter + ": required, and answered without");
                }
            });
            operation.parameters("path").forEach((parameter, said) -> {
                if (!said.path("required").asBoolean()) {
                    found.add(name + ", " + parameter + ": not required, and there is no path without");
                }
            });
        }
        return found;
    }

    /** What the service says it knows, when it is asked for something else. */
    private static Set<String> known(Operation operation) {
        Asked right = right(operation);
        String limit =
                answer(right.and("nobody-knows=1")).json().at("/errors/0/limit").asText();
        assertThat(limit).startsWith(KNOWN);
        TreeSet<String> known =
                Arrays.stream(limit.replace(KNOWN, "").split(", ")).collect(Collectors.toCollection(TreeSet::new));
        known.removeAll(List.of("", "none"));
        return known;
    }

    private static boolean isFine(Asked asked) {
        return answer(asked).status() < 300;
    }

    private static Answer answer(Asked asked) {
        return ANSWERS.computeIfAbsent(asked, Asked::answer);
    }

    /** The right request without any parameter. */
    private static Asked bare(Operation operation) {
        Asked right = right(operation);
        return right.at(right.path());
    }

    private static List<String> inPath(Operation operation) {
        return Pattern.compile("\\{([^}]*)}")
                .matcher(operation.path())
                .results()
                .map((MatchResult part) -> part.group(1))
                .toList();
    }

    private static List<String> ranges(Contract contract) {
        List<String> found = new ArrayList<>();
        for (Operation operation : contract.operations()) {
            operation.parameters("query").forEach((name, parameter) -> {
                Parameter asked = new Parameter(right(operation), name);
                asked.judge(parameter, contract.resolved(parameter.get("schema")));
                asked.found().forEach(fault -> found.add(operation.name() + ", " + fault));
            });
        }
        return found;
    }

    /** The right request of the file, whatever is planted in the contract. */
    private static Asked right(Operation operation) {
        return Provoked.right(CONTRACT.operation(operation.name()));
    }

    /**
     * One parameter of a request, tried at what the contract says of it and just beyond.
     *
     * @param found what is answered otherwise than the contract says
     */
    private record Parameter(Asked right, String name, List<String> found) {

        Parameter(Asked right, String name) {
            this(right, name, new ArrayList<>());
        }

        void judge(JsonNode parameter, JsonNode schema) {
            is(200, parameter.get("example").asText());
            schema.path("enum").forEach(word -> is(200, word.asText()));
            if (schema.has("enum") || !schema.path("type").asText().equals("string")) {
                is(400, "nobody-knows");
            }
            if (schema.has("minimum")) {
                is(200, schema.get("minimum").asText());
                is(400, Integer.toString(schema.get("minimum").intValue() - 1));
            }
            if (schema.has("maximum")) {
                is(200, schema.get("maximum").asText());
                is(400, Integer.toString(schema.get("maximum").intValue() + 1));
            }
            if (schema.has("maxLength")) {
                is(200, "x".repeat(schema.get("maxLength").intValue()));
                is(400, "x".repeat(schema.get("maxLength").intValue() + 1));
            }
            if (parameter.at("/schema/default").isValueNode()) {
                isUsual(parameter.at("/schema/default").asText());
            }
        }

        private void is(int status, String value) {
            int answered = with(value).status();
            if (answered != status && !(status == 200 && answered / 100 == 2)) {
                found.add("%s: %s is answered with %s".formatted(name, value, answered));
            }
        }

        /** Both are asked now: what a right request moves in between, stock for one, is no difference of the two. */
        private void isUsual(String value) {
            if (!told(asked(value).answer()).equals(told(right.answer()))) {
                found.add("%s: %s is not the usual value".formatted(name, value));
            }
        }

        private static JsonNode told(Answer answer) {
            return Told.from(Told.OF_THE_CONTRACT, answer.json());
        }

        private Answer with(String value) {
            return answer(asked(value));
        }

        private Asked asked(String value) {
            return right.at(right.path()).and(name + "=" + Provoked.escaped(value));
        }
    }
}
