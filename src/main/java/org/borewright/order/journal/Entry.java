package org.borewright.order.journal;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.stream.Stream;

/**
 * One line of the journal.
 *
 * @param position its place, from 1, without gaps
 * @param at when, to the microsecond
 * @param by who
 * @param subject what it concerns, such as {@code order 12}
 * @param did what was done
 * @param before what stood before, empty where nothing did
 * @param after what stands now
 * @param seal SHA-256 (FIPS 180-4) over the seal of the line before and all the rest of this line, in hexadecimal
 */
public record Entry(
        long position, Instant at, String by, String subject, String did, String before, String after, String seal) {

    /** What the first line is sealed against. */
    public static final String NO_SEAL = "0".repeat(64);

    /** The line that follows one sealed so; a store keeps no finer time than microseconds. */
    public static Entry after(long last, String seal, Instant now, Deed deed) {
        Entry open = new Entry(
                last + 1,
                now.truncatedTo(ChronoUnit.MICROS),
                deed.by(),
                deed.subject(),
                deed.did(),
                deed.before(),
                deed.after(),
                "");
        return new Entry(
                open.position,
                open.at,
                open.by,
                open.subject,
                open.did,
                open.before,
                open.after,
                open.sealedAfter(seal));
    }

    /** Whether this is, unchanged, the line that followed one with that position and seal. */
    public boolean follows(long last, String lastSeal) {
        return position == last + 1 && seal.equals(sealedAfter(lastSeal));
    }

    private String sealedAfter(String lastSeal) {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(line);
        try {
            out.writeLong(position);
            out.writeLong(ChronoUnit.MICROS.between(Instant.EPOCH, at));
            // The length first: a character moved from one field to the next is another line.
            for (byte[] field : Stream.of(lastSeal, by, subject, did, before, after)
                    .map(text -> text.getBytes(StandardCharsets.UTF_8))
                    .toList()) {
                out.writeInt(field.length);
                out.write(field);
            }
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return HexFormat.of().formatHex(digest().digest(line.toByteArray()));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }
}
