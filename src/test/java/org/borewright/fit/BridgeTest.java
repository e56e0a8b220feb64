package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.nm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BridgeTest {

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            PITCH,  FINISH,    NEXT,      LEFT
            78.000, 70.500,    70.500,    7.500
            78.000, 70.500,    71.000,    7.250
            78.000, 71.000,    70.500,    7.250
            78.000, 70.500001, 70.500,    7.499999
            78.000, 70.500001, 70.500001, 7.499999
            78.000, 70.499999, 70.500,    7.500
            70.000, 70.500,    70.500,    -0.500
            """)
    void isThePitchLessBothHalves(Length pitch, Length finish, Length next, Length left) {
        assertThat(Bridge.left(pitch, finish, next)).isEqualTo(left);
    }

    @ParameterizedTest
    @CsvSource({"7.499999, IN", "7.500, IN", "7.500001, OUT"})
    void theLeastBridgeIsInclusive(Length least, Outcome outcome) {
        Length finish = Shapes.mm("70.500");
        Comparison check = Bridge.check("1 and 2", Shapes.mm("78.000"), finish, finish, least);
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.rule()).isEqualTo(Rule.BRIDGE);
        assertThat(check.place()).isEqualTo("1 and 2");
    }

    @Property
    boolean isNeverShownThickerThanItIs(
            @ForAll @LongRange(min = 60_000_000, max = 90_000_000) long finish,
            @ForAll @LongRange(min = 60_000_000, max = 90_000_000) long next) {
        long left = Bridge.left(nm(100_000_000), nm(finish), nm(next)).nanometres();
        long twice = 200_000_000 - finish - next;
        return 2 * left <= twice && 2 * left >= twice - 1;
    }
}
