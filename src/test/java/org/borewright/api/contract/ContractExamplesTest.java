package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.borewright.api.problem.ProblemType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples of the contract are real: what each says was asked is asked again, and answered as it says. */
@QuarkusTest
class ContractExamplesTest {

    private static final Contract CONTRACT = Contract.read();

    /** Nothing a caller can send alone provokes them. */
    private static final Set<String> NOT_TO_BE_PROVOKED = Set.of("UnexpectedFault", "Busy");

    /** How often orders moved stock, behind the fingerprint of the files. */
    private static final Pattern MOVED_SINCE = Pattern.compile("(?<=\"offers\":\"[0-9a-f]{12})[.][0-9]+");

    static Stream<String> answered() {
        return CONTRACT.examples().keySet().stream()
                .filter(name -> CONTRACT.examples().get(name).has("x-request"));
    }

    static Stream<String> requests() {
        return CONTRACT.operations().stream()
                .flatMap(ContractExamplesTest::requests)
                .distinct();
    }

    private static Stream<String> requests(Operation operation) {
        return Contract.examplesOf(operation.node().path("requestBody")).stream();
    }

    @ParameterizedTest
    @MethodSource("answered")
    void anExampleIsAnsweredAsItSays(String name) {
        assertThat(differences(CONTRACT, name)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("requests")
    void theRequestOfAnExampleHoldsTogether(String name) {
        JsonNode request = CONTRACT.at("/components/examples/" + name + "/value");

        Posted posted = CONTRACT.operations().stream()
                .filter(operation -> requests(operation).anyMatch(name::equals))
                .map(operation -> Posted.to(operation.path()))
                .findFirst()
                .orElseThrow();

        assertThat(CONTRACT.judge(Contract.schema(posted.request())).validate(request))
                .isEmpty();
        assertThat(posted.asked(request.toString()).answer().status()).isBetween(200, 201);
    }

    @Test
    void everyExampleHasTheSchemaOfTheAnswerItIsGivenFor() {
        assertThat(faults(CONTRACT)).isEmpty();
    }

    @Test
    void everyAnswerHasAnExampleAndEveryExampleItsPlace() {
        Set<String> shown = new HashSet<>(requests().toList());
        for (Operation operation : CONTRACT.operations()) {
            operation.bodies().forEach((status, body) -> {
                Set<String> examples = Contract.examplesOf(body);
                assertThat(examples).as("%s, %s", operation.name(), status).isNotEmpty();
                shown.addAll(examples);
            });
        }
        assertThat(Differences.between("examples", CONTRACT.examples().keySet(), shown))
                .isEmpty();
    }

    @Test
    void everyKindOfRefusalHasAnExample() {
        List<String> shown = CONTRACT.examples().values().stream()
                .filter(example -> example.at("/value/detail").isTextual())
                .map(example -> example.at("/value/type").textValue())
                .toList();

        assertThat(Differences.between(
                        "kinds of refusal",
                        shown,
                        Arrays.stream(ProblemType.values())
                                .map(ProblemType::path)
                                .toList()))
                .isEmpty();
    }

    @Test
    void whatNobodyCanProvokeIsAsTheListOfProblemsSays() {
        for (String name : NOT_TO_BE_PROVOKED) {
            JsonNode example = CONTRACT.at("/components/examples/" + name + "/value");
            ProblemType type = Stream.of(ProblemType.values())
                    .filter(known -> known.path().equals(example.get("type").textValue()))
                    .findFirst()
                    .orElseThrow();

            assertThat(example.get("title").textValue()).isEqualTo(type.title());
            assertThat(example.get("status").intValue()).isEqualTo(type.status());
            assertThat(example.get("wayOut").textValue()).isEqualTo(type.wayOut());
        }
        assertThat(answered())
                .doesNotContainAnyElementsOf(NOT_TO_BE_PROVOKED)
                .hasSize(CONTRACT.examples().size()
                        - NOT_TO_BE_PROVOKED.size()
                        - (int) requests().count());
    }

    @ParameterizedTest(name = "{1} {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Offers | value/size | \"+0.75\" | /size: the contract says \"+0.75\", the service says \"+0.50\"",
                "Offers | value/offers | [] | /offers: the contract says [], the service says [{",
                "Offers | value/colour | 1 | : colour is in the contract alone",
                "Offers | value/engine | nothing | : engine is in the service alone",
                "Offers | value/revision/offers | \"000000000000\" | /revision/offers: the contract says \"000000000000\"",
                "Offers | value/revision | nothing | : revision is in the service alone",
                "Worn | value/cylinders | [{\"cylinder\": \"1\", \"diameter\": 53.721}] | the service says 53.721",
                "Fit | value/oversize | {\"value\": 0.5, \"nm\": 500000} | the contract says 0.5, the service says 0.500",
                "BadDate | value/status | 400 | /status: the contract says 400, the service says 422",
                "BadDate | x-request/instead | {\"/date\": \"2026-02-31\"} | the service says \"2026-02-31\"",
                "UnknownPart | x-request | {\"get\": \"/api/engines/NHH\"} | no place of the contract shows it as 404 of GET /api/engines/NHH",
            })
    void anExampleThatSaysOtherwiseIsFound(String name, String place, String planted, String words) {
        Contract contract = CONTRACT.with("/components/examples/" + name + "/" + place, planted);
        String answered = name.equals("Worn") ? "WornAnswered" : name;

        assertThat(differences(contract, answered))
                .anySatisfy(difference -> assertThat(difference).contains(words));
    }

    @Test
    void anExampleOfAnotherSchemaIsFound() {
        Contract contract = CONTRACT.with("/components/examples/Offers/value/colour", "\"red\"");

        assertThat(faults(contract))
                .hasSize(1)
                .allSatisfy(fault -> assertThat(fault).contains("Offers", "'colour'"));
    }

    private static List<String> differences(Contract contract, String name) {
        JsonNode example = contract.examples().get(name);
        Asked asked = Asked.of(example.get("x-request"), contract);
        Answer answer = asked.answer();
        JsonNode answered = Contract.json(MOVED_SINCE.matcher(answer.body()).replaceAll(""));
        List<String> found = new ArrayList<>(
                asked.from().isEmpty()
                        ? Differences.between(example.get("value"), answered)
                        : Differences.between(
                                Told.from(Told.OF_THE_CONTRACT, example.get("value")),
                                Told.from(LocalDate.now(ZoneId.systemDefault()), answered)));
        if (!isShown(contract, name, asked, answer.status())) {
            found.add("no place of the contract shows it as %s of %s %s"
                    .formatted(answer.status(), asked.method(), asked.target()));
        }
        return found;
    }

    /** What is asked of no operation is shown where all others have it: with any other refusal. */
    private static boolean isShown(Contract contract, String name, Asked asked, int status) {
        return contract.operations().stream()
                .filter(operation -> operation.answers(asked))
                .findFirst()
                .map(operation -> Contract.examplesOf(operation.response(status)))
                .orElseGet(() -> Contract.examplesOf(contract.at("/components/responses/OtherRefusal")))
                .contains(name);
    }

    private static List<String> faults(Contract contract) {
        List<String> faults = new ArrayList<>();
        for (Operation operation : contract.operations()) {
            operation.bodies().values().forEach(body -> {
                var schema =
                        contract.judge(body.at("/content").iterator().next().get("schema"));
                Contract.examplesOf(body)
                        .forEach(name -> schema.validate(
                                        contract.examples().get(name).get("value"))
                                .forEach(error -> faults.add(name + ": " + error)));
            });
        }
        return faults;
    }
}
