package org.borewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Whoever fills in a form is told what to type, and nothing of quotes, headers and members. */
class InAFormTest {

    private static final Pattern OF_THE_WIRE = Pattern.compile(
            "JSON|[Hh]eader|ETag|If-Match|Idempotency|Retry-After|/api|\\bnull\\b|quotes|\\bmember|[a-z][A-Z]");

    /** What no form of a page can bring about: its form is fixed, and how it is sent is up to the browser. */
    private static final Set<ProblemType> OF_THE_WIRE_ALONE = EnumSet.of(
            ProblemType.MALFORMED_JSON,
            ProblemType.UNKNOWN_PATH,
            ProblemType.UNKNOWN_HOOK,
            ProblemType.WRONG_METHOD,
            ProblemType.NOT_ACCEPTABLE,
            ProblemType.WRONG_MEDIA_TYPE,
            // The quotes are those of an order.
            ProblemType.UNKNOWN_QUOTE);

    @ParameterizedTest
    @EnumSource(ProblemType.class)
    void everyWayOutOfAFormIsInItsWords(ProblemType type) {
        String said = InAForm.said(type.wayOut());
        if (!OF_THE_WIRE_ALONE.contains(type)) {
            assertThat(said).doesNotContainPattern(OF_THE_WIRE);
        }
    }

    /** A sentence of the API that is worded anew must not slip through as it was written for the wire. */
    @Test
    void whatIsSaidAnewIsStillSaidSomewhere() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            String sources = files.filter(file -> file.toString().endsWith(".java") && !file.endsWith("InAForm.java"))
                    .map(InAFormTest::read)
                    .collect(Collectors.joining());
            assertThat(InAForm.WORDS.keySet())
                    .allSatisfy(words -> assertThat(sources).contains(words.replace("\"", "\\\"")));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Send a plain decimal number without quotes, with a point before the decimals. | Type a plain number with a point before the decimals, such as 77.295.",
                "Send {\"quantity\": 2}. | Fill it in.",
                "Send {\"reason\": \"why\"}. | Fill it in.",
                "Measure a piston, or look at the crown again; then send the size as it is labelled: +0.25 or +0.50. | Measure a piston, or look at the crown again; then type the size as it is labelled: +0.25 or +0.50.",
                "file its ends until the gap there is within the limits told for its hole (fileTo), then say that it is done (ringsFiled) | file its ends until the gap there is within the limits told for its hole, then say that it is done",
                "Make one of the moves that are allowed. | Make one of the moves that are allowed.",
            })
    void aSentenceIsSaidInWordsOfAForm(String sentence, String said) {
        assertThat(InAForm.said(sentence)).isEqualTo(said);
        assertThat(InAForm.said(said)).isEqualTo(said);
    }

    /** The API tells the range beside the reason; a form has one sentence. What is not of a range says no more than it did. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "BAD_FIGURE   | The length is outside its range. | 0 to 5.000 mm | The length is outside its range: 0 to 5.000 mm.",
                "BAD_READING  | It is larger than any hole.      | up to 60 mm   | It is larger than any hole: up to 60 mm.",
                "BAD_FIGURE   | It must lie in 5 to 40 °C.       | 5 to 40 °C    | It must lie in 5 to 40 °C.",
                "BAD_FIGURE   | It is no figure.                 | -             | It is no figure.",
                "WRONG_FORM   | It is no list.                   | a list        | It is no list.",
            })
    void aFormNamesTheRangeOfAFigure(ProblemType type, String reason, String limit, String said) {
        Fault plain = Fault.of(type, "/deckSkim", reason);
        Fault fault = limit == null ? plain : plain.against(limit);

        assertThat(Entry.of(Form.empty(), new Problem(type, 422, "One.", List.of(fault)))
                        .faults())
                .extracting(Fault::reason)
                .containsExactly(said);
    }

    @Test
    void aRefusedFormSaysItOfEachFaultAndOfAllAndAnswersWithTheSameStatus() {
        Fault fault = Fault.of(ProblemType.BAD_DATE, "/date", "No such day.").against("a day");
        Problem both = new Problem(
                ProblemType.SEVERAL_FAULTS,
                422,
                "Two.",
                List.of(fault, Fault.of(ProblemType.MISSING_FIELD, "/engine", "None.")));

        Entry entry = Entry.of(Form.empty(), both);

        assertThat(entry.status()).isEqualTo(422);
        assertThat(entry.refused().orElseThrow().wayOut()).isEqualTo("Put all of them right and send the form again.");
        assertThat(entry.faults())
                .extracting(Fault::wayOut)
                .containsExactly("Type it as in 2026-12-01, or leave it empty for today.", "Fill it in.");
        assertThat(entry.faults().get(0))
                .isEqualTo(fault.wayOut("Type it as in 2026-12-01, or leave it empty for today."));
    }
}
