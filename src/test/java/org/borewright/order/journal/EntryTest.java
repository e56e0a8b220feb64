package org.borewright.order.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A journal of three lines, of which none can be changed, left out or put elsewhere unseen. */
class EntryTest {

    private static final Instant NINE = Instant.parse("2026-03-02T09:00:00.123456789Z");

    private static List<Entry> journal() {
        List<Entry> lines = new ArrayList<>();
        String seal = Entry.NO_SEAL;
        for (String did : List.of("receive", "survey", "quote")) {
            Entry next = Entry.after(lines.size(), seal, NINE, deed("Ada", did));
            lines.add(next);
            seal = next.seal();
        }
        return lines;
    }

    private static Deed deed(String by, String did) {
        return new Deed(by, "order 1", Optional.of(1L), did, "before", "after", false, matter(did));
    }

    /** The line of the survey speaks of rows, the others are of the first form. */
    private static Optional<Matter> matter(String did) {
        return did.equals("survey") ? Optional.of(new Matter(2, "rows", "order")) : Optional.empty();
    }

    private static Verification verify(List<Entry> lines) {
        Verification found = Verification.BEGUN;
        for (Entry line : lines) {
            found = found.with(line, "rows");
        }
        return found;
    }

    @Test
    void wholeItHolds() {
        List<Entry> lines = journal();

        assertThat(verify(lines).endingAt(3, lines.get(2).seal()))
                .isEqualTo(new Verification(3, lines.get(2).seal(), false));
    }

    @Test
    void nothingHoldsAsNothing() {
        assertThat(Verification.BEGUN.endingAt(0, Entry.NO_SEAL).broken()).isFalse();
    }

    /** A table keeps microseconds: what is finer must not be sealed, or no line would hold once it was read back. */
    @Test
    void aLineIsSealedWithTheTimeThatATableKeeps() {
        assertThat(journal().get(0).at()).isEqualTo(Instant.parse("2026-03-02T09:00:00.123456Z"));
    }

    @ParameterizedTest
    @CsvSource({
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 1 survey before after., 2 rows order",
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 1 survey before. after, 2 rows order",
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 1 surveyb efore after, 2 rows order",
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 2 survey before after, 2 rows order",
        "2, 2026-03-02T09:00:00.123456Z, Eve, order 1 survey before after, 2 rows order",
        "2, 2026-03-02T09:00:00.123457Z, Ada, order 1 survey before after, 2 rows order",
        "3, 2026-03-02T09:00:00.123456Z, Ada, order 1 survey before after, 2 rows order",
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 1 survey before after, 3 rows order",
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 1 survey before after, 2 row sorder",
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 1 survey before after, 2 rows order.",
        "2, 2026-03-02T09:00:00.123456Z, Ada, order 1 survey before after, ''",
    })
    void aLineChangedInOnePlaceIsFound(long position, Instant at, String by, String words, String matter) {
        List<Entry> lines = journal();
        String[] said = words.split(" ", -1);
        Entry changed = new Entry(
                position,
                at,
                by,
                said[0] + " " + said[1],
                Optional.of(1L),
                said[2],
                said[3],
                said[4],
                Optional.of(matter.split(" ", -1))
                        .filter(of -> of.length == 3)
                        .map(of -> new Matter(Integer.parseInt(of[0]), of[1], of[2])),
                lines.get(1).seal());
        lines.set(1, changed);

        assertThat(verify(lines)).isEqualTo(new Verification(1, lines.get(0).seal(), true));
    }

    /** The seal covers the words; the number that a line is found by has to be that of its subject, or none. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "order 1, 1, true",
                "order 1, 2, false",
                "order 1, -, false",
                "order 12, 1, false",
                "hook 1, -, true",
                "hook 1, 1, false",
                "stock order 1, -, true"
            })
    void aLineIsFoundByTheOrderOfItsSubject(String subject, Long order, boolean holds) {
        Entry line = Entry.after(
                0,
                Entry.NO_SEAL,
                NINE,
                new Deed("Ada", subject, Optional.ofNullable(order), "make", "", "made", false, Optional.empty()));

        assertThat(line.follows(0, Entry.NO_SEAL)).isEqualTo(holds);
    }

    @Test
    void aLineTellsWhatItsSealCovers() {
        assertThat(journal())
                .extracting(Entry::covers)
                .containsExactly(Entry.Covers.WORDS, Entry.Covers.WORDS_AND_ROWS, Entry.Covers.WORDS);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void aLineLeftOutIsFoundAtItsPlace(int left) {
        List<Entry> lines = journal();
        lines.remove(left);

        Verification found = verify(lines);

        assertThat(found.broken()).isTrue();
        assertThat(found.lines()).isEqualTo(left);
    }

    @Test
    void theLastLineLeftOutIsFoundAtTheHead() {
        List<Entry> lines = journal();
        Entry last = lines.remove(2);

        Verification found = verify(lines);

        assertThat(found.broken()).isFalse();
        assertThat(found.endingAt(last.position(), last.seal()))
                .isEqualTo(new Verification(2, lines.get(1).seal(), true));
    }

    /** The same number of lines with another last one, or the same last one at another place. */
    @ParameterizedTest
    @CsvSource({"2, 0", "3, 1"})
    void aHeadThatNamesAnotherLineBreaksTheEnd(int position, int sealed) {
        List<Entry> lines = journal();
        String seal = sealed == 0 ? lines.get(2).seal() : lines.get(1).seal();

        assertThat(verify(lines).endingAt(position, seal).broken()).isTrue();
    }

    @Test
    void twoLinesInTheOtherOrderAreFound() {
        List<Entry> lines = journal();
        lines.add(1, lines.remove(2));

        Verification found = verify(lines);

        assertThat(found.broken()).isTrue();
        assertThat(found.lines()).isEqualTo(1);
    }

    /** Rewritten from the second line on it holds in itself, and only a seal noted elsewhere tells: which is why it is told. */
    @Test
    void aJournalRewrittenAsAWholeIsToldByItsSealAlone() {
        List<Entry> lines = journal();
        Entry second = Entry.after(1, lines.get(0).seal(), NINE, deed("Eve", "survey"));
        Entry third = Entry.after(2, second.seal(), NINE, deed("Eve", "quote"));

        Verification found = verify(List.of(lines.get(0), second, third));

        assertThat(found.endingAt(3, third.seal()).broken()).isFalse();
        assertThat(found.seal()).isNotEqualTo(lines.get(2).seal());
    }

    /** Rows that were changed break the line they were written with, not the chain; a line of the first form speaks of none. */
    @ParameterizedTest
    @CsvSource({"rows, 3, false", "row, 1, true"})
    void rowsThatAreOtherThanWrittenBreakTheirLine(String found, long holds, boolean broken) {
        Verification verified = Verification.BEGUN;
        for (Entry line : journal()) {
            verified = verified.with(line, found);
        }

        assertThat(verified.lines()).isEqualTo(holds);
        assertThat(verified.broken()).isEqualTo(broken);
    }

    @Test
    void afterABrokenLineNothingMoreIsProven() {
        List<Entry> lines = journal();

        Verification found = Verification.BEGUN.with(lines.get(0), "rows").brokenOff();

        assertThat(found.with(lines.get(1), "rows"))
                .isEqualTo(new Verification(1, lines.get(0).seal(), true));
    }

    /**
     * SHA-256 (FIPS 180-4) of position and microseconds as eight bytes each, then every field as four bytes of its length and UTF-8, was
     * worked out by Python's hashlib: another hand that reads the rule gets the same seal.
     */
    @Test
    void theSealIsWhatTheRuleSays() {
        Entry first = Entry.after(
                0,
                Entry.NO_SEAL,
                Instant.parse("2026-03-02T09:00:00.000001Z"),
                new Deed("Zoë", "order 7", Optional.of(7L), "receive", "", "received", false, Optional.empty()));
        Entry ofRows = Entry.after(
                0,
                Entry.NO_SEAL,
                Instant.parse("2026-03-02T09:00:00.000001Z"),
                new Deed(
                        "Zoë",
                        "order 7",
                        Optional.of(7L),
                        "receive",
                        "",
                        "received",
                        false,
                        Optional.of(new Matter(1, "a".repeat(64), "b".repeat(64)))));

        assertThat("Zoë".getBytes(StandardCharsets.UTF_8)).hasSize(4);
        assertThat(first.seal()).isEqualTo("6a2fe4498b542848546ed607b7de2cda672bee204472d9e8cf18b6a3bdc481f4");
        assertThat(ofRows.seal()).isEqualTo("58619dacc5a5de88a6d4c7ee1d6b862ea01e3f9b74046d3990cf9cee93eb0c4c");
    }

    /** Likewise by hashlib: a figure, a text, no text, and an empty one. */
    @Test
    void noTextIsAnotherThanAnEmptyOne() {
        assertThat(new Digest().whole(-5).text("Zoë").text(null).text("").hex())
                .isEqualTo("ec3ad303e1c1943c9447fba27ac082c887c204c6412ee172a9aa443a9ffad01d");
        assertThat(new Digest().text(null).hex())
                .isNotEqualTo(new Digest().text("").hex());
    }
}
