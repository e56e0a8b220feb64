package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.borewright.catalog.store.Shelves;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Real answers are as the schemas of the contract say: matches of every kind, and every look-up that the demo catalogue allows. */
@QuarkusTest
class ContractAnswersTest {

    private static final Contract CONTRACT = Contract.read();

    /** Each real answer is asked for once; what it is answered does not change while the tests run. */
    private static final Map<Sample, JsonNode> ANSWERS = new LinkedHashMap<>();

    /**
     * With a kit there is always something that can be had, a gasket kit if nothing else, and with a size there is work: no demo engine
     * shows a kit or a size to cut to without a price. Nor does
     * any leave no room above its pistons. The shop of the tests has a name, and asks a deposit.
     */
    private static final List<String> NOT_SHOWN_ABSENT = List.of(
            "Bill.total is not required, and all have it",
            "KitInShort.price is not required, and all have it",
            "SizeTogether.total is not required, and all have it",
            "Ratios.lowest is not required, and all have it",
            "Ratios.highest is not required, and all have it",
            "QuotedOffer.shop is not required, and all have it",
            "QuotedSum.deposit is not required, and all have it");

    /** The journal holds, nobody waits here until a message was tried in vain, and what arrives here no order waits for. */
    private static final List<String> NEVER_MET = List.of(
            "GivenToOrder.order is named, and nothing has it",
            "GivenToOrder.quantity is named, and nothing has it",
            "Hook.lastFailure is named, and nothing has it",
            "Verification.broken is named, and nothing has it");

    @Inject
    Shelves shelves;

    @Test
    void everyAnswerIsAsItsSchemaSays() {
        assertThat(faults(CONTRACT, answers())).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everyRequestIsAsItsSchemaSays(Posted posted) {
        Schema schema = CONTRACT.judge(Contract.schema(posted.request()));

        assertThat(posted.requests())
                .allSatisfy(
                        (name, request) -> assertThat(schema.validate(request)).isEmpty());
    }

    @Test
    void everyMemberThatMayBeThereIsThereInSomeBody() {
        assertThat(members(CONTRACT).neverMet()).containsExactlyInAnyOrderElementsOf(NEVER_MET);
    }

    @Test
    void everyMemberThatMayBeAbsentIsAbsentInSomeAnswer() {
        Members members = new Members(CONTRACT);
        answers().forEach((sample, answer) -> members.note(Contract.schema(sample.schema()), answer));

        assertThat(members.neverAbsent()).containsExactlyInAnyOrderElementsOf(NOT_SHOWN_ABSENT);
    }

    @Test
    void everyWordThatNoEnumOfTheCodeListsIsMetInSomeAnswer() {
        Members members = members(CONTRACT);

        assertThat(ContractWordsTest.KNOWN_FROM_ANSWERS)
                .allSatisfy(schema -> assertThat(CONTRACT.schemas().get(schema).get("enum"))
                        .allSatisfy(word -> assertThat(members.isMet(schema, word.textValue()))
                                .as("%s: %s", schema, word)
                                .isTrue()));
    }

    /** The schemas are exact, so that whatever is changed in one of them is found by an answer. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/components/schemas/Hole/properties/wear | nothing | 'wear'",
                "/components/schemas/Figures/properties/conformance | nothing | 'conformance'",
                "/components/schemas/BillLine/properties/packed | nothing | 'packed'",
                "/components/schemas/Length/properties/nm/type | \"string\" | string",
                "/components/schemas/SignedLength/properties/nm/minimum | 0 | minimum value of 0",
                "/components/schemas/Verdict/enum | [\"serves\", \"wait\"] | does not have a value in the enumeration",
                "/components/schemas/SizeRow/required | [\"size\", \"finish\"] | 'finish'",
                "/components/schemas/Availability/pattern | \"^sold$\" | does not match",
                "/components/schemas/MatchAnswer/properties/date/format | \"time\" | time",
                "/components/schemas/Torque/properties/N·m | nothing | 'N·m'",
            })
    void aSchemaThatSaysOtherwiseIsFound(String place, String planted, String words) {
        assertThat(faults(CONTRACT.with(place, planted), answers()).anyMatch(fault -> fault.contains(words)))
                .isTrue();
    }

    @Test
    void aMemberThatNoBodyHasIsFound() {
        assertThat(members(CONTRACT.with("/components/schemas/Hole/properties/colour", "{\"type\": \"string\"}"))
                        .neverMet())
                .contains("Hole.colour is named, and nothing has it");
    }

    @Test
    void aMemberThatEveryAnswerHasAndNoneNeedHaveIsFound() {
        assertThat(members(CONTRACT.with("/components/schemas/RingGap/required", "[\"gap\"]"))
                        .neverAbsent())
                .contains("RingGap.groove is not required, and all have it");
    }

    /** All that real requests and answers, and the refusals and judgements of the contract, show of a contract. */
    private Members members(Contract contract) {
        Members members = new Members(contract);
        answers().forEach((sample, answer) -> members.note(Contract.schema(sample.schema()), answer));
        for (Posted posted : Posted.values()) {
            posted.requests().values().forEach(request -> members.note(Contract.schema(posted.request()), request));
        }
        contract.document().at("/components/examples").forEach(example -> {
            if (example.at("/value/detail").isTextual()) {
                members.note(Contract.schema("Problem"), example.get("value"));
            } else if (example.at("/value/judgement").isObject()) {
                members.note(Contract.schema("Order"), example.get("value"));
            }
        });
        return members;
    }

    private Map<Sample, JsonNode> answers() {
        if (ANSWERS.isEmpty()) {
            Sample.of(shelves.catalogue()).forEach(sample -> {
                Answer answer = sample.asked().answer();
                assertThat(answer.status()).as(sample.name()).isBetween(200, 201);
                ANSWERS.put(sample, answer.json());
            });
        }
        return ANSWERS;
    }

    private static Stream<String> faults(Contract contract, Map<Sample, JsonNode> answers) {
        Map<String, Schema> schemas = new HashMap<>();
        return answers.entrySet().stream().flatMap(answer -> {
            Sample sample = answer.getKey();
            return schemas
                    .computeIfAbsent(sample.schema(), name -> contract.judge(Contract.schema(name)))
                    .validate(answer.getValue())
                    .stream()
                    .map(error -> sample.name() + ": " + error);
        });
    }
}
