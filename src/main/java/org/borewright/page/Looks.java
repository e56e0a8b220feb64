package org.borewright.page;

import io.quarkus.qute.TemplateExtension;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.borewright.measure.LengthUnit;
import org.borewright.order.journal.Digest;

/** What templates ask for besides the answers. */
@TemplateExtension(namespace = "page")
final class Looks {

    private static final String FOLDER = "/META-INF/resources";
    private static final int TOLD_APART_BY = 8;
    private static final DateTimeFormatter AT_THE_SHOP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm z", Locale.ROOT).withZone(ZoneId.systemDefault());
    private static final Map<String, String> ADDRESSES = new ConcurrentHashMap<>();

    private Looks() {}

    /**
     * The address of a file of the look, with what tells its contents: a browser may keep it for ever, and has the new one after a change.
     *
     * @param name as {@code sheet.css}
     */
    static String look(String name) {
        return ADDRESSES.computeIfAbsent(name, Looks::address);
    }

    /** A moment as the clock on the wall of the shop shows it, to the minute, and by which time that is. */
    static String clock(Instant moment) {
        return AT_THE_SHOP.format(moment);
    }

    /** Whether an answer says a sentence already, so that it need not stand a second time. */
    static boolean tells(String says, String sentence) {
        return says.contains(sentence.replaceAll("\\.$", ""));
    }

    /** Whether a ring gap is one of the rings that were sold: of a design with one set of rings no set is named. */
    static boolean runs(Map<String, Object> gap, List<String> sold) {
        Object set = gap.get("ringSet");
        return set == null || sold.isEmpty() || sold.stream().anyMatch(set::equals);
    }

    /** Words as they stand in the query of an address. */
    static String inAnAddress(String words) {
        return URLEncoder.encode(words, StandardCharsets.UTF_8);
    }

    /** A sentence of an answer in words of whoever fills in a form. */
    static String inAForm(String sentence) {
        return InAForm.said(sentence);
    }

    /** A unit of length in a sentence, where "in" alone would be read as another word. */
    static String unit(String symbol) {
        return symbol.equals(LengthUnit.INCH.symbol()) ? "inches" : symbol;
    }

    /** A key for a form, new with each. */
    static String key() {
        return UUID.randomUUID().toString();
    }

    private static String address(String name) {
        String path = "/look/" + name;
        try (InputStream file = Objects.requireNonNull(Looks.class.getResourceAsStream(FOLDER + path), path)) {
            return path + "?" + Digest.hex(file.readAllBytes()).substring(0, TOLD_APART_BY);
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
