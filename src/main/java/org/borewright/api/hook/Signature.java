package org.borewright.api.hook;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.borewright.order.journal.Digest;

/** The signature of a message: HTTP Message Signatures (RFC 9421) by HMAC-SHA256 (3.3.3), over a digest of its body (RFC 9530). */
final class Signature {

    private static final String LABEL = "borewright";

    private static final int HTTP_PORT = 80;
    private static final int HTTPS_PORT = 443;

    private Signature() {}

    /**
     * Where a message goes, in the normal form of a url (RFC 3986, 6.2.3; RFC 9110, 4.2.3): the host in small letters, no port that goes without
     * saying, and a path of one slash at the least. It is what a receiver finds in the request, and what is signed (RFC 9421, 2.2.2).
     */
    static URI target(URI url) {
        boolean usual = url.getPort() == ("https".equals(url.getScheme()) ? HTTPS_PORT : HTTP_PORT);
        String host = url.getHost().toLowerCase(Locale.ROOT);
        String port = usual || url.getPort() < 0 ? "" : ":" + url.getPort();
        String path = url.getRawPath().isEmpty() ? "/" : url.getRawPath();
        String query = url.getRawQuery() == null ? "" : "?" + url.getRawQuery();
        return URI.create(url.getScheme() + "://" + host + port + path + query);
    }

    /** The headers that prove who sent a body where, and when. */
    static Map<String, String> headers(URI to, byte[] body, String key, byte[] secret, Instant now) {
        String digest = digest(body);
        List<Component> components = List.of(
                new Component("@method", "POST"),
                new Component("@target-uri", to.toString()),
                new Component("content-type", "application/json"),
                new Component("content-digest", digest));
        String input = input(components, now, key);
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put("Content-Digest", digest);
        headers.put("Signature-Input", LABEL + "=" + input);
        headers.put("Signature", LABEL + "=:" + signature(components, input, secret) + ":");
        return headers;
    }

    /** Something signed (RFC 9421, 2). */
    record Component(String name, String value) {}

    /** Content-Digest (RFC 9530, 2). */
    static String digest(byte[] body) {
        return "sha-256=:" + Base64.getEncoder().encodeToString(Digest.of(body)) + ":";
    }

    /** What is signed, when and with which key (RFC 9421, 2.3). */
    static String input(List<Component> components, Instant now, String key) {
        return components.stream()
                        .map(component -> "\"" + component.name() + "\"")
                        .collect(Collectors.joining(" ", "(", ")"))
                + String.format(Locale.ROOT, ";created=%d;keyid=\"%s\"", now.getEpochSecond(), key);
    }

    /** HMAC-SHA256 over the signature base (RFC 9421, 2.5), in base 64. */
    static String signature(List<Component> components, String input, byte[] secret) {
        String base = components.stream()
                .map(component -> "\"" + component.name() + "\": " + component.value() + "\n")
                .collect(Collectors.joining("", "", "\"@signature-params\": " + input));
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(secret, "HmacSHA256"));
            return Base64.getEncoder().encodeToString(mac.doFinal(base.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException never) {
            throw new IllegalStateException("every Java has HMAC-SHA256", never);
        }
    }
}
