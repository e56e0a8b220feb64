package org.borewright.api.contract;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What leads somewhere in a body, and what does not. */
class PointersTest {

    private static final String RINGS_ONLY = """
            {"engine":"DRUMLACH-S1","unit":"mm","condition":"worn","cylinders":[{"cylinder":"1"}]}""";

    private static final String PISTONS = """
            {"engine":"HALVERN-131","unit":"mm","size":"+0.50","pistons":[{"tag":"A"}],"a/b":1}""";

    @ParameterizedTest
    @CsvSource({
        "/cylinders,             true",
        "/cylinders/0,           true",
        "/cylinders/0/diameter,  true",
        "/deckFlatness,          true",
        "/pistons,               false",
        "/cylinders/1,           false",
        "/cylinders/0/tag,       false",
        "/gauge/name,            false",
        "/cylinders/-,           false",
    })
    void ofAMatch(String pointer, boolean leads) {
        assertThat(leads(RINGS_ONLY, pointer)).isEqualTo(leads);
    }

    @ParameterizedTest
    @CsvSource({"/pistons/0/diameter, true", "/design, true", "/a~1b, true", "/grooves, false", "/size/0, false"})
    void ofPistonsInHand(String pointer, boolean leads) {
        assertThat(leads(PISTONS, pointer)).isEqualTo(leads);
    }

    private static boolean leads(String body, String pointer) {
        return Pointers.astray("/api/orders/8/confirm", body, "{\"errors\":[{\"pointer\":\"" + pointer + "\"}]}")
                .isEmpty();
    }
}
