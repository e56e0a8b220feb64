package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.borewright.api.lookup.part.OfferAnswer;
import org.borewright.catalog.Money;
import org.borewright.catalog.Offer;
import org.borewright.catalog.PartNumber;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lists of words in the contract are those of the code, each word in its place. */
class ContractWordsTest {

    /** What no enum of the code lists is held to the answers it is met in. */
    static final Set<String> KNOWN_FROM_ANSWERS = Set.of("AmountUnit", "StoodOn", "Grade");

    private static final Contract CONTRACT = Contract.read();

    @Test
    void theWordsOfTheContractAreThoseOfTheCode() {
        assertThat(differences(CONTRACT)).isEmpty();
    }

    /** So that no list of words stands unseen in the midst of another schema: two axes apart, which a number may stand for as well. */
    @Test
    void everyListOfWordsBearsANameAndIsHeldToSomething() {
        Set<String> held = new HashSet<>(Words.ofCode().keySet());
        held.addAll(KNOWN_FROM_ANSWERS);

        assertThat(Differences.between("lists of words", listed(CONTRACT), held))
                .isEmpty();
        assertThat(CONTRACT.document().findValues("enum")).hasSize(held.size() + 1);
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Verdict | [\"serves\", \"hold\", \"no certain size\", \"no common size\"] | Verdict: refer to a specialist is in the service alone",
                "Work | [\"rebore\", \"hone\", \"as it is\"] | Work: hone is in the contract alone",
                "Strokes | [2, 3, 4] | Strokes: 3 is in the contract alone",
                "Sense | [\"at most\", \"at least\", \"exactly\"] | Sense: the contract lists them in another order",
            })
    void aWordOnOneSideAloneIsFound(String schema, String planted, String words) {
        assertThat(differences(CONTRACT.with("/components/schemas/" + schema + "/enum", planted)))
                .contains(words);
    }

    @Test
    void aListOfWordsThatNobodyHoldsIsFound() {
        Contract planted = CONTRACT.with("/components/schemas/Colour", "{\"enum\": [\"red\"]}");

        assertThat(Differences.between("lists of words", listed(planted), listed(CONTRACT)))
                .containsExactly("lists of words: Colour is in the contract alone");
    }

    @ParameterizedTest
    @CsvSource({"1, 12", "1,", "0, 12", "0,"})
    void availabilityIsToldAsTheContractSays(int onHand, Integer leadDays) {
        Offer offer = new Offer(
                new PartNumber("NH-1"),
                new Money(new BigDecimal("9.90"), Currency.getInstance("EUR")),
                onHand,
                leadDays == null ? OptionalInt.empty() : OptionalInt.of(leadDays));

        assertThat(isAvailability(OfferAnswer.of(offer).availability())).isTrue();
    }

    @Test
    void availabilityInOtherWordsIsFound() {
        assertThat(isAvailability("to be ordered")).isFalse();
    }

    private static boolean isAvailability(String words) {
        return CONTRACT.judge(Contract.schema("Availability"))
                .validate(TextNode.valueOf(words))
                .isEmpty();
    }

    private static List<String> differences(Contract contract) {
        List<String> found = new ArrayList<>();
        Words.ofCode().forEach((schema, ofCode) -> {
            List<String> listed = words(contract.schemas().get(schema));
            List<String> differences = Differences.between(schema, listed, ofCode);
            found.addAll(differences);
            if (differences.isEmpty() && !listed.equals(ofCode)) {
                found.add(schema + ": the contract lists them in another order");
            }
        });
        return found;
    }

    private static List<String> words(JsonNode schema) {
        List<String> words = new ArrayList<>();
        schema.get("enum").forEach(word -> words.add(word.asText()));
        return words;
    }

    private static List<String> listed(Contract contract) {
        return contract.schemas().entrySet().stream()
                .filter(schema -> schema.getValue().has("enum"))
                .map(schema -> schema.getKey())
                .toList();
    }
}
