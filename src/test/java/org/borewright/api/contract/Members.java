package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What real bodies show of the schemas that bear a name: which of their members and words occur, and which members are always there. */
final class Members {

    private final Contract contract;
    private final Map<String, Set<String>> met = new TreeMap<>();
    private final Map<String, Set<String>> always = new TreeMap<>();

    Members(Contract contract) {
        this.contract = contract;
    }

    /** Takes note of a body and all in it. */
    void note(JsonNode schema, JsonNode body) {
        note("", schema, body);
    }

    private void note(String name, JsonNode schema, JsonNode value) {
        if (schema.has("$ref")) {
            String pointer = schema.get("$ref").textValue().substring(1);
            note(pointer.substring(pointer.lastIndexOf('/') + 1), contract.at(pointer), value);
        } else if (value.isObject()) {
            Map<String, JsonNode> members = Contract.named(value);
            met.computeIfAbsent(name, any -> new HashSet<>()).addAll(members.keySet());
            always.computeIfAbsent(name, any -> new HashSet<>(members.keySet())).retainAll(members.keySet());
            members.forEach((member, held) -> note("", schema.at("/properties/" + member), held));
        } else if (value.isArray()) {
            value.forEach(item -> note("", schema.path("items"), item));
        } else if (schema.has("enum")) {
            met.computeIfAbsent(name, any -> new HashSet<>()).add(value.asText());
        }
    }

    /** Whether a word of a schema was met. */
    boolean isMet(String schema, String word) {
        return met.getOrDefault(schema, Set.of()).contains(word);
    }

    /** Members that the contract names and no body has. */
    List<String> neverMet() {
        List<String> never = new ArrayList<>();
        contract.schemas().forEach((name, schema) -> {
            Set<String> members =
                    new TreeSet<>(Contract.named(schema.path("properties")).keySet());
            members.removeAll(met.getOrDefault(name, Set.of()));
            members.forEach(member -> never.add("%s.%s is named, and nothing has it".formatted(name, member)));
        });
        return never;
    }

    /** Members that every body has and the contract does not require. */
    List<String> neverAbsent() {
        List<String> never = new ArrayList<>();
        contract.schemas().forEach((name, schema) -> {
            Set<String> members = new TreeSet<>(always.getOrDefault(name, Set.of()));
            schema.path("required").forEach(required -> members.remove(required.textValue()));
            members.forEach(member -> never.add("%s.%s is not required, and all have it".formatted(name, member)));
        });
        return never;
    }
}
