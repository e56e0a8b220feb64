package org.borewright.page.bench.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.borewright.page.Form;
import org.borewright.page.bench.paper.Answer;
import org.junit.jupiter.api.Test;

class QueriedTest {

    private static final List<String> CYLINDERS = List.of("1", "2");

    @Test
    void whatIsAskedStandsAtThePlaceOfTheReading() {
        Form form = Sheet.blank(CYLINDERS).with(Sheet.depth(0, 0), "10").with(Sheet.depth(0, 1), "40.5");
        Answer answer = Answer.of("""
                {"holds":[{"cylinders":["2"],"queries":[
                 {"says":"far from every reading beside it","readings":[{"depth":{"value":40.500},"axis":"pin","diameter":{"value":77.3}}],"sameAs":[]},
                 {"says":"the same grid as another cylinder","readings":[],"sameAs":["1"]}]},
                 {"cylinders":["1"],"checks":[]}]}""");

        assertThat(Queried.in(answer, new Sheet(CYLINDERS, form)))
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        Sheet.cell(1, 1, 1),
                        "far from every reading beside it",
                        "truth:/cylinders/1/readingsChecked",
                        "far from every reading beside it; the same grid as another cylinder: 1"));
    }

    @Test
    void nothingIsAskedWhereNothingHolds() {
        assertThat(Queried.in(Answer.of("{\"holds\":[]}"), new Sheet(CYLINDERS, Sheet.blank(CYLINDERS))))
                .isEmpty();
    }
}
