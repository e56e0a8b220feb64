package org.borewright.kit;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.choice.Block;
import org.borewright.kit.hole.ReadingLimit;
import org.borewright.kit.hole.WhenNew;
import org.borewright.kit.hole.Work;
import org.borewright.kit.ladder.Way;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.PresentSize;
import org.borewright.kit.table.Settling;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The words and sentences in which a match is asked and answered. */
class WordsOfTheKitTest {

    @ParameterizedTest(name = "{2}")
    @MethodSource
    <T> void aWordIsWrittenAsInTheTrade(List<T> values, Function<T, String> label, String inOrder) {
        assertThat(values.stream().map(label).collect(joining("; "))).isEqualTo(inOrder);
    }

    static Stream<Arguments> aWordIsWrittenAsInTheTrade() {
        return Stream.of(
                words(Condition.values(), Condition::label, "worn; finished"),
                words(
                        PresentSize.KnownFrom.values(),
                        PresentSize.KnownFrom::label,
                        "record; measured piston; crown stamp; hearsay"),
                words(AsFound.Grooves.values(), AsFound.Grooves::label, "good; worn"),
                words(AsFound.Ridge.values(), AsFound.Ridge::label, "off; there; none"),
                words(AsFound.Glaze.values(), AsFound.Glaze::label, "broken; not broken"),
                words(
                        Way.values(),
                        Way::label,
                        "rings only; hone only; new pistons, the wall as it is; rebore; sleeve"),
                words(Work.values(), Work::label, "rebore; hone only; as it is"),
                words(
                        Verdict.values(),
                        Verdict::label,
                        "serves; hold; no certain size; no common size; refer to a specialist"),
                words(
                        WhenNew.From.values(),
                        WhenNew.From::label,
                        "recorded finish of the last visit; unworn wall; smallest hole of the present size; smallest reading"),
                words(
                        ReadingLimit.Read.values(),
                        ReadingLimit.Read::label,
                        "largest diameter; largest diameter at the finding; probed wall"),
                words(
                        Settling.What.values(),
                        Settling.What::label,
                        "put right first, then measure again; measure the hole; read the queried places again; measure the depth of the finding; "
                                + "measure at what height the finding lies: it settles the size at one of these below the deck; "
                                + "probe the wall: it settles the size if it lies within this of the axis; "
                                + "probe the wall from the bar's own axis: it settles the size if it lies within this of it; "
                                + "measure the pistons and pair them: a measured piston takes the place of its tolerance; "
                                + "measure again with a gauge of a smaller uncertainty; probe the wall again with something of a smaller uncertainty"));
    }

    @ParameterizedTest
    @CsvSource({"CLEARANCE_TOO_CLOSE, clearance too close", "NOT_MEASURED, not measured", "NEVER_CUT, never cut"})
    void aHoldIsNamedInPlainWords(Hold.Reason reason, String words) {
        assertThat(reason.label()).isEqualTo(words);
    }

    private static <T> Arguments words(T[] values, Function<T, String> label, String inOrder) {
        return Arguments.of(List.of(values), label, inOrder);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    <T> void whatStandsInTheWayIsToldInSentencesOfItsOwn(List<T> values, Function<T, String> sentence) {
        assertThat(values.stream().map(sentence))
                .doesNotHaveDuplicates()
                .allMatch(told -> told.matches("[A-Z].+[a-z]\\."));
    }

    static Stream<Arguments> whatStandsInTheWayIsToldInSentencesOfItsOwn() {
        return Stream.of(
                sentences(Hold.Reason.values(), Hold.Reason::sentence),
                sentences(Hold.Reason.values(), Hold.Reason::wayOut),
                sentences(Caution.values(), Caution::text));
    }

    private static <T> Arguments sentences(T[] values, Function<T, String> sentence) {
        return Arguments.of(List.of(values), sentence);
    }

    @ParameterizedTest
    @EnumSource
    void aBlockIsToldAfterTheNameOfTheSize(Block.Reason reason) {
        assertThat(reason.sentence()).matches("[a-z][a-z ,;]+[a-z]");
    }
}
