package org.borewright.page.bench.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.restassured.path.json.JsonPath;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemType;
import org.borewright.page.Form;
import org.borewright.page.bench.paper.Recalled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {

    private static final List<String> TWO = List.of("left", "right");

    @Test
    void depthsAndAxesGoIntoTheGridOfEachHoleThatWasRead() {
        Sheet sheet = sheet(Map.of(
                Sheet.depth(0, 0), "10",
                Sheet.depth(0, 1), "40",
                Sheet.cell(1, 0, 0), "60.51",
                Sheet.cell(1, 0, 1), "60.50",
                Sheet.cell(1, 1, 0), "60.49",
                Sheet.cell(1, 1, 1), "-"));

        assertThat(body(sheet))
                .isEqualTo(
                        "{\"cylinders\":[{\"cylinder\":\"left\"},{\"cylinder\":\"right\",\"grid\":{\"axes\":[\"thrust\",\"pin\"],"
                                + "\"depths\":[10,40],\"readings\":[[60.51,60.50],[60.49,null]]}}]}");
    }

    @Test
    void aPlaceLeftEmptyIsNoPlaceThatCannotBeMeasured() {
        Sheet sheet = sheet(Map.of(Sheet.depth(0, 0), "10", Sheet.cell(0, 0, 0), "60.51"));

        assertThat(body(sheet)).contains("\"readings\":[[60.51,\"nothing\"]]");
    }

    @Test
    void aDepthThatWasForgottenIsAskedForInItsPlace() {
        Sheet sheet =
                sheet(Map.of(Sheet.depth(0, 0), "10", Sheet.cell(0, 1, 0), "60.51", Sheet.cell(0, 1, 1), "60.51"));

        assertThat(body(sheet)).contains("\"depths\":[10,null],\"readings\":[[\"nothing\",\"nothing\"],[60.51,60.51]]");
    }

    @Test
    void aRefusalIsSaidInWordsOfTheSheetAndOfADepthOnce() {
        Problem problem = new Problem(
                ProblemType.BAD_FIGURE,
                422,
                "Several.",
                List.of(
                        Fault.of(ProblemType.BAD_GRID, "/cylinders/1/grid/depths/0", "A depth is missing."),
                        Fault.of(ProblemType.BAD_GRID, "/cylinders/0/grid/depths/0", "A depth is missing."),
                        Fault.of(
                                ProblemType.BAD_FIGURE,
                                "/cylinders/1/grid/readings/0/1",
                                "\"nothing\" is not a number."),
                        Fault.of(ProblemType.BAD_FIGURE, "/cylinders/1/grid/readings/0/0", "\"x\" is not a number.")));

        assertThat(sheet(Map.of()).inWords(problem).faults())
                .extracting(Fault::pointer, Fault::reason)
                .containsExactly(
                        tuple("/cylinders/0/grid/depths/0", "A depth is missing."),
                        tuple("/cylinders/1/grid/readings/0/1", "Nothing is entered here."),
                        tuple("/cylinders/1/grid/readings/0/0", "\"x\" is not a number."));
    }

    @Test
    void whatToDoThisTimeIsStillSaidInWordsOfTheSheet() {
        Problem problem = Problem.of(ProblemType.BENCH_HOLDS, "A hole is open.", "Sleeve hole 2, and quote anew.");

        assertThat(sheet(Map.of()).inWords(problem)).isEqualTo(problem);
    }

    @ParameterizedTest(name = "{0}: {1} depths, {2} axes")
    @CsvSource({"deeper, 4, 2", "star, 3, 4", "cross, 3, 2"})
    void theSheetGrowsAndWhatIsEnteredStays(String shape, int depths, int axes) {
        Sheet grown =
                sheet(Map.of(Sheet.cell(0, 0, 0), "60.51")).reshaped(shape).orElseThrow();

        assertThat(grown.depths()).hasSize(depths);
        assertThat(grown.axes()).hasSize(axes);
        assertThat(grown.form().typed(Sheet.cell(0, 0, 0))).isEqualTo("60.51");
    }

    @Test
    void aSheetOfFourAxesGoesBackToTwoAndItsOtherReadingsAreNotSent() {
        Sheet star = sheet(Map.of(Sheet.depth(0, 0), "10", Sheet.cell(0, 0, 0), "1", Sheet.cell(0, 0, 1), "2"))
                .reshaped("star")
                .orElseThrow();
        Sheet typed = new Sheet(TWO, star.form().with(Sheet.cell(0, 0, 2), "3"));

        assertThat(body(typed)).contains("\"axes\":[\"thrust\",\"pin\",45,135]", "[[1,2,3,\"nothing\"]]");
        assertThat(body(typed.reshaped("cross").orElseThrow())).contains("\"axes\":[\"thrust\",\"pin\"]", "[[1,2]]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"send", "", "sign"})
    void whatIsNoShapeLeavesItAsItIs(String then) {
        assertThat(sheet(Map.of()).reshaped(then)).isEmpty();
    }

    @Test
    void noMoreThanTwentyDepthsAreAddedAndNoneIsEmptied() {
        Sheet sheet = sheet(Map.of());
        for (int i = 0; i < 30; i++) {
            sheet = sheet.reshaped("deeper").orElseThrow();
        }
        sheet = new Sheet(TWO, sheet.form().with(Sheet.depth(0, 19), "90"))
                .reshaped("deeper")
                .orElseThrow();

        assertThat(sheet.depths()).hasSize(20);
        assertThat(sheet.form().typed(Sheet.depth(0, 19))).isEqualTo("90");
    }

    @Test
    void thereIsAlwaysRoomForOneFindingMore() {
        Form form = Sheet.blank(TWO);
        for (int i = 0; i < 3; i++) {
            assertThat(new Sheet(TWO, form).holes().get(0).findings()).hasSize(i + 1);
            form = form.with("/cylinders/0/findings/" + i + "/kind", "scored");
        }
        assertThat(new Sheet(TWO, form).holes().get(0).findings()).hasSize(4);
    }

    /** A hole may be scored and cracked, and both are noted before anything is sent. */
    @Test
    void eachHoleHasRoomForOneFindingMoreAsOftenAsThatIsAskedFor() {
        Sheet sheet = sheet(Map.of("/cylinders/1/findings/0/kind", "scored"));
        for (int more = 1; more <= 2; more++) {
            sheet = sheet.reshaped("finding").orElseThrow();
            assertThat(sheet.holes().get(0).findings()).hasSize(1 + more);
            assertThat(sheet.holes().get(1).findings()).hasSize(2 + more);
        }
        assertThat(sheet.form().typed("/cylinders/1/findings/0/kind")).isEqualTo("scored");
        for (int more = 0; more < 30; more++) {
            sheet = sheet.reshaped("finding").orElseThrow();
        }
        assertThat(sheet.holes().get(0).findings()).hasSize(20);
    }

    @Test
    void aRowOfFindingsLeftEmptyIsNoFindingAndARefusalStandsInTheRowThatWasTyped() {
        Sheet sheet = sheet(Map.of(
                "/cylinders/0/findings/0/kind", "",
                "/cylinders/0/findings/1/kind", "scored",
                "number:/cylinders/0/findings/1/depth", "0.02",
                "/cylinders/0/findings/2/kind", "",
                "number:/cylinders/0/findings/3/height", "x"));

        assertThat(body(sheet))
                .contains("\"findings\":[{")
                .doesNotContain("null")
                .satisfies(sent -> assertThat(new JsonPath(sent).getList("cylinders[0].findings"))
                        .isEqualTo(List.of(Map.of("kind", "scored", "depth", 0.02f), Map.of("height", "x"))));
        Problem refused = new Problem(
                ProblemType.BAD_FIGURE,
                422,
                "Several.",
                List.of(Fault.of(ProblemType.BAD_FIGURE, "/cylinders/0/findings/1/height", "\"x\" is not a number.")));
        assertThat(sheet.inWords(refused).faults())
                .extracting(Fault::pointer)
                .containsExactly("/cylinders/0/findings/3/height");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"cylinders\":[{\"cylinder\":\"left\",\"diameter\":60.510},{\"cylinder\":\"right\"}]}",
                "{\"cylinders\":[{\"cylinder\":\"left\"},{\"cylinder\":\"right\",\"grid\":{\"axes\":[\"thrust\",45],\"depths\":[10],"
                        + "\"readings\":[[60.50,null]]}}]}",
            })
    void whatWasSentBeforeStandsOnTheSheetAndIsSentAgainTheSame(String body) {
        Form former = FormerSheet.of(TWO, Recalled.of(body)).orElseThrow();

        assertThat(body(new Sheet(TWO, former))).isEqualTo(body);
    }

    @Test
    void holesSentInAnotherOrderStandInThatOfTheMaker() {
        Form former = FormerSheet.of(
                        TWO,
                        Recalled.of(
                                "{\"cylinders\":[{\"cylinder\":\"right\",\"diameter\":2},{\"cylinder\":\"left\",\"diameter\":1}]}"))
                .orElseThrow();

        assertThat(former.typed("number:/cylinders/0/diameter")).isEqualTo("1");
        assertThat(former.typed("number:/cylinders/1/diameter")).isEqualTo("2");
    }

    @Test
    void holesReadAtDifferentDepthsDoNotStandOnOneSheet() {
        assertThat(FormerSheet.of(TWO, Recalled.of("""
                        {"cylinders":[{"cylinder":"left","grid":{"depths":[1],"axes":["pin"],"readings":[[5]]}},
                         {"cylinder":"right","grid":{"depths":[2],"axes":["pin"],"readings":[[5]]}}]}"""))).isEmpty();
    }

    private static Sheet sheet(Map<String, String> typed) {
        Form form = Sheet.blank(TWO);
        for (Map.Entry<String, String> field : typed.entrySet()) {
            form = form.with(field.getKey(), field.getValue());
        }
        return new Sheet(TWO, form);
    }

    private static String body(Sheet sheet) {
        return new String(sheet.asked().body(), StandardCharsets.UTF_8);
    }
}
