package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the contract says and what is so, and where the two differ, in words. */
final class Differences {

    private final List<String> found = new ArrayList<>();

    private Differences() {}

    /** The names on one side alone. */
    static List<String> between(String what, Collection<String> contract, Collection<String> real) {
        Differences differences = new Differences();
        differences.names(what, contract, real);
        return differences.found;
    }

    /** The places where two bodies differ, to the last decimal. */
    static List<String> between(JsonNode contract, JsonNode real) {
        Differences differences = new Differences();
        differences.values("", contract, real);
        return differences.found;
    }

    private void names(String what, Collection<String> contract, Collection<String> real) {
        less(contract, real).forEach(name -> found.add("%s: %s is in the contract alone".formatted(what, name)));
        less(real, contract).forEach(name -> found.add("%s: %s is in the service alone".formatted(what, name)));
    }

    private static Set<String> less(Collection<String> all, Collection<String> others) {
        Set<String> left = new LinkedHashSet<>(all);
        left.removeAll(others);
        return left;
    }

    private void values(String place, JsonNode contract, JsonNode real) {
        if (contract.isObject() && real.isObject()) {
            members(place, Contract.named(contract), Contract.named(real));
        } else if (contract.isArray() && real.isArray() && contract.size() == real.size()) {
            for (int i = 0; i < contract.size(); i++) {
                values(place + "/" + i, contract.get(i), real.get(i));
            }
        } else if (!contract.toString().equals(real.toString())) {
            found.add("%s: the contract says %s, the service says %s".formatted(place, contract, real));
        }
    }

    private void members(String place, Map<String, JsonNode> contract, Map<String, JsonNode> real) {
        names(place, contract.keySet(), real.keySet());
        contract.forEach((name, value) -> {
            if (real.containsKey(name)) {
                values(place + "/" + name, value, real.get(name));
            }
        });
    }
}
