package org.borewright.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugedTest {

    @ParameterizedTest(name = "{0} to {1} {2}: a window of {3}, a gap of {4}")
    @CsvSource({
        "53.894059, 53.921941, mm, 53.895 to 53.921, 53.894 to 53.922",
        "53.894, 53.921, mm, 53.894 to 53.921, 53.894 to 53.921",
        "0.288415, 0.47601, mm, 0.289 to 0.476, 0.288 to 0.477",
        "53.8941, 53.8951, mm, 53.895, 53.894 to 53.896",
        "53.8941, 53.8949, mm, 53.8941 to 53.8949, 53.894 to 53.895",
        "2.1218134, 2.1229112, in, 2.1219 to 2.1229, 2.1218 to 2.1230",
        "0.4, 0.4, mm, 0.400, 0.400",
    })
    void aWindowIsReadNarrowerAndAGapWider(String least, String greatest, String unit, String window, String gap) {
        Map<String, Object> limits = Map.of("least", length(least), "greatest", length(greatest));

        assertThat(Gauged.inward(limits, unit)).isEqualTo(window);
        assertThat(Gauged.outward(limits, unit)).isEqualTo(gap);
    }

    @ParameterizedTest(name = "{0} within {1} to {2}: {3}")
    @CsvSource({
        "54.147945, 54.144018, 54.171872, 54.148",
        "54.1475, 54.144018, 54.171872, 54.148",
        "54.1465, 54.144018, 54.171872, 54.146",
        "54.1444, 54.1442, 54.171872, 54.1444",
        "54.1716, 54.1442, 54.1719, 54.1716",
        "54.1716, , , 54.172",
    })
    void aTargetIsTheNearestStepAsLongAsItLiesWithin(String target, String least, String greatest, String shown) {
        Map<String, Object> window =
                least == null ? null : Map.of("least", length(least), "greatest", length(greatest));

        assertThat(Gauged.target(length(target), window, "mm")).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({"38.677187, mm, 38.677", "38.677999, mm, 38.677", "1.5227239, in, 1.5227"})
    void anUpperLimitIsNeverReadLarger(String limit, String unit, String shown) {
        assertThat(Gauged.most(length(limit), unit)).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({"0.2032, mm, 0.204", "0.008, in, 0.0080", "0.00800001, in, 0.0081"})
    void aLowerLimitIsNeverReadSmaller(String limit, String unit, String shown) {
        assertThat(Gauged.least(length(limit), unit)).isEqualTo(shown);
    }

    /** A choke of 0.0005 in reads as such, and not as 0.0006. */
    @ParameterizedTest(name = "{0} with {1} at the other end, {2}: {3}")
    @CsvSource({
        "3.31025, 3.31075, in, 3.31025",
        "3.31075, 3.31025, in, 3.31075",
        "3.31025, 3.31025, in, 3.3102",
        "84.08035, 84.09305, mm, 84.0804",
        "84.08035, , mm, 84.080",
    })
    void theEndsOfAHoleWithChokeAreReadToADecimalMore(String end, String other, String unit, String shown) {
        assertThat(Gauged.end(length(end), other == null ? null : length(other), null, unit))
                .isEqualTo(shown);
    }

    @Test
    void whatIsNoLengthIsNotRead() {
        assertThatThrownBy(() -> Gauged.most("38.677", "mm")).isInstanceOf(IllegalArgumentException.class);
    }

    private static Map<String, Object> length(String value) {
        return Map.of("value", value);
    }
}
