package org.borewright.api.lookup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.api.lookup.Counter.answer;
import static org.borewright.api.lookup.Counter.column;
import static org.borewright.api.lookup.Counter.escaped;
import static org.borewright.api.lookup.Counter.lines;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Asked in inches, a look-up says what it says in millimetres: the same nanometres, and a figure that never flatters. */
@QuarkusTest
class UnitsTest {

    private static final BigDecimal NANOMETRES_OF_AN_INCH = BigDecimal.valueOf(25_400_000);
    private static final BigDecimal NANOMETRES_OF_A_MILLIMETRE = BigDecimal.valueOf(1_000_000);

    /** Half of the last place shown of an inch would be 0.0000005; what is rounded one way may be off by all of it. */
    private static final BigDecimal LAST_PLACE = new BigDecimal("0.000001");

    static Stream<String> lookups() {
        return Stream.of(
                        Stream.of("/api/engines"),
                        column("engines.csv", "engine").map(engine -> "/api/engines/" + engine),
                        lines("sizes.csv").stream()
                                .map(size -> "/api/engines/" + size.getField("engine") + "/sizes/"
                                        + escaped(size.getField("size")) + "/fit"),
                        Stream.of("/api/gauges"),
                        column("gauges.csv", "name").map(name -> "/api/gauges/" + name),
                        column("prices.csv", "number").map(number -> "/api/parts/" + number))
                .flatMap(paths -> paths);
    }

    @ParameterizedTest
    @MethodSource("lookups")
    void inchesAndMillimetresTellTheSame(String path) {
        JsonNode millimetres = answer(path);
        JsonNode inches = answer(path + "?unit=in");

        assertThat(millimetres.path("unit").asText()).isEqualTo("mm");
        assertThat(inches.path("unit").asText()).isEqualTo("in");
        areOf(NANOMETRES_OF_A_MILLIMETRE, millimetres, "");
        areOf(NANOMETRES_OF_AN_INCH, inches, "");
        assertThat(withoutUnit(inches)).isEqualTo(withoutUnit(millimetres));
    }

    /** Without a unit it is millimetres, and saying so changes nothing. */
    @Test
    void millimetresNeedNotBeAskedFor() {
        assertThat(answer("/api/engines/OSTRAVEL-4?unit=mm")).isEqualTo(answer("/api/engines/OSTRAVEL-4"));
    }

    private static void areOf(BigDecimal unit, JsonNode node, String name) {
        if (node.has("nm") && node.has("value")) {
            isOf(unit, node, name);
        }
        node.properties().forEach(member -> areOf(unit, member.getValue(), member.getKey()));
        if (node.isArray()) {
            node.forEach(item -> areOf(unit, item, name));
        }
    }

    private static void isOf(BigDecimal unit, JsonNode length, String name) {
        BigDecimal off = length.path("value")
                .decimalValue()
                .multiply(unit)
                .subtract(length.path("nm").decimalValue());
        assertThat(off.abs()).as("%s %s", name, length).isLessThan(LAST_PLACE.multiply(unit));
        if (name.equals("wear") || name.equals("taper") || name.equals("outOfRound") || name.equals("skimGreatest")) {
            assertThat(off.signum()).as("%s %s", name, length).isNotPositive();
        }
        if (name.equals("uncertainty") || name.equals("resolution") || name.equals("repeatability")) {
            assertThat(off.signum()).as("%s %s", name, length).isNotNegative();
        }
        if (name.equals("wallLeast") || name.equals("bridgeLeast")) {
            assertThat(off.signum()).as("%s %s", name, length).isNotNegative();
        }
    }

    private static JsonNode withoutUnit(JsonNode node) {
        if (node instanceof ObjectNode object) {
            boolean length = object.has("nm");
            if (length) {
                object.remove("value");
            }
            if (length || object.has("revision")) {
                object.remove("unit");
            }
        }
        node.forEach(UnitsTest::withoutUnit);
        return node;
    }
}
