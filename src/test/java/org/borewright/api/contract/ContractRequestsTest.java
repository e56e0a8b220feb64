package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.borewright.api.match.request.SampleRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the contract lets be sent is what the service reads: the same fields, and nothing that the contract forbids. */
@QuarkusTest
class ContractRequestsTest {

    private static final Contract CONTRACT = Contract.read();
    private static final String KNOWN = "known here: ";

    @Test
    void whatTheContractForbidsTheServiceRefuses() {
        assertThat(taken(CONTRACT)).isEmpty();
    }

    @Test
    void theFieldsOfTheContractAreThoseThatTheServiceKnows() {
        assertThat(fields(CONTRACT)).isEmpty();
    }

    @Test
    void theRequestWithEveryFieldHasEveryField() {
        Members members = new Members(CONTRACT);
        for (Posted posted : Posted.values()) {
            members.note(Contract.schema(posted.request()), posted.everyField(CONTRACT));
        }

        assertThat(members.neverMet())
                .noneMatch(
                        member -> member.matches(
                                "(\\w*Request|PresentSize|Gauge|SettingRing|Survey|Grid|WallReach|Seen|PresentPiston|PistonNoted|BenchHole|FittedHole)\\..*"));
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/components/schemas/MatchRequest/properties/temperature/maximum | 100 | /temperature 101: answered with 200",
                "/components/schemas/MatchRequest/properties/deckSkim/minimum | 1 | /deckSkim 0: answered with 200",
                "/components/schemas/Survey/properties/findings/maxItems | 2 | /cylinders/0/findings [{",
                "/components/schemas/Gauge/required | [\"resolution\"] | /gauge/resolution nothing: answered with 200",
                "/components/schemas/Survey/properties/lastFinish | {} | /cylinders/1/lastFinish {}: answered with 422, and no breach of the contract",
            })
    void whatTheServiceTakesAllTheSameIsFound(String place, String planted, String words) {
        assertThat(taken(CONTRACT.with(place, planted)))
                .anySatisfy(found -> assertThat(found).startsWith(words));
    }

    @Test
    void aFieldOnOneSideAloneIsFound() {
        Contract renamed = CONTRACT.with("/components/schemas/Gauge/properties/resolution", "nothing")
                .with("/components/schemas/Gauge/properties/step", "{}");

        assertThat(fields(renamed))
                .containsExactlyInAnyOrder(
                        "/gauge: step is in the contract alone",
                        "/gauge: resolution is in the service alone",
                        "/cylinders/0/presentPiston/gauge: step is in the contract alone",
                        "/cylinders/0/presentPiston/gauge: resolution is in the service alone",
                        "/pistonGauge: step is in the contract alone",
                        "/pistonGauge: resolution is in the service alone");
    }

    /** What the contract forbids and the service takes; and what is spoilt in vain, for then nothing is proven. */
    private static List<String> taken(Contract contract) {
        return Arrays.stream(Posted.values())
                .flatMap(posted -> taken(contract, posted).stream())
                .toList();
    }

    private static List<String> taken(Contract contract, Posted posted) {
        Schema schema = contract.judge(Contract.schema(posted.request()));
        List<String> found = new ArrayList<>();
        Spoiling.of(contract, Contract.schema(posted.request()), posted.everyField(CONTRACT))
                .forEach((what, body) -> {
                    int status = posted.asked(body).answer().status();
                    if (status != 422) {
                        found.add(what + ": answered with " + status);
                    } else if (schema.validate(Contract.json(body)).isEmpty()) {
                        found.add(what + ": answered with 422, and no breach of the contract");
                    }
                });
        return found;
    }

    private static List<String> fields(Contract contract) {
        return Arrays.stream(Posted.values())
                .flatMap(posted -> fields(contract, posted).stream())
                .distinct()
                .toList();
    }

    /** Into each object a field is put that nobody knows: the service answers with those it knows. */
    private static List<String> fields(Contract contract, Posted posted) {
        Map<String, JsonNode> objects = new TreeMap<>();
        objects(contract, "", Contract.schema(posted.request()), posted.everyField(CONTRACT), objects);
        SampleRequest request = SampleRequest.of(posted.everyField(CONTRACT));
        objects.keySet().forEach(place -> request.with(place + "/nobody-knows", "1"));
        Map<String, String> known = new TreeMap<>();
        posted.asked(request.text())
                .answer()
                .json()
                .get("errors")
                .forEach(fault -> known.put(
                        fault.get("pointer").textValue().replace("/nobody-knows", ""),
                        fault.get("limit").textValue()));

        List<String> found = new ArrayList<>();
        objects.forEach((place, schema) -> found.addAll(Differences.between(
                place,
                Contract.named(schema.get("properties")).keySet(),
                List.of(known.get(place).replace(KNOWN, "").split(", ")))));
        return found;
    }

    private static void objects(
            Contract contract, String place, JsonNode said, JsonNode value, Map<String, JsonNode> found) {
        JsonNode schema = contract.resolved(said);
        if (value.isObject()) {
            found.put(place, schema);
            Contract.named(value)
                    .forEach((name, held) ->
                            objects(contract, place + "/" + name, schema.at("/properties/" + name), held, found));
        }
        for (int i = 0; value.isArray() && i < value.size(); i++) {
            objects(contract, place + "/" + i, schema.path("items"), value.get(i), found);
        }
    }
}
