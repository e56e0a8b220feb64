package org.borewright.order.journal;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One line of the journal.
 *
 * @param position its place, from 1, without gaps
 * @param at when, to the microsecond
 * @param by who
 * @param subject what it concerns, such as {@code order 12}
 * @param order its number, by which the line is found: the seal covers it by the subject; empty where it concerns none
 * @param did what was done
 * @param before what stood before, empty where nothing did
 * @param after what stands now
 * @param matter what it speaks of besides; empty where it concerns no order, and in lines written before it was sealed
 * @param seal {@link Digest} over the seal of the line before and all the rest of this line
 */
public record Entry(
        long position,
        Instant at,
        String by,
        String subject,
        Optional<Long> order,
        String did,
        String before,
        String after,
        Optional<Matter> matter,
        String seal) {

    /** What a seal covers. */
    public enum Covers {
        /** What the line says. */
        WORDS("words"),
        /** And the rows that it speaks of. */
        WORDS_AND_ROWS("words and rows");

        private final String label;

        Covers(String label) {
            this.label = label;
        }

        /** The words as shown. */
        public String label() {
            return label;
        }
    }

    private static final String OF_ORDER = "order ";

    /** What the first line is sealed against. */
    public static final String NO_SEAL = "0".repeat(64);

    /** The line that follows one sealed so; a store keeps no finer time than microseconds. */
    public static Entry after(long last, String seal, Instant now, Deed deed) {
        Entry open = new Entry(
                last + 1,
                now.truncatedTo(ChronoUnit.MICROS),
                deed.by(),
                deed.subject(),
                deed.order(),
                deed.did(),
                deed.before(),
                deed.after(),
                deed.matter(),
                "");
        return new Entry(
                open.position,
                open.at,
                open.by,
                open.subject,
                open.order,
                open.did,
                open.before,
                open.after,
                open.matter,
                open.sealedAfter(seal));
    }

    /** Whether this is, unchanged, the line that followed one with that position and seal. */
    public boolean follows(long last, String lastSeal) {
        return position == last + 1 && isFoundByItsSubject() && seal.equals(sealedAfter(lastSeal));
    }

    private boolean isFoundByItsSubject() {
        return order.map(number -> subject.equals(OF_ORDER + number)).orElse(!subject.startsWith(OF_ORDER));
    }

    /** What its seal covers. */
    public Covers covers() {
        return matter.isPresent() ? Covers.WORDS_AND_ROWS : Covers.WORDS;
    }

    /** Where there is no matter the seal is that of the first form, which sealed the words alone. */
    private String sealedAfter(String lastSeal) {
        Digest line = new Digest().whole(position).time(at);
        Stream.of(lastSeal, by, subject, did, before, after).forEach(line::text);
        matter.ifPresent(of -> line.whole(of.version()).text(of.written()).text(of.standing()));
        return line.hex();
    }
}
