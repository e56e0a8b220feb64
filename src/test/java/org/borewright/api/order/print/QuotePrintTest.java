package org.borewright.api.order.print;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.borewright.api.match.request.SampleRequest;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.QuoteRow;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a customer reads on paper is what was frozen, in any letters, and always the same file. */
@QuarkusTest
class QuotePrintTest {

    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private static final String SURVEY = """
            {"engine": "OSTRAVEL-4", "unit": "mm", "condition": "worn", "temperature": 20,
             "presentSize": {"size": "standard", "knownFrom": "record"},
             "cylinders": [{"cylinder": "1", "diameter": 77.295}, {"cylinder": "2", "diameter": 77.370},
                           {"cylinder": "3", "diameter": 77.350}, {"cylinder": "4", "diameter": 77.310}]}""";

    private static String quoted;

    @Inject
    QuotePrint print;

    @BeforeEach
    void quote() {
        if (quoted == null) {
            String order = made("/api/orders", null, """
                    {"customer": "Tessaly Rowing Club", "engine": "OSTRAVEL-4", "block": "QP-1"}""");
            sent(order + "/survey", 1, SURVEY).then().statusCode(200);
            quoted = made(order + "/quotes", 2, "{\"alternatives\": true}");
        }
    }

    @Test
    void thePaperSaysAllThatTheQuoteSays() {
        JsonNode quote = json();
        JsonNode offer = quote.get("offer");
        String text = PdfText.of(paper()).whole();

        assertThat(text)
                .contains("Tessaly Rowing Club", "QP-1", "OSTRAVEL-4", "rebore, pistons +0.50")
                .contains(
                        "Order " + quote.get("order"),
                        "Quote " + quote.get("quote") + " of order " + quote.get("order"))
                .contains(
                        "Date " + offer.get("date").asText(),
                        "Valid until " + offer.get("validUntil").asText())
                .contains("Ready " + offer.get("ready").asText());
        offer.get("parts").forEach(line -> {
            assertThat(text).contains(line.get("number").asText(), figures(line));
            line.get("covers")
                    .forEach(part -> assertThat(text)
                            .contains(part.get("quantity") + " × "
                                    + part.get("part").asText() + " "
                                    + part.get("number").asText() + " for " + names(part.get("cylinders"))));
        });
        offer.get("work").forEach(line -> {
            String beside = " " + line.get("per").asText() + " " + figures(line);
            assertThat(text).contains(beside);
            // A long name goes on below its figures.
            assertThat(text.replace(beside, "")).contains(line.get("name").asText());
        });
        assertThat(offer.get("alternatives"))
                .isNotEmpty()
                .allSatisfy(other -> assertThat(text)
                        .contains(
                                other.get("way").asText() + ", pistons "
                                        + other.get("size").asText(),
                                money(other.get("total"))));
        assertThat(offer.get("conditions"))
                .isNotEmpty()
                .allSatisfy(said -> assertThat(text).contains(said.asText()));
        assertThat(offer.get("cautions"))
                .isNotEmpty()
                .allSatisfy(said -> assertThat(text).contains(said.asText()));
    }

    @Test
    void theSumOnPaperIsTheSumOfTheQuote() {
        JsonNode sum = json().at("/offer/sum");

        assertThat(PdfText.of(paper()).whole())
                .contains("Parts " + money(sum.get("parts")) + " Work " + money(sum.get("work")) + " Net "
                        + money(sum.get("net")) + " Tax, "
                        + sum.get("taxPercent").asText() + " % "
                        + money(sum.get("tax")) + " Total " + money(sum.get("total"))
                        + " Deposit, due with your yes " + money(sum.get("deposit")));
    }

    /** No price of the catalogue, no engine of it: nothing but the document is asked. */
    @Test
    void whatIsPrintedIsWhatWasFrozen() {
        String text = text(offer().with("/shop", "\"Weir and Daughter\"")
                .with("/engine", "\"LONG-GONE-9\"")
                .with("/parts/0/number", "\"NEVER-1\"")
                .with("/parts/0/price/amount", "1234567.89")
                .with("/sum/taxPercent", "7.5")
                .with("/sum/deposit", "{\"amount\": 98765.43, \"currency\": \"EUR\"}"));

        assertThat(text)
                .contains("Weir and Daughter", "LONG-GONE-9", "NEVER-1", "1234567.89", "Tax, 7.5 %")
                .contains("Deposit, due with your yes 98765.43 EUR");
    }

    @Test
    void whatWasNotAskedForIsNotThere() {
        assertThat(text(offer())).contains("Other ways", "This quote is conditional");
        assertThat(text(offer().with("/alternatives", "nothing")
                        .with("/conditional", "false")
                        .with("/conditions", "[]")
                        .with("/size", "nothing")
                        .with("/shop", "nothing")
                        .with("/sum/deposit", "nothing")
                        .with("/work", "[]")))
                .contains("rebore", "Parts")
                .doesNotContain("Deposit", "Millrace", "Other ways", "conditional", "pistons +0.50", "Operation");
    }

    @Test
    void theSameQuoteIsTheSameFileWheneverItIsAskedFor() {
        assertThat(paper()).isEqualTo(paper());
        assertThat(print.pdf(order("A", "B-1"), row(2, offer())))
                .isNotEqualTo(print.pdf(order("A", "B-1"), row(3, offer())));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Łucja Żółkiewska-Jaźń",
                "Příšerně žluťoučký kůň úpěl ďábelské ódy",
                "Αθηνά Παπαδοπούλου ΐ ώ",
                "Пётр Щукин, Їжакевич",
                "Gülşah Iğdır, Ágúst Þórðarson, œuvre",
            })
    void lettersOfManyTonguesAreReadable(String customer) {
        assertThat(PdfText.of(print.pdf(order(customer, "B-1"), row(1, offer())))
                        .whole())
                .contains("For " + customer.substring(0, customer.indexOf(' ')))
                .contains(customer.substring(customer.lastIndexOf(' ') + 1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert('x')</script>",
                "</td></tr></table>&amp;&lt;&#0;&nope;]]>",
                "{order} {#if block} {|raw|} {!no!} {inject:print}",
                "<img src=\"file:///etc/passwd\"/>",
                "a\u0001b\u001fc\ufffed",
                "\ud800 alone",
                "\ud83d\ude00 日本 ١٢",
            })
    void whatLooksLikeMarkupIsNoMarkup(String hostile) {
        String text = PdfText.of(print.pdf(
                        order(hostile, "B-1"),
                        row(
                                1,
                                offer().with(
                                                "/conditions/0",
                                                TextNode.valueOf(hostile).toString()))))
                .whole();

        assertThat(text).contains("OSTRAVEL-4", "Total");
        if (hostile.chars().allMatch(sign -> sign >= ' ' && sign <= '~')) {
            assertThat(text.replace(" ", "")).contains(hostile.replace(" ", ""));
        }
    }

    @Test
    void whatIsTooLongForALineIsBrokenAndStaysOnThePage() {
        String word = "W".repeat(200);

        PdfText paper = PdfText.of(print.pdf(
                order(word, "B-1"),
                row(
                        1,
                        offer().with("/shop", '"' + word + '"')
                                .with("/conditions/0", '"' + word + '"')
                                .with("/parts/0/number", '"' + word + '"')
                                .with("/parts/0/covers/0/number", '"' + word + '"')
                                .with("/cautions/0", '"' + word + '"'))));

        assertThat(paper.outside()).isEmpty();
        assertThat(paper.whole().chars().filter(letter -> letter == 'W').count())
                .isGreaterThanOrEqualTo(6 * 200);
    }

    @Test
    void longQuotesHaveNumberedPagesEachWithItsHead() {
        SampleRequest offer = offer();
        String line = offerNode().at("/parts/0").toString();
        offer.with(
                "/parts",
                "["
                        + String.join(
                                ",", IntStream.range(0, 80).mapToObj(i -> line).toList()) + "]");

        PdfText paper = PdfText.of(print.pdf(order("A", "B-1"), row(1, offer)));

        int pages = paper.pages().size();
        assertThat(pages).isGreaterThan(4);
        for (int page = 1; page <= pages; page++) {
            assertThat(paper.pages().get(page - 1)).contains("Page " + page + " of " + pages);
        }
        assertThat(paper.pages().subList(0, 4))
                .allSatisfy(page -> assertThat(page).contains("Each, EUR"));
    }

    @Test
    void itsLettersTravelWithIt() {
        assertThat(PdfText.of(paper()).fonts()).isNotEmpty().containsOnly("LiberationSans, embedded");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "*/* | 200 | application/json",
                "application/json | 200 | application/json",
                "application/json, application/pdf | 200 | application/json",
                "application/pdf;q=0.5, application/json | 200 | application/json",
                "application/json;q=0.5, application/pdf | 200 | application/pdf",
                "application/pdf, */*;q=0.1 | 200 | application/pdf",
                "text/html, application/pdf;q=0.9, */*;q=0.8 | 200 | application/pdf",
                "application/pdf | 200 | application/pdf",
                "text/html | 406 | application/problem+json",
            })
    void jsonIsAnsweredWherePaperIsNotAskedFor(String accept, int status, String type) {
        Response answer = given().header("Accept", accept).get(quoted);

        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.contentType()).startsWith(type);
    }

    @Test
    void whatIsRefusedIsAProblemOnPaperToo() {
        Response answer = given().accept("application/pdf").get(quoted + "00");

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.contentType()).startsWith("application/problem+json");
    }

    private static byte[] paper() {
        Response answer = given().accept("application/pdf").get(quoted);
        assertThat(answer.header("Content-Disposition")).matches("inline; filename=\"quote-[0-9]+-1\\.pdf\"");
        assertThat(answer.header("Vary")).isEqualTo("Accept");
        return answer.asByteArray();
    }

    private static JsonNode json() {
        try {
            return JSON.readTree(given().get(quoted).asByteArray());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static JsonNode offerNode() {
        return json().get("offer");
    }

    /** The frozen document, to be changed in one place. */
    private static SampleRequest offer() {
        return SampleRequest.of(offerNode());
    }

    private String text(SampleRequest offer) {
        return PdfText.of(print.pdf(order("Tessaly Rowing Club", "B-1"), row(1, offer)))
                .whole();
    }

    private static OrderRow order(String customer, String block) {
        OrderRow order = new OrderRow();
        order.number = 7L;
        order.customer = customer;
        order.block = block;
        return order;
    }

    private static QuoteRow row(long id, SampleRequest offer) {
        QuoteRow quote = new QuoteRow();
        quote.id = id;
        quote.number = 1;
        quote.at = Instant.parse("2026-03-02T08:00:00Z");
        quote.document = offer.text();
        return quote;
    }

    private static String figures(JsonNode line) {
        return line.get("quantity") + " " + line.at("/price/amount") + " " + line.at("/total/amount");
    }

    private static String money(JsonNode money) {
        return money.get("amount") + " " + money.get("currency").asText();
    }

    private static String names(JsonNode cylinders) {
        return String.join(
                ", ",
                StreamSupport.stream(cylinders.spliterator(), false)
                        .map(JsonNode::asText)
                        .toList());
    }

    private static String made(String path, Integer version, String body) {
        Response answer = sent(path, version, body);
        answer.then().statusCode(201);
        return answer.header("Location").replaceAll("^https?://[^/]*", "");
    }

    private static Response sent(String path, Integer version, String body) {
        var request = given().contentType("application/json")
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .queryParam("by", "Ada");
        if (version != null) {
            request.header("If-Match", "\"" + version + "\"");
        }
        return request.body(body).post(path);
    }
}
