package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Set;
import java.util.regex.Pattern;

/** What is told of an order, without what is another each time: days become days from one, times and the places in the journal are left out. */
final class Told {

    /** The day of the examples. */
    static final LocalDate OF_THE_CONTRACT = LocalDate.of(2026, 3, 2);

    private static final Pattern TIME = Pattern.compile("([0-9]{4}-[0-9]{2}-[0-9]{2})T[0-9:.]+Z");
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern SEAL = Pattern.compile("[0-9a-f]{64}|[A-Za-z0-9+/]{43}=");
    private static final Set<String> PLACES = Set.of("position", "after", "lines", "left", "failures");
    private static final int TWO_MONTHS = 60;

    /** Whether a message was tried in vain meanwhile is a matter of a second. */
    private static final String NOT_YET = "lastFailure";

    private final LocalDate from;

    private Told(LocalDate from) {
        this.from = from;
    }

    static JsonNode from(LocalDate day, JsonNode said) {
        return new Told(day).told("", said);
    }

    private JsonNode told(String name, JsonNode said) {
        if (said.isObject()) {
            ObjectNode told = JsonNodeFactory.instance.objectNode();
            Contract.named(said).forEach((member, value) -> told.set(member, told(member, value)));
            told.remove(NOT_YET);
            return told;
        } else if (said.isArray()) {
            ArrayNode told = JsonNodeFactory.instance.arrayNode();
            said.forEach(item -> told.add(told("", item)));
            return told;
        } else if (said.isNumber() && PLACES.contains(name)) {
            return JsonNodeFactory.instance.textNode("a place");
        }
        return said.isTextual() ? JsonNodeFactory.instance.textNode(told(said.textValue())) : said;
    }

    private String told(String text) {
        String sealed = SEAL.matcher(text).replaceAll("a seal or secret");
        String timed = TIME.matcher(sealed).replaceAll("$1, some time");
        return DAY.matcher(timed).replaceAll(found -> day(found.group()));
    }

    /** A day far off is one that the request named. */
    private String day(String text) {
        long days = ChronoUnit.DAYS.between(from, LocalDate.parse(text));
        return Math.abs(days) > TWO_MONTHS ? text : days + " days on";
    }
}
