package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecisionTest {

    private static final List<Decision> BETTER = List.of(Decision.OUT, Decision.TOO_CLOSE, Decision.IN);

    private static final long FAR = 1_000_000_000_000L;

    @ParameterizedTest
    @CsvSource(textBlock = """
            5001,  5000, IN
            5000,  5000, IN
            4999,  5000, TOO_CLOSE
            1,     5000, TOO_CLOSE
            0,     5000, TOO_CLOSE
            -1,    5000, TOO_CLOSE
            -4999, 5000, TOO_CLOSE
            -5000, 5000, OUT
            -5001, 5000, OUT
            1,     0,    IN
            0,     0,    IN
            -1,    0,    OUT
            """)
    void theUncertaintyStandsGuardOnBothSides(long margin, long uncertainty, Decision decision) {
        assertThat(Decision.of(margin, uncertainty)).isEqualTo(decision);
    }

    /** Limits 80.000 to 80.019 mm, u 2 µm, guarded by U: accepted from 80.004 to 80.015 (JCGM 106:2012, 8.3; worked by hand). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            79.996000, OUT
            79.996001, TOO_CLOSE
            80.003999, TOO_CLOSE
            80.004000, IN
            80.015000, IN
            80.015001, TOO_CLOSE
            80.018000, TOO_CLOSE
            80.022999, TOO_CLOSE
            80.023000, OUT
            """)
    void aBoreIsAcceptedInsideTheGuardBands(Length bore, Decision decision) {
        Limits limits = new Limits(Length.ofMicrometres(80_000), Length.ofMicrometres(80_019));
        Decision above = Decision.of(bore.minus(limits.least()).nanometres(), 4_000);
        Decision below = Decision.of(limits.greatest().minus(bore).nanometres(), 4_000);
        assertThat(List.of(above, below)).contains(decision);
        assertThat(above == Decision.IN && below == Decision.IN).isEqualTo(decision == Decision.IN);
    }

    @Property
    boolean asFarOutsideIsOutAsInsideIsIn(
            @ForAll @LongRange(min = -FAR, max = FAR) long margin,
            @ForAll @LongRange(min = 1, max = FAR) long uncertainty) {
        Decision mirrored = switch (Decision.of(margin, uncertainty)) {
            case IN -> Decision.OUT;
            case OUT -> Decision.IN;
            case TOO_CLOSE -> Decision.TOO_CLOSE;
        };
        return Decision.of(-margin, uncertainty) == mirrored;
    }

    @Property
    boolean moreMarginIsNeverWorse(
            @ForAll @LongRange(min = -20, max = 20) long margin,
            @ForAll @LongRange(min = 0, max = 20) long more,
            @ForAll @LongRange(min = 0, max = 15) long uncertainty) {
        Decision less = Decision.of(margin, uncertainty);
        return BETTER.indexOf(Decision.of(margin + more, uncertainty)) >= BETTER.indexOf(less);
    }

    @Property
    boolean aBetterGaugeNeverTurnsADecisionRound(
            @ForAll @LongRange(min = -20, max = 20) long margin,
            @ForAll @LongRange(min = 1, max = 15) long uncertainty,
            @ForAll @LongRange(min = 0, max = 15) long better) {
        Decision first = Decision.of(margin, uncertainty);
        return first == Decision.TOO_CLOSE || Decision.of(margin, Math.min(uncertainty, better)) == first;
    }

    @ParameterizedTest
    @ValueSource(longs = {-1, -5000, Long.MIN_VALUE})
    void anUncertaintyBelowZeroIsRefused(long uncertainty) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Decision.of(0, uncertainty))
                .withMessageContaining(Long.toString(uncertainty));
    }
}
