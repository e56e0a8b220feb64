package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.borewright.measure.survey.Grids.grid;

import java.util.List;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Query.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QueriedGridTest {

    private static final List<Query> QUERIES = List.of(Query.sameGridAs(List.of("2")));

    @Test
    void nothingCanBeComputedFromIt() {
        QueriedGrid queried = new QueriedGrid(QUERIES);

        assertThat(queried.readings()).isEmpty();
        assertThat(queried.diameters()).isEmpty();
        assertThat(queried.largestNear(Length.ofMicrometres(10_000))).isEmpty();
        assertThat(queried.map(Length::doubled)).isEqualTo(queried);
    }

    @Test
    void withoutAQueryItIsRefused() {
        List<Query> none = List.of();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new QueriedGrid(none))
                .withMessage("nothing is queried");
    }

    @Test
    void aSurveyKeepsAllButItsGrid() {
        List<Finding> findings = List.of(new Finding(Finding.Kind.STAIN, Optional.empty(), Optional.empty()));
        CylinderSurvey survey = new CylinderSurvey("1", grid("70.010 70.020"), Wall.UNKNOWN, findings);

        assertThat(survey.queries()).isEmpty();
        assertThat(survey.queried(QUERIES).queries()).isEqualTo(QUERIES);
        assertThat(survey.queried(QUERIES))
                .isEqualTo(new CylinderSurvey("1", new QueriedGrid(QUERIES), Wall.UNKNOWN, findings, false));
    }

    @ParameterizedTest
    @CsvSource({
        "STRAY, far from every reading beside it",
        "OPPOSED, thrust and pin the other way round than in every other row",
        "SAME_GRID, the same grid as another cylinder"
    })
    void everyKindIsSaidInTheWordsOfTheTrade(Kind kind, String label) {
        assertThat(kind.label()).isEqualTo(label);
    }
}
