package org.borewright.page.block;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import java.util.List;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The life of a block on its page is the one that the API tells, hole by hole. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BlocksTest {

    private static int signs;

    @Test
    void eachVisitOfAHoleStandsInThePictureAndInTheTable() {
        List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
        Orders order = Orders.quoted("PB-1");
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("finish", Orders.HONED).statusCode(200);

        String page = seen("/blocks/PB-1").asString();
        var told = given().get("/api/blocks/PB-1").jsonPath();

        assertThat(told.getList("life")).hasSize(2);
        assertThat(words(page))
                .contains("Visit 1, surveyed: 53.720 to 53.720. Visit 2, finished: 54.149 to 54.152.")
                .contains("Hole 1: " + told.get("life[1].rebuildsLeft.byMetal") + " more sizes by the metal, "
                        + told.get("life[1].rebuildsLeft.byPistons") + " with pistons")
                .contains("; " + told.getString("life[1].metalLeft.onDiameter.value")
                        + " mm of metal left on the diameter, to " + told.getString("life[1].metalLeft.size"))
                .contains(" surveyed standard 53.720 53.720 ")
                .contains(" finished +0.50 54.149 54.152 ")
                .contains("by Ada, " + told.getString("life[1].says"));
        assertThat(page)
                .contains("<a href=\"/orders/" + order.number() + "\">" + order.number() + "</a>")
                .contains("<rect class=\"asfound\"", "<rect class=\"signed\"");
        assertThat(words(seen("/blocks/PB-1?unit=in").asString()))
                .contains("Visit 2, finished: " + inInches("smallest") + " to " + inInches("largest") + ".");
    }

    private static String inInches(String which) {
        String told = given().queryParam("unit", "in").get("/api/blocks/PB-1").asString();
        String visit = told.substring(told.indexOf("\"finished\""));
        return visit.replaceFirst("(?s).*?\"" + which + "\":\\{\"value\":([0-9.]+).*", "$1");
    }

    @Test
    void aBlockThatNobodyMeasuredYetSaysWhatBeginsItsLife() {
        Orders.opened("rebuild", "PB-2");
        assertThat(seen("/blocks/PB-2").asString())
                .contains("No hole of it was measured yet")
                .doesNotContain("<svg");
    }

    @Test
    void aTagIsFoundByHowItBeginsAndLeadsToItsBlockWhenItIsWhole() {
        Orders.opened("rebuild", "PB-3.1");
        Orders.opened("rebuild", "PB-3.2");

        for (String begins : List.of("PB-3", "pb-3.")) {
            assertThat(seen("/blocks?tag=" + begins).asString())
                    .contains("/blocks/PB-3.1", "/blocks/PB-3.2")
                    .doesNotContain("PB-2");
        }
        Response whole = given().redirects().follow(false).get("/blocks?tag=pb-3.1");
        assertThat(whole.statusCode()).isEqualTo(303);
        assertThat(whole.header("Location")).endsWith("/blocks/PB-3.1");
    }

    /** A sign that a database takes for any other is looked for as itself. */
    @ParameterizedTest
    @CsvSource({"%25", "PB_3", "PB-3!"})
    void noSignStandsForAnother(String tag) {
        Orders.opened("rebuild", "PB-4." + ++signs);
        assertThat(seen("/blocks?tag=" + tag).asString()).contains("No block bears a tag");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"/blocks/nobody, 404", "/blocks/%00, 404", "/blocks?tags=x, 400", "/blocks/PB-1?unit=ell, 400"})
    void whatIsNoBlockIsRefused(String path, int status) {
        assertThat(given().urlEncodingEnabled(false).get(path).statusCode()).isEqualTo(status);
    }

    /** A hole whose barrel is told apart is found from its block, from its order and by its own tag. */
    @Test
    void aBarrelHasItsOwnPageAndStandsOnThatOfItsBlockAndOrder() {
        Orders order = Orders.quotedWithBarrel("PB-5");

        String barrel = seen("/blocks/pb-5.1").asString();
        assertThat(words(barrel))
                .contains(" Barrel PB-5.1 ")
                .contains("Barrel PB-5.1: ")
                .contains("Visit 1, surveyed: 53.720 to 53.720.")
                .contains(" PB-5, cylinder 1 1 ");
        assertThat(barrel).contains("<a href=\"/blocks/PB-5\">PB-5</a>");
        String block = seen("/blocks/PB-5").asString();
        assertThat(words(block)).contains(" Block PB-5 ").contains("Hole 1, barrel PB-5.1: ");
        assertThat(block).contains("<a href=\"/blocks/PB-5.1\">PB-5.1</a>");
        String listed = words(seen("/blocks?tag=PB-5").asString());
        assertThat(listed).contains(" PB-5 block HALVERN-131 ").contains(" PB-5.1 barrel HALVERN-131 ");
        for (String page : List.of("", "/card")) {
            assertThat(words(seen("/orders/" + order.number() + page).asString()))
                    .contains(" Barrels 1: PB-5.1 ");
        }
    }

    private static Response seen(String path) {
        Response answer =
                given().urlEncodingEnabled(false).header("Accept", "text/html").get(path);
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer;
    }

    private static String words(String page) {
        return page.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").replaceAll(" ([,:;])", "$1");
    }
}
