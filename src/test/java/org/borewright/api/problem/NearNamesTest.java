package org.borewright.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNamesTest {

    private static final List<String> CODES =
            List.of("OSTRAVEL-4", "OSTRAVEL-6", "TORRESK-F4", "TORRESK-P2", "HALVERN-T2");

    @ParameterizedTest(name = "{0} may have meant {1}")
    @CsvSource({
        "OSTRAVEL-4, OSTRAVEL-4;OSTRAVEL-6",
        "ostravel4, OSTRAVEL-4;OSTRAVEL-6",
        "OSTRAVLE-4, OSTRAVEL-4;OSTRAVEL-6",
        "OSTRAVEL, OSTRAVEL-4;OSTRAVEL-6",
        "OSTRAVEL-41, OSTRAVEL-4;OSTRAVEL-6",
        "halvern t2, HALVERN-T2",
        "HALVRN-T2, HALVERN-T2",
        "tor, TORRESK-F4;TORRESK-P2",
        "TORRESK-X9, TORRESK-F4;TORRESK-P2",
    })
    void theNearestNamesComeFirst(String typed, String near) {
        assertThat(NearNames.of(typed, CODES)).isEqualTo(List.of(near.split(";")));
    }

    @ParameterizedTest
    @CsvSource({"Z", "to", "KOVARDA", "''", "OSTRAVEL-4OSTRAVEL-4OSTRAVEL-4OSTRAVEL-4OSTRAVEL-4OSTRAVEL-4OSTRAVEL-4"})
    void nothingIsOfferedWhereNothingIsNear(String typed) {
        assertThat(NearNames.of(typed, CODES)).isEmpty();
    }

    @Test
    void neverMoreThanThreeAreOffered() {
        assertThat(NearNames.of("PART-1", List.of("PART-5", "PART-4", "PART-3", "PART-2")))
                .containsExactly("PART-2", "PART-3", "PART-4");
    }

    @Test
    void namesAreJoinedAsInASentence() {
        assertThat(NearNames.either(List.of())).isEmpty();
        assertThat(NearNames.either(List.of("mm"))).isEqualTo("mm");
        assertThat(NearNames.either(List.of("mm", "in"))).isEqualTo("mm or in");
        assertThat(NearNames.either(List.of("A", "B", "C"))).isEqualTo("A, B or C");
    }
}
