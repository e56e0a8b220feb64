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
import org.jspecify.annotations.Nullable;

/**
 * SHA-256 (FIPS 180-4) over figures and texts, one after the other: figures as eight bytes each, texts as UTF-8 with their length in four
 * bytes before them, so that a character moved from one text to the next makes another digest.
 */
public final class Digest {

    private static final int NO_TEXT = -1;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);

    /** Of bytes as they are. */
    public static byte[] of(byte[]... parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                digest.update(part);
            }
            return digest.digest();
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** The same in hexadecimal. */
    public static String hex(byte[]... parts) {
        return HexFormat.of().formatHex(of(parts));
    }

    /** Goes on with a figure. */
    public Digest whole(long figure) {
        try {
            out.writeLong(figure);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return this;
    }

    /** Goes on with a time, in microseconds since 1970. */
    public Digest time(Instant at) {
        return whole(ChronoUnit.MICROS.between(Instant.EPOCH, at));
    }

    /** Goes on with a text; where there is none, with a length that no text has. */
    public Digest text(@Nullable String text) {
        try {
            if (text == null) {
                out.writeInt(NO_TEXT);
            } else {
                byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
                out.writeInt(utf8.length);
                out.write(utf8);
            }
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return this;
    }

    /** Goes on with whatever there may be, as text. */
    public Digest maybe(@Nullable Object value) {
        return text(value == null ? null : value.toString());
    }

    /** Of all so far, in hexadecimal. */
    public String hex() {
        return hex(bytes.toByteArray());
    }
}
