package org.borewright.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ToldTest {

    @Test
    void figuresStayTheTextTheyWereToldIn() {
        assertThat(told("{\"value\": 77.370, \"nm\": 77370000, \"share\": 1.0E-7, \"u\": 0.000000}"))
                .containsExactly(
                        Map.entry("value", "77.370"),
                        Map.entry("nm", "77370000"),
                        Map.entry("share", "1.0E-7"),
                        Map.entry("u", "0.000000"));
    }

    @Test
    void objectsListsAndTruthStandAsTheyAre() {
        assertThat(told("{\"a\": {\"b\": [true, \"x\", {\"c\": 1}]}, \"d\": [], \"e\": false}"))
                .isEqualTo(Map.of("a", Map.of("b", List.of(true, "x", Map.of("c", "1"))), "d", List.of(), "e", false));
    }

    @Test
    void whatIsNullIsNotThereButKeepsItsPlaceInAList() {
        assertThat(told("{\"a\": null, \"b\": [null, 1]}")).isEqualTo(Map.of("b", Arrays.asList(null, "1")));
    }

    private static Map<String, Object> told(String answer) {
        return Told.of(answer.getBytes(StandardCharsets.UTF_8));
    }
}
