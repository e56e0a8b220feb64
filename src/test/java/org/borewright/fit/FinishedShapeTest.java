package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.HonedShape;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.BoreShape.Form;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.QueriedGrid;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Reading;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishedShapeTest {

    private static final HonedShape STRAIGHT = new HonedShape(Optional.empty(), CommonPractice.finishedShape());

    /** 0.010 mm each, common practice; a difference taken with a gauge of 0.001 mm steps is worth 0.000 817 mm. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            TAPER,    OUT-OF-ROUND, TAPER IS,  OUT-OF-ROUND IS
            0.009183, 0.009183,     IN,        IN
            0.009184, 0.009183,     TOO_CLOSE, IN
            0.009183, 0.009184,     IN,        TOO_CLOSE
            0.010000, 0.010000,     TOO_CLOSE, TOO_CLOSE
            0.010816, 0.010817,     TOO_CLOSE, OUT
            0.010817, 0.010816,     OUT,       TOO_CLOSE
            0,        0,            IN,        IN
            """)
    void aHonedHoleIsStraightAndRound(Length taper, Length outOfRound, Outcome taperIs, Outcome outOfRoundIs) {
        BoreShape shape = new BoreShape(taper, taper, outOfRound, Form.BELL_MOUTH);
        assertThat(FinishedShape.check(
                        shape,
                        Uncertainty.of(
                                mm("70"),
                                Gauge.Kind.BORE_GAUGE.usual(),
                                Climate.NOT_STATED,
                                new Expansion(11e-6, 1e-6)),
                        CommonPractice.finishedShape()))
                .extracting(Comparison::outcome)
                .containsExactly(taperIs, outOfRoundIs);
    }

    @ParameterizedTest
    @CsvSource({"0.010, 0.010, IN, IN", "0.010001, 0.010, OUT, IN", "0.010, 0.010001, IN, OUT"})
    void exactFiguresMayMeetTheLimit(Length taper, Length outOfRound, Outcome taperIs, Outcome outOfRoundIs) {
        var checks = FinishedShape.check(
                new BoreShape(taper, mm("0").minus(taper), outOfRound, Form.TAPERED_TO_BOTTOM),
                Uncertainty.NONE,
                CommonPractice.finishedShape());
        assertThat(checks).extracting(Comparison::outcome).containsExactly(taperIs, outOfRoundIs);
        assertThat(checks)
                .extracting(Comparison::rule)
                .containsExactly(Rule.FINISHED_TAPER, Rule.FINISHED_OUT_OF_ROUND);
    }

    /** An engine maker may want more than common practice, or be content with less. */
    @ParameterizedTest(name = "{0} allowed: taper {1} is {2}, out-of-round {3} is {4}")
    @CsvSource({
        "0.005, 0.005, IN, 0.006, OUT",
        "0.005, 0.006, OUT, 0.005, IN",
        "0.0127, 0.012, IN, 0.0127, IN",
        "0.0127, 0.013, OUT, 0.0127, IN",
    })
    void whatTheEngineMakerAllowsIsTheLimit(
            Length allowed, Length taper, Outcome taperIs, Length outOfRound, Outcome outOfRoundIs) {
        assertThat(FinishedShape.check(
                        new BoreShape(taper, taper, outOfRound, Form.BELL_MOUTH), Uncertainty.NONE, allowed))
                .extracting(Comparison::outcome)
                .containsExactly(taperIs, outOfRoundIs);
    }

    /** Of a stroke of 40 mm half must be read, at three depths and along two axes. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "70.000 70.000 / 70.001 70.000 / 70.002 70.000, IN IN",
        "70.000 70.000 / 70.001 70.000, UNKNOWN UNKNOWN",
        "70.000 / 70.001 / 70.002, UNKNOWN UNKNOWN",
    })
    void aShapeIsJudgedWhereEnoughWasRead(String rows, String outcomes) {
        assertThat(FinishedShape.check(Grids.grid(rows), Optional.of(Uncertainty.NONE), STRAIGHT, mm("40")))
                .extracting(check -> check.outcome().name())
                .containsExactly(outcomes.split(" "));
    }

    /** What to do differs: a queried place is read again, and of a single diameter more is read. */
    @Test
    void aShapeThatIsNotKnownSaysWhatToRead() {
        Reading odd = Grids.grid("70.310 70.000").reading(0, 0).orElseThrow();
        QueriedGrid queried = new QueriedGrid(List.of(Query.of(Query.Kind.STRAY, List.of(odd), List.of(odd))));

        assertThat(ways(queried)).containsOnly(QueriedGrid.READ_AGAIN);
        assertThat(ways(new SingleDiameter(mm("70.000")))).containsOnly(ShapeShown.TOO_LITTLE_READ);
    }

    private static List<String> ways(Survey survey) {
        return FinishedShape.check(survey, Optional.of(Uncertainty.NONE), STRAIGHT, mm("40")).stream()
                .map(check -> ((Unchecked) check).reason())
                .toList();
    }
}
