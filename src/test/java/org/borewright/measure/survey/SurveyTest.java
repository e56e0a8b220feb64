package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class SurveyTest {

    private static final Length SHIFT = Length.ofMicrometres(10);

    static Stream<Arguments> surveys() {
        return Stream.of(
                Arguments.of(new NotMeasured(), List.of()),
                Arguments.of(new SingleDiameter(mm("70.110")), List.of("70.110")),
                Arguments.of(Grids.grid("70.110 - / 70.020 70.050"), List.of("70.110", "70.020", "70.050")));
    }

    @ParameterizedTest
    @MethodSource("surveys")
    void aSurveySaysWhatWasReadAndNothingMore(Survey survey, List<String> readings) {
        List<Length> read = readings.stream().map(SurveyTest::mm).toList();
        assertThat(survey.readings()).containsExactlyInAnyOrderElementsOf(read);
        assertThat(survey.diameters().isPresent()).isEqualTo(!read.isEmpty());
        assertThat(survey.largest()).isEqualTo(read.stream().max(Length::compareTo));
        assertThat(survey.smallest()).isEqualTo(read.stream().min(Length::compareTo));
    }

    @ParameterizedTest
    @MethodSource("surveys")
    void aChangeReachesEveryReading(Survey survey, List<String> readings) {
        Survey changed = survey.map(SHIFT::plus);
        assertThat(changed).hasSameClassAs(survey);
        assertThat(changed.readings())
                .containsExactlyInAnyOrderElementsOf(readings.stream()
                        .map(reading -> mm(reading).plus(SHIFT))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("surveys")
    void withoutDepthsTheLargestOfAllStandsForEveryDepth(Survey survey, List<String> readings) {
        Optional<Length> expected = survey instanceof Grid ? Optional.of(mm("70.110")) : survey.largest();
        assertThat(survey.largestNear(mm("15"))).isEqualTo(expected);
    }

    @Property
    boolean theOrderOfTheReadingsDoesNotMatter(
            @ForAll @Size(4) List<@LongRange(min = 70_000_000, max = 70_200_000) Long> readings) {
        Survey one = twoByTwo(readings.get(0), readings.get(1), readings.get(2), readings.get(3));
        Survey other = twoByTwo(readings.get(3), readings.get(2), readings.get(1), readings.get(0));
        return one.largest().equals(other.largest()) && one.smallest().equals(other.smallest());
    }

    private static Survey twoByTwo(long a, long b, long c, long d) {
        return new Grid(
                Grids.depths(2),
                List.of(Axis.THRUST, Axis.PIN),
                List.of(List.of(cell(a), cell(b)), List.of(cell(c), cell(d))));
    }

    private static Optional<Length> cell(long nanometres) {
        return Optional.of(Length.ofNanometres(nanometres));
    }

    private static Length mm(String millimetres) {
        return Length.parseMillimetres(millimetres);
    }
}
