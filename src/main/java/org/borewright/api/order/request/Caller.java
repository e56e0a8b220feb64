package org.borewright.api.order.request;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.UriInfo;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.borewright.api.guard.Parameters;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Legible;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.Errand;
import org.borewright.order.journal.Digest;
import org.jspecify.annotations.Nullable;

/**
 * Who asks for a change, under which key, and which version of the order they know.
 *
 * @param by their name: the parameter {@code by}
 * @param key their own name for this request: the header {@code Idempotency-Key}
 * @param fingerprint of path, parameters and body: a key stands for one of them
 * @param version of the order: the header {@code If-Match}; empty where none is moved
 */
public record Caller(String by, String key, String fingerprint, Optional<Integer> version) {

    private static final int LONGEST_NAME = 100;
    private static final Pattern KEY = Pattern.compile("[\\x21-\\x7e]{8,200}");
    private static final int LONGEST_REPEATED = 60;
    private static final byte[] END = {0};
    private static final Pattern VERSION = Pattern.compile("\"([0-9]{1,9})\"");

    /** Whoever makes something new. @throws ProblemException if name or key is missing */
    public static Caller making(UriInfo called, HttpHeaders headers, byte[] body) {
        return new Caller(
                by(called),
                key(headers.getHeaderString("Idempotency-Key")),
                fingerprint(called, body),
                Optional.empty());
    }

    /** Whoever changes an order. @throws ProblemException likewise, or if the version is missing */
    public static Caller changing(UriInfo called, HttpHeaders headers, byte[] body) {
        Caller making = making(called, headers, body);
        return new Caller(
                making.by,
                making.key,
                making.fingerprint,
                Optional.of(version(headers.getHeaderString(HttpHeaders.IF_MATCH))));
    }

    /** Who asks for a change. @throws ProblemException if nobody says */
    public static String by(UriInfo called) {
        Parameters parameters = new Parameters(called);
        Optional<String> by = parameters.text("by");
        if (by.isEmpty() && parameters.isWithoutFault()) {
            parameters.missing(
                    "by",
                    "It is not said who asks for it; every change is written down with a name.",
                    "a name",
                    "Say who does it, as in ?by=Ada.");
        }
        parameters.end();
        return by.orElseThrow();
    }

    /**
     * Whoever sends a form: name, key and version stand in it.
     *
     * @param form what else was sent, and where to
     * @throws ProblemException if one of them is missing
     */
    public static Caller sending(String by, String key, Optional<String> version, String form) {
        if (by.isBlank() || by.length() > LONGEST_NAME) {
            throw new ProblemException(Problem.of(Fault.of(
                            by.isBlank() ? ProblemType.MISSING_FIELD : ProblemType.WRONG_FORM,
                            "by",
                            "Every change is written down with the name of whoever asks for it.")
                    .wayOut("Enter a name of 1 to " + LONGEST_NAME + " characters.")));
        }
        Legible.flaw(by).ifPresent(flaw -> {
            throw new ProblemException(
                    Problem.of(Fault.of(ProblemType.WRONG_FORM, "by", flaw).wayOut(Legible.WAY_OUT)));
        });
        return new Caller(
                by.strip(), key(key), fingerprint(form.getBytes(StandardCharsets.UTF_8)), version.map(Caller::version));
    }

    private static String key(@Nullable String sent) {
        return Optional.ofNullable(sent)
                .map(String::strip)
                .filter(key -> KEY.matcher(key).matches())
                .orElseThrow(() -> new ProblemException(Problem.of(
                        ProblemType.KEY_MISSING,
                        "The header Idempotency-Key is missing, or is not 8 to 200 visible characters.")));
    }

    private static int version(@Nullable String sent) {
        if (sent == null || sent.isBlank()) {
            throw new ProblemException(Problem.of(
                    ProblemType.VERSION_MISSING,
                    "The header If-Match does not say which version of the order the change is meant for."));
        }
        Matcher tag = VERSION.matcher(sent.strip());
        if (!tag.matches()) {
            throw new ProblemException(Problem.of(
                    ProblemType.BAD_VERSION,
                    "The header If-Match is " + Legible.first(LONGEST_REPEATED, sent)
                            + ", and a version is one whole number in double quotes, as in \"4\"."));
        }
        return Integer.parseInt(tag.group(1));
    }

    private static String fingerprint(UriInfo called, byte[] body) {
        String parameters = called.getRequestUri().getRawQuery();
        return fingerprint(
                called.getRequestUri().getRawPath().getBytes(StandardCharsets.UTF_8),
                (parameters == null ? "" : parameters).getBytes(StandardCharsets.UTF_8),
                body);
    }

    private static String fingerprint(byte[]... parts) {
        return Digest.hex(Stream.of(parts).flatMap(part -> Stream.of(part, END)).toArray(byte[][]::new));
    }

    /** What they want done with an order. */
    public Errand with(long order) {
        return new Errand(order, version.orElseThrow(), by);
    }
}
