package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Map;

/** What is sent in a body: where to, what schemas question and answer have, and which example of the contract uses every field. */
enum Posted {
    MATCH("/api/match", "matches.yaml", "MatchRequest", "MatchAnswer", "Surveyed"),
    ESTIMATE("/api/estimate", "estimates.yaml", "EstimateRequest", "EstimateAnswer", "StampedInInches"),
    BENCH("/api/bench", "benches.yaml", "BenchRequest", "BenchAnswer", "PistonsInInches"),
    FINISH("/api/finish", "finishes.yaml", "FinishRequest", "FinishAnswer", "HonedInInches"),
    ORDER("/api/orders", "orders.yaml", "OrderRequest", "Order", "Opening"),
    QUOTE("/api/orders/{order}/quotes", "quotes.yaml", "QuoteRequest", "Quote", "OwnPistons"),
    YES("/api/orders/{order}/accept", "yeses.yaml", "AcceptRequest", "Order", "Yes"),
    NO("/api/orders/{order}/decline", "reasons.yaml", "ReasonRequest", "Order", "Reason"),
    NOTES("/api/orders/{order}/notes", "notes.yaml", "NotesRequest", "Order", "Noting"),
    ARRIVAL("/api/stock/{number}/arrivals", "arrivals.yaml", "ArrivalRequest", "Arrival", "Arriving"),
    HOOK("/api/hooks", "hooks.yaml", "HookRequest", "Hook", "Hooking");

    /** As it lies there. */
    static final Contract CONTRACT = Contract.read();

    private static final Path FOLDER = Path.of("src", "test", "resources", "api", "contract");

    private final String path;
    private final String file;
    private final String request;
    private final String answer;
    private final String everyField;

    Posted(String path, String file, String request, String answer, String everyField) {
        this.path = path;
        this.file = file;
        this.request = request;
        this.answer = answer;
        this.everyField = everyField;
    }

    /** The one that a path takes. */
    static Posted to(String path) {
        for (Posted posted : values()) {
            if (posted.path.equals(path)) {
                return posted;
            }
        }
        throw new IllegalArgumentException(path);
    }

    /** Many of them, by what they are about. */
    Map<String, JsonNode> requests() {
        return Contract.named(Contract.yaml(FOLDER.resolve(file)));
    }

    /** With everything that its path needs besides. */
    Asked asked(String body) {
        return CONTRACT.operations().stream()
                .filter(operation ->
                        operation.path().equals(path) && operation.method().equals("post"))
                .findFirst()
                .map(Provoked::right)
                .orElseThrow()
                .saying(body);
    }

    /** The name of the schema of the question. */
    String request() {
        return request;
    }

    /** The name of the schema of the answer. */
    String answer() {
        return answer;
    }

    /** The example that uses every field. */
    JsonNode everyField(Contract contract) {
        return contract.at("/components/examples/" + everyField + "/value");
    }
}
