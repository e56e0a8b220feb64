package org.borewright.api.contract;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * An answer as it came over the wire.
 *
 * @param status of HTTP
 * @param headers by their names in small letters
 * @param body empty where there is none
 */
record Answer(int status, Map<String, String> headers, String body) {

    static Answer read(String text) {
        int end = text.indexOf("\r\n\r\n");
        List<String> head = text.substring(0, end).lines().toList();
        Map<String, String> headers = head.stream()
                .skip(1)
                .map(line -> line.split(": ", 2))
                .collect(Collectors.toMap(line -> line[0].toLowerCase(Locale.ROOT), line -> line[1]));
        return new Answer(Integer.parseInt(head.get(0).split(" ", 3)[1]), headers, text.substring(end + 4));
    }

    /** The media type, without its parameters; empty where there is no body. */
    Optional<String> type() {
        return Optional.ofNullable(headers.get("content-type")).map(type -> type.split(";", 2)[0]);
    }

    JsonNode json() {
        return Contract.json(body);
    }
}
