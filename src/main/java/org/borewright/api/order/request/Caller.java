package org.borewright.api.order.request;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.UriInfo;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.borewright.api.guard.Parameters;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.Errand;

/**
 * Who asks for a change, under which key, and which version of the order they know.
 *
 * @param by their name: the parameter {@code by}
 * @param key their own name for this request: the header {@code Idempotency-Key}
 * @param fingerprint of path, parameters and body: a key stands for one of them
 * @param version of the order: the header {@code If-Match}; empty where none is moved
 */
public record Caller(String by, String key, String fingerprint, Optional<Integer> version) {

    private static final Pattern KEY = Pattern.compile("[\\x21-\\x7e]{8,200}");
    private static final Pattern VERSION = Pattern.compile("\"([0-9]{1,9})\"");

    /** Whoever makes something new. @throws ProblemException if name or key is missing */
    public static Caller making(UriInfo called, HttpHeaders headers, byte[] body) {
        return new Caller(by(called), key(headers), fingerprint(called, body), Optional.empty());
    }

    /** Whoever changes an order. @throws ProblemException likewise, or if the version is missing */
    public static Caller changing(UriInfo called, HttpHeaders headers, byte[] body) {
        Caller making = making(called, headers, body);
        return new Caller(making.by, making.key, making.fingerprint, Optional.of(version(headers)));
    }

    /** Who asks for a change. @throws ProblemException if nobody says */
    public static String by(UriInfo called) {
        Parameters parameters = new Parameters(called);
        Optional<String> by = parameters.text("by");
        if (by.isEmpty()) {
            parameters.fault(
                    "by", "It is not said who asks for it; every change is written down with a name.", "a name");
        }
        parameters.end();
        return by.orElseThrow();
    }

    private static String key(HttpHeaders headers) {
        return Optional.ofNullable(headers.getHeaderString("Idempotency-Key"))
                .map(String::strip)
                .filter(key -> KEY.matcher(key).matches())
                .orElseThrow(() -> new ProblemException(Problem.of(
                        ProblemType.KEY_MISSING,
                        "The header Idempotency-Key is missing, or is not 8 to 200 visible characters.")));
    }

    private static int version(HttpHeaders headers) {
        String sent = headers.getHeaderString(HttpHeaders.IF_MATCH);
        Matcher tag = VERSION.matcher(sent == null ? "" : sent.strip());
        if (!tag.matches()) {
            throw new ProblemException(Problem.of(
                    ProblemType.VERSION_MISSING,
                    "The header If-Match does not say which version of the order the change is meant for."));
        }
        return Integer.parseInt(tag.group(1));
    }

    private static String fingerprint(UriInfo called, byte[] body) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(called.getRequestUri().getRawPath().getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            String parameters = called.getRequestUri().getRawQuery();
            digest.update((parameters == null ? "" : parameters).getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            return HexFormat.of().formatHex(digest.digest(body));
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    /** What they want done with an order. */
    public Errand with(long order) {
        return new Errand(order, version.orElseThrow(), by);
    }
}
