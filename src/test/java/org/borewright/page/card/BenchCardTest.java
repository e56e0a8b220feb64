package org.borewright.page.card;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.borewright.api.order.print.PdfText;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the machinist reads on the card is what the bench confirmed, on the page and on paper alike, and nothing before. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BenchCardTest {

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();
    private static final Pattern CODE = Pattern.compile("viewBox=\"0 0 ([0-9]+) [^>]*>.*?<path d=\"([^\"]+)\"");
    private static final int A_TELEPHONES_DOTS_PER_INCH = 150;

    private static int tags;

    private final String tag = "BC-" + ++tags;

    /** Enough for every test, however many those before it took. */
    @BeforeEach
    void theShelfIsFull() {
        List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
    }

    @Test
    void nothingButThePlannedSizeStandsOnItBeforeThePistonsAreConfirmed() {
        Orders order = Orders.opened("rebuild", tag);
        assertThat(page(order)).contains("Not surveyed yet").doesNotContain("Planned size");
        order.does("survey", Orders.SINGLE_WORN).statusCode(200);
        assertThat(page(order)).contains("Surveyed, and not quoted yet").doesNotContain("Planned size");
        order.does("quotes", "{}").statusCode(201);
        assertThat(page(order)).contains("Quoted, and not accepted yet", "Planned size +0.50");
        order.does("accept", "{\"quote\":1}").statusCode(200);

        assertThat(page(order))
                .contains("Not confirmed yet: measure the pistons", "Planned size +0.50", tag, "Tessaly Rowing Club")
                .doesNotContain("Bore ", "Hone ", "N·m", "Operations");
        assertThat(PdfText.of(paper(order, "")).whole())
                .contains("Not confirmed yet: measure the pistons", "Planned size +0.50", tag)
                .doesNotContain("Bore ", "Hone ", "N·m", "Operations");

        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("did-not-clean-up", Orders.SINGLE_WORN.replace("53.720", "53.900"))
                .statusCode(200);
        assertThat(page(order)).contains("Surveyed, and not quoted yet").doesNotContain("Bore ", "+0.50");
        order.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        assertThat(page(order)).contains("This order has ended").doesNotContain("Planned size");
    }

    @Test
    void theFiguresAreThoseThatWereConfirmedOnThePageAndOnPaper() {
        Orders order = confirmed();
        JsonNode told = confirmedPaper(order);
        List<String> owed = owed(told);
        assertThat(owed).hasSizeGreaterThan(35);

        assertThat(page(order)).contains(owed).doesNotContain("Planned size");
        assertThat(seen(order, "card").asString())
                .as("what is to mind has an order")
                .containsPattern("To mind, in order</h2>\\s*<ol><li>"
                        + Pattern.quote(told.at("/steps/0").asText()));
        PdfText paper = PdfText.of(paper(order, ""));
        assertThat(paper.whole()).contains(owed);
        assertThat(paper.outside()).isEmpty();
        assertThat(paper.fonts()).isNotEmpty().allMatch(font -> font.endsWith(", embedded"));
    }

    /** All that a machinist goes by. */
    private static List<String> owed(JsonNode told) {
        List<String> owed = new ArrayList<>();
        JsonNode hole = told.at("/holes/0");
        owed.add("Piston, measured " + text(hole, "tag") + " " + text(hole, "piston") + ", "
                + value(hole.at("/pistonDiameter/least")));
        owed.add("Bore " + step(hole.get("boreTo"), RoundingMode.HALF_EVEN) + " ");
        owed.add("Hone " + step(hole.get("honeTo"), RoundingMode.HALF_EVEN) + " "
                + between(hole.get("window"), RoundingMode.UP, RoundingMode.DOWN));
        hole.get("ringGaps")
                .forEach(gap -> owed.add("Ring gap, " + text(gap, "groove") + " – "
                        + between(gap.get("gap"), RoundingMode.DOWN, RoundingMode.UP)));
        told.get("operations").forEach(line -> owed.add(text(line, "name") + " " + line.get("quantity")));
        told.get("steps").forEach(step -> owed.add(step.asText()));
        told.get("torques").forEach(fastener -> {
            owed.add(text(fastener, "fastener") + ": " + fastener.get("count") + ", " + text(fastener, "thread"));
            fastener.get("stages").forEach(stage -> {
                JsonNode torque = stage.get("torque");
                owed.add(torque.get("N·m").asText() + " " + torque.get("lbf·ft").asText() + " "
                        + torque.get("kgf·m").asText());
            });
        });
        told.get("cautions").forEach(caution -> owed.add(caution.asText()));
        return owed;
    }

    private static String between(JsonNode limits, RoundingMode least, RoundingMode greatest) {
        return step(limits.get("least"), least) + " to " + step(limits.get("greatest"), greatest);
    }

    /** To the step of a gauge. */
    private static String step(JsonNode length, RoundingMode rounded) {
        return new BigDecimal(value(length)).setScale(3, rounded).toPlainString();
    }

    private static String value(JsonNode length) {
        return text(length, "value");
    }

    private static String text(JsonNode of, String name) {
        return of.get(name).asText();
    }

    @Test
    void whenThePistonsAreConfirmedAnewTheCardIsAnother() {
        Orders order = confirmed();
        order.does("confirm", Orders.PISTON_IN_HAND.replace("\"A\"", "\"B\"").replace("54.093", "54.094"))
                .statusCode(200);

        assertThat(page(order)).contains("Piston, measured B ", "Hone 54.149 ").doesNotContain("measured A ");
    }

    /** Whoever finds the card at the machine after the holes were signed is not sent back to cut them. */
    @Test
    void onceTheHolesAreSignedNothingOnItAsksForACut() {
        Orders order = confirmed();
        String cut = "bore and hone each hole to its own figures";
        assertThat(page(order)).contains(cut);
        List<String> owed = owed(confirmedPaper(order));

        order.does("finish", Orders.HONED).statusCode(200);
        assertThat(page(order))
                .contains("The holes are finished and signed: nothing more is cut.")
                .contains(owed)
                .doesNotContain(cut);
        assertThat(words(seen(order, "hone")))
                .contains("The holes are finished and signed: nothing more is cut.")
                .doesNotContain("Ready:");
        order.does("release", "").statusCode(200);
        assertThat(page(order)).contains("It has left, finished and signed: nothing more is cut.");
        assertThat(PdfText.of(paper(order, "")).whole())
                .contains("It has left, finished and signed: nothing more is cut.")
                .contains(owed)
                .doesNotContain(cut);
    }

    /** Two sets of rings are made for the piston: the gaps of the one that was sold stand on card and hone sheet, and no other. */
    @Test
    void theGapsAreThoseOfTheRingsThatWereSold() {
        Orders order = Orders.confirmedOfTwoRingSets("BC-RINGS");

        assertThat(page(order)).contains("rings KV-BS34-R020F.").containsOnlyOnce("Ring gap, top");
        assertThat(seen(order, "hone").asString())
                .contains("top <span class=\"code\">KV-BS34-R020F</span>")
                .doesNotContain("KV-BS34-R020<");
        assertThat(given().accept("text/html")
                        .get("/orders/" + order.number() + "/hone")
                        .asString())
                .contains("KV-BS34-R020F")
                .doesNotContain("KV-BS34-R020<");
        assertThat(given().accept("text/html")
                        .get("/orders/" + order.number() + "/finish")
                        .asString())
                .contains("<option value=\"KV-BS34-R020F\" selected>");
    }

    /**
     * Rings are made short for it: 0.2032 mm of gap are the least of their grooves, which rounded up are 0.204; what is filed to no more than
     * 0.7112 - π · (0.02032 of choke + 0.010 of taper + 0.010 out of round + U) is proven no wider than 0.7112 in a hole that passes.
     */
    @Test
    void ringsThatAreToBeFiledStandWithTheLeastGap() {
        Orders order = Orders.confirmedOfTwoRingSets("BC-FILED");
        String filed = "Ring gap, top 0.204 file to 0.204 to 0.569; as made 0.";

        assertThat(page(order)).contains(filed);
        assertThat(PdfText.of(paper(order, "")).whole()).contains(filed);
        assertThat(words(seen(order, "hone")))
                .contains(
                        "Ring gap, top KV-BS34-R020F: file to 0.204 to 0.569 0.",
                        "top KV-BS34-R020F file to 0.2032 to 0.56");
    }

    /** The choke of 0.0127 mm is told by its ends, and no rounding makes it another. */
    @Test
    void bothEndsOfABarrelWithChokeStandToADecimalMore() {
        Orders order = Orders.confirmedOfTwoRingSets("BC-CHOKE");
        JsonNode hole = confirmedPaper(order).at("/holes/0");
        String top = "Hone, top " + finer(hole.get("honeTopTo"));
        String bottom = "Hone, bottom " + finer(hole.get("honeBottomTo"));

        assertThat(page(order)).contains(top, bottom);
        assertThat(PdfText.of(paper(order, "")).whole()).contains(top, bottom);
        assertThat(words(seen(order, "hone")))
                .contains(
                        "at the top " + finer(hole.get("honeTopTo")),
                        "at the bottom " + finer(hole.get("honeBottomTo")));
    }

    private static String finer(JsonNode length) {
        return new BigDecimal(value(length)).setScale(4, RoundingMode.HALF_EVEN).toPlainString();
    }

    @Test
    void whatIsNotedStandsOnItLineByLine() {
        Orders order = Orders.opened("rebuild", tag);
        assertThat(page(order)).doesNotContain("Notes");
        order.does("notes", "{\"notes\":\"Smokes when warm.\\nWas run <dry>.\"}")
                .statusCode(200);

        assertThat(seen(order, "card").asString())
                .contains("<td class=\"lines\">Smokes when warm.\nWas run &lt;dry&gt;.</td>");
        assertThat(PdfText.of(paper(order, "")).whole()).contains("Smokes when warm.", "Was run <dry>.");
    }

    @Test
    void theCodeLeadsBackToTheOrderFromThePageAndFromPaper() throws IOException {
        Orders order = confirmed();
        String address = OwnShop.ADDRESS + "/orders/" + order.number();

        Matcher code = CODE.matcher(seen(order, "card").asString());
        assertThat(code.find()).isTrue();
        assertThat(CodeReader.read(CodeReader.drawn(code.group(2), Integer.parseInt(code.group(1)))))
                .isEqualTo(address);
        try (PDDocument document = Loader.loadPDF(paper(order, ""))) {
            assertThat(CodeReader.read(new PDFRenderer(document).renderImageWithDPI(0, A_TELEPHONES_DOTS_PER_INCH)))
                    .isEqualTo(address);
        }
        assertThat(page(order)).contains(address);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            nullValues = "-",
            value = {"-, 595, 842", "A4, 595, 842", "letter, 612, 792"})
    void thePaperIsA4OrLetterAndTheSameFileEachTime(String paper, int width, int height) throws IOException {
        Orders order = confirmed();
        String asked = paper == null ? "" : "?paper=" + paper;
        byte[] file = paper(order, asked);
        try (PDDocument document = Loader.loadPDF(file)) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(width, within(1f));
            assertThat(document.getPage(0).getMediaBox().getHeight()).isCloseTo(height, within(1f));
        }
        assertThat(PdfText.of(file).outside()).isEmpty();
        assertThat(paper(order, asked)).isEqualTo(file);
    }

    @Test
    void newRingsOnThePistonsThatAreInItHaveACardToo() {
        List.of("KV-DS1-R000", "KV-DS1-C", "DLS1-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
        String smokes = """
                {"engine":"DRUMLACH-S1","unit":"mm","condition":"worn","temperature":20,"deckFlatness":0.01,"skimmedBefore":0,
                 "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[{"cylinder":"1",
                 "grid":{"depths":[20,75,130],"axes":["thrust","pin"],"readings":[[88.262,88.250],[88.251,88.242],[88.238,88.233]]},
                 "presentPiston":{"number":"KV-DS1-000","diameter":88.112},"grooves":"good","ridge":"off","glaze":"broken"}]}""";
        Orders order = Orders.opened("DRUMLACH-S1", "rebuild", tag);
        order.does("survey", smokes).statusCode(200);
        order.does("quotes", "{\"way\":\"rings only\"}").statusCode(201);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        assertThat(page(order)).contains("Planned size new rings on the pistons that are in it");
        order.does("confirm", smokes).statusCode(200);

        List<String> owed = new ArrayList<>(List.of("Hole 1: new rings on the piston that is in it", "KV-DS1-R000"));
        JsonNode told = confirmedPaper(order);
        told.at("/ringsOnly/cylinders/0/checks").forEach(check -> owed.add(text(check, "check")));
        told.at("/ringsOnly/operations/lines")
                .forEach(line -> owed.add(text(line, "name") + " " + line.get("quantity")));
        told.get("cautions").forEach(caution -> owed.add(caution.asText()));
        assertThat(owed).hasSizeGreaterThan(15);
        assertThat(page(order))
                .contains(owed)
                .contains("nothing is bored, and nothing is honed to size")
                .doesNotContain("Bore ", "Hone ", "bore and hone");
        assertThat(PdfText.of(paper(order, "")).whole()).contains(owed);
    }

    @Test
    void partsAloneHaveNoWorkOnTheBench() {
        Orders order = Orders.opened("parts alone", null);
        assertThat(page(order)).contains("nothing of it is done on the bench").doesNotContain("Planned size");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "/orders/999999/card, 404",
        "/orders/x/card, 404",
        "/orders/999999/card.pdf, 404",
        "/orders/1/card.pdf?paper=A5, 400",
        "/orders/1/card?paper=A4, 400",
    })
    void whatIsNoCardIsRefused(String path, int status) {
        assertThat(given().header("Accept", "*/*").get(path).statusCode()).isEqualTo(status);
    }

    private Orders confirmed() {
        Orders order = Orders.quoted(tag);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        return order;
    }

    private static JsonNode confirmedPaper(Orders order) {
        String papers = "/api/orders/" + order.number() + "/papers";
        List<Integer> bench = given().get(papers).jsonPath().getList("findAll { it.kind == 'bench' }.id");
        try {
            return JSON.readTree(given().get(papers + "/" + bench.get(bench.size() - 1))
                            .asByteArray())
                    .get("answer");
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** The words of the page, with one blank for every gap. */
    private static String page(Orders order) {
        return words(seen(order, "card"));
    }

    private static String words(Response page) {
        return page.asString()
                .replaceAll("(?s)<head>.*</head>", "")
                .replaceAll("<[^>]*>", " ")
                .replace("&#39;", "'")
                .replaceAll("\\s+", " ")
                .replaceAll(" ([,:;])", "$1");
    }

    private static byte[] paper(Orders order, String asked) {
        return seen(order, "card.pdf" + asked).asByteArray();
    }

    private static Response seen(Orders order, String what) {
        Response answer = given().header("Accept", "text/html,*/*;q=0.8").get("/orders/" + order.number() + "/" + what);
        assertThat(answer.statusCode()).as(what).isEqualTo(200);
        return answer;
    }
}
