package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An order that was walked to where an example begins, so that the example can be asked again. In the contract every order is number 12
 * with block B-17; here it has a number, a block and keys of its own. Afterwards it is ended, and the shelf is as it was before.
 */
final class Walked {

    /** The moves that lead somewhere; each is sent with the first example of its body. */
    private static final Map<String, List<String>> WAYS = new LinkedHashMap<>();

    static {
        WAYS.put("received", List.of());
        WAYS.put("surveyed", List.of("survey"));
        WAYS.put("quoted", List.of("survey", "quotes"));
        WAYS.put("accepted", List.of("survey", "quotes", "accept"));
        WAYS.put("confirmed", List.of("survey", "quotes", "accept", "confirm"));
        WAYS.put("finished", List.of("survey", "quotes", "accept", "confirm", "finish"));
        WAYS.put("withdrawn", List.of("withdraw"));
        // Worn further, to a size whose piston is not on the shelf.
        WAYS.put("short", List.of("survey further", "quotes"));
        WAYS.put("awaited", List.of("survey further", "quotes", "accept and wait"));
        WAYS.put("unmeasured", List.of("survey nothing"));
        WAYS.put("resurveyed", List.of("survey", "quotes", "survey", "quotes"));
        WAYS.put("quoted anew", List.of("survey", "quotes", "accept", "did-not-clean-up", "quotes"));
    }

    private static final Map<String, String> BODIES = Map.ofEntries(
            Map.entry("survey", body("Worn")),
            Map.entry("survey further", body("Worn").replaceAll("53\\.720?", "53.96")),
            Map.entry(
                    "survey nothing",
                    "{\"engine\": \"HALVERN-131\", \"unit\": \"mm\", \"condition\": \"worn\", \"cylinders\": [{\"cylinder\": \"1\"}]}"),
            Map.entry("quotes", "{}"),
            Map.entry("accept", body("Yes")),
            Map.entry("did-not-clean-up", body("Worn")),
            Map.entry("accept and wait", "{\"quote\": 1, \"mayWait\": true}"),
            Map.entry("confirm", body("PistonsOfOrder")),
            Map.entry("finish", body("Honed")),
            Map.entry("withdraw", body("Reason")),
            Map.entry("release", ""));

    private static final Pattern PAPER = Pattern.compile("/papers/([0-9]+)");

    private final String own = "-" + UUID.randomUUID().toString().substring(0, 8);
    private int version;
    private String number = "";
    private String hook = "";

    private Walked() {}

    /** Walks a new order there; to nobody leads none. */
    static Walked to(String where) {
        Walked walked = new Walked();
        if (where.equals("hooked")) {
            walked.step("/api/hooks", body("Hooking"));
        } else if (!where.equals("nobody")) {
            walked.step("/api/orders", opening(where));
            WAYS.get(where).forEach(walked::move);
        }
        return walked;
    }

    /** Where nothing was measured its barrel was not tagged either, so that such an order is seen too. */
    private static String opening(String where) {
        String opening = body("Opening");
        return where.equals("unmeasured") ? opening.replaceAll("\"barrels\":\\[.*?],", "") : opening;
    }

    /** The version of an order that was walked there. */
    static int version(String where) {
        return WAYS.containsKey(where) ? WAYS.get(where).size() + 1 : 0;
    }

    private static String body(String example) {
        return Posted.CONTRACT.at("/components/examples/" + example + "/value").toString();
    }

    /** The answer to a request of the contract, as if it had been asked of the order that stands there. */
    Answer answer(Asked asked) {
        Answer answer = own(asked).answer();
        noteMade(answer);
        Answer told = new Answer(answer.status(), answer.headers(), told(answer.body()));
        end();
        return told;
    }

    private void noteMade(Answer answer) {
        if (answer.status() == 201 && answer.headers().get("location").contains("/hooks/")) {
            hook = answer.json().get("id").asText();
        } else if (answer.status() == 201 && number.isEmpty()) {
            number = answer.json().get("number").asText();
        }
    }

    private Asked own(Asked asked) {
        String target = asked.target();
        if (!hook.isEmpty()) {
            target = target.replace("/hooks/1", "/hooks/" + hook);
        }
        if (!number.isEmpty()) {
            target = target.replace("/orders/12", "/orders/" + number).replace("order=12", "order=" + number);
            Matcher paper = PAPER.matcher(target);
            List<String> papers = paper.find() ? papers() : List.of();
            int place = papers.isEmpty() || paper.group(1).length() > 3 ? 0 : Integer.parseInt(paper.group(1));
            if (place > 0 && place <= papers.size()) {
                target = paper.replaceFirst("/papers/" + papers.get(place - 1));
            }
        }
        Map<String, String> headers = new LinkedHashMap<>(asked.headers());
        headers.computeIfPresent("Idempotency-Key", (name, key) -> key + own);
        return new Asked(
                asked.method(),
                target.replace("B-17", "B-17" + own),
                headers,
                asked.body().replace("B-17", "B-17" + own),
                "");
    }

    /** The same in the words of the contract. */
    private String told(String text) {
        String told = text.replace(own, "");
        if (!hook.isEmpty()) {
            return told.replaceAll("\"id\":" + hook + "\\b", "\"id\":1").replace("/hooks/" + hook, "/hooks/1");
        }
        if (number.isEmpty()) {
            return told;
        }
        told = told.replaceAll("\\b([Oo]rder |orders/)" + number + "\\b", "$112")
                .replaceAll("\"(number|order|openOrder)\":" + number + "\\b", "\"$1\":12");
        List<String> papers = papers();
        for (int i = 0; i < papers.size(); i++) {
            told = told.replaceAll("\"(id|survey|paper)\":" + papers.get(i) + "\\b", "\"$1\":paper" + (i + 1));
        }
        return told.replace(":paper", ":");
    }

    private List<String> papers() {
        List<String> papers = new ArrayList<>();
        seen("/papers").forEach(paper -> papers.add(paper.get("id").asText()));
        return papers;
    }

    private JsonNode seen(String of) {
        return Asked.get("/api/orders/" + number + of).answer().json();
    }

    private void move(String move) {
        step("/api/orders/" + number + "/" + move.split(" ", 2)[0], BODIES.get(move));
    }

    private void step(String path, String body) {
        Map<String, String> headers = new LinkedHashMap<>(Map.of("Host", "shop", "Idempotency-Key", key(path)));
        headers.put("If-Match", "\"" + version + "\"");
        if (!body.isEmpty()) {
            headers.put("Content-Type", "application/json");
        }
        Answer answer = new Asked("POST", path + "?by=Ada", headers, body.replace("B-17", "B-17" + own), "").answer();
        if (answer.status() >= 300) {
            throw new IllegalStateException(path + ": " + answer.body());
        }
        if (answer.headers().containsKey("etag")) {
            version = Integer.parseInt(answer.headers().get("etag").replace("\"", ""));
        }
        noteMade(answer);
    }

    /** That of the opening is known to the contract: what is sent with it again is refused. */
    private String key(String path) {
        return path.equals("/api/orders")
                ? "key-of-the-order" + own
                : UUID.randomUUID().toString();
    }

    private void end() {
        if (!hook.isEmpty()) {
            new Asked("DELETE", "/api/hooks/" + hook + "?by=Ada", Map.of("Host", "shop"), "", "").answer();
        }
        if (number.isEmpty()) {
            return;
        }
        JsonNode order = seen("");
        version = order.get("version").intValue();
        String next = order.get("next").toString();
        if (next.contains("withdraw")) {
            move("withdraw");
        } else if (next.contains("release")) {
            move("release");
        }
        if (seen("").get("state").asText().equals("released")) {
            seen("/quotes/1")
                    .at("/offer/parts")
                    .forEach(part -> step(
                            "/api/stock/" + part.get("number").asText() + "/arrivals",
                            "{\"quantity\":" + part.get("quantity") + "}"));
        }
    }
}
