package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.borewright.api.contract.Pointers;

/** An order as somebody at the desk moves it over HTTP, with the version it was at when last seen. */
public final class Orders {

    public static final String SINGLE_WORN = """
            {"engine":"HALVERN-131","unit":"mm","condition":"worn","temperature":20,"gauge":{"name":"BG-1"},
             "deckFlatness":0.01,"skimmedBefore":0,
             "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[{"cylinder":"1","diameter":53.720}]}""";

    public static final String PISTON_IN_HAND = """
            {"engine":"HALVERN-131","unit":"mm","size":"+0.50","temperature":20,"pistonTemperature":20,"gauge":{"name":"BG-1"},
             "pistons":[{"tag":"A","number":"NH-H131-050","diameter":54.093,"mass":148.9}],
             "cylinders":[{"cylinder":"1","diameter":53.720}]}""";

    public static final String HONED = """
            {"engine":"HALVERN-131","unit":"mm","size":"+0.50","roomTemperature":true,"temperature":20,"pistonTemperature":20,
             "gauge":{"name":"BG-1"},"pistons":[{"tag":"A","number":"NH-H131-050","diameter":54.093,"mass":148.9}],
             "cylinders":[{"cylinder":"1","tag":"A","grid":{"depths":[10,32,55],"axes":["thrust","pin"],
              "readings":[[54.150,54.149],[54.151,54.150],[54.152,54.150]]}}]}""";

    private static final String PISTON_OF_TWO_RING_SETS = """
            {"engine":"BRIMSLEIGH-S34","unit":"mm","size":"+0.020 in","temperature":20,"pistonTemperature":20,"gauge":{"name":"BG-1"},
             "deckFlatness":0.01,"pistons":[{"tag":"A","number":"KV-BS34-020A","diameter":83.972,"mass":414}],""";

    /** To be formatted with the ring set that runs on the piston. */
    public static final String HONED_OF_TWO_RING_SETS = PISTON_OF_TWO_RING_SETS + """
             "roomTemperature":true,"ringSet":"%s","cylinders":[{"cylinder":"1","tag":"A","grid":{"depths":[15,50,85],
              "axes":["thrust","pin"],"readings":[[84.080,84.080],[84.089,84.088],[84.096,84.096]]}}]}""";

    private final long number;
    private int version;

    private Orders(long number) {
        this.number = number;
        this.version = 1;
    }

    /**
     * A single for parts alone, or with its block.
     *
     * @param block its tag, that begins with letters of the test class alone: many classes share one database
     */
    public static Orders opened(String kind, String block) {
        return opened("HALVERN-131", kind, block);
    }

    public static Orders opened(String engine, String kind, String block) {
        String tagged = block == null ? "" : ",\"block\":\"" + block + "\"";
        return noted(post("/api/orders", null, key(), """
                {"kind":"%s","customer":"Tessaly Rowing Club","engine":"%s"%s}""".formatted(kind, engine, tagged)));
    }

    /** An order that the shop has just answered. */
    static Orders noted(Response answer) {
        answer.then().statusCode(201);
        return new Orders(answer.jsonPath().getLong("number"));
    }

    /** A rebuild of a single, up to a quote. */
    public static Orders quoted(String block) {
        return quoted(opened("rebuild", block));
    }

    /** The same, whose barrel is told apart: its tag is that of the block with .1 behind it. */
    public static Orders quotedWithBarrel(String block) {
        return quoted(noted(post("/api/orders", null, key(), """
                {"customer":"Tessaly Rowing Club","engine":"HALVERN-131","block":"%s","barrels":[{"cylinder":"1","tag":"%s.1"}]}""".formatted(block, block))));
    }

    private static Orders quoted(Orders order) {
        order.does("survey", SINGLE_WORN).statusCode(200);
        order.does("quotes", "{}").statusCode(201);
        return order;
    }

    /** Sends requests from as many sides at once. */
    static List<Response> atOnce(List<Callable<Response>> requests) throws Exception {
        ExecutorService senders = Executors.newFixedThreadPool(requests.size());
        try {
            List<Response> answers = new ArrayList<>();
            for (Future<Response> sent : senders.invokeAll(requests)) {
                answers.add(sent.get());
            }
            return answers;
        } finally {
            senders.shutdown();
        }
    }

    /** A single whose pistons two ring sets are made for, sold with KV-BS34-R020F, up to the confirmed piston. */
    public static Orders confirmedOfTwoRingSets(String block) {
        // What is on the shelf is sold: where others have taken some of it, all can wait for the other set.
        arrive("KV-BS34-R020F", 2).statusCode(200);
        return confirmedOfRingsOnTheShelf(block);
    }

    /** The same, sold with KV-BS34-R020, which costs less. */
    public static Orders confirmedOfTheOtherRingSet(String block) {
        // Not one more of them: whoever comes next is sold the other set.
        while (left("KV-BS34-R020") == 0) {
            arrive("KV-BS34-R020", 1).statusCode(200);
        }
        return confirmedOfRingsOnTheShelf(block);
    }

    private static Orders confirmedOfRingsOnTheShelf(String block) {
        List.of("KV-BS34-020A", "KV-BS34-G", "KV-BS34-C")
                .forEach(part -> arrive(part, 2).statusCode(200));
        Orders order = opened("BRIMSLEIGH-S34", "rebuild", block);
        order.does("survey", """
                {"engine":"BRIMSLEIGH-S34","unit":"mm","condition":"worn","temperature":20,"gauge":{"name":"BG-1"},
                 "deckFlatness":0.01,"skimmedBefore":0,"presentSize":{"size":"+0.010 in","knownFrom":"record"},
                 "cylinders":[{"cylinder":"1","diameter":83.950}]}""").statusCode(200);
        order.does("quotes", "{\"size\":\"+0.020 in\"}").statusCode(201);
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();
        order.does("confirm", PISTON_OF_TWO_RING_SETS + "\"cylinders\":[{\"cylinder\":\"1\",\"diameter\":83.950}]}")
                .statusCode(200);
        return order;
    }

    public long number() {
        return number;
    }

    int version() {
        return version;
    }

    /** Makes a move with the version last seen; one that was made tells the next. */
    public ValidatableResponse does(String move, String body) {
        return does(move, body, key());
    }

    public ValidatableResponse does(String move, String body, String key) {
        String path = "/api/orders/" + number + "/" + move;
        Response answer = post(path, version, key, body);
        if (answer.statusCode() >= 400 && body.startsWith("{")) {
            assertThat(Pointers.astray(path, body, answer.asString())).isEmpty();
        }
        String tag = answer.header("ETag");
        version = tag == null ? version : Integer.parseInt(tag.replace("\"", ""));
        return answer.then();
    }

    /** One of each that it waits for arrives, again and again: older orders may wait for the same, and are served first. */
    void receivesAll() {
        for (List<String> toCome = toCome(); !toCome.isEmpty(); toCome = toCome()) {
            toCome.forEach(number -> arrive(number, 1).statusCode(200));
        }
        see();
    }

    private List<String> toCome() {
        return seen().extract().path("held.findAll { it.toCome > 0 }.number");
    }

    /** Looks at it again, for others changed it. */
    void see() {
        version = seen().extract().path("version");
    }

    /** How it stands. */
    ValidatableResponse seen() {
        return given().get("/api/orders/" + number).then().statusCode(200);
    }

    public static String key() {
        return UUID.randomUUID().toString();
    }

    public static Response post(String path, Integer version, String key, String body) {
        var request = given().contentType("application/json")
                .header("Idempotency-Key", key)
                .queryParam("by", "Ada");
        if (version != null) {
            request.header("If-Match", "\"" + version + "\"");
        }
        return request.body(body).post(path);
    }

    /** Lays parts on the shelf. */
    public static ValidatableResponse arrive(String part, int quantity) {
        return post("/api/stock/" + part + "/arrivals", null, key(), "{\"quantity\":" + quantity + "}")
                .then();
    }

    /** How many of a number can be had from the shelf at this moment. */
    public static int left(String part) {
        return given().get("/api/stock/" + part).then().extract().path("left");
    }
}
