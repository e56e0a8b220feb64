package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.named;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.worth;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoneWindowTest {

    private static final ClearanceWindow WINDOW = new ClearanceWindow(mm("0.030"), mm("0.040"), mm("0.060"));

    /** 0.030 mm from least to greatest: a piston known exactly leaves room for U up to 0.015, one in its tolerance of 0.010 for 0.010. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SMALLEST, LARGEST, U,        FROM,      TO
            69.960,   69.960,  0,        69.990,    70.020
            69.960,   69.960,  0.005,    69.995,    70.015
            69.960,   69.960,  0.015,    70.005,    70.005
            69.960,   69.960,  0.015001, ,
            69.960,   69.970,  0,        70.000,    70.020
            69.960,   69.970,  0.010,    70.010,    70.010
            69.960,   69.970,  0.010001, ,
            """)
    void theWindowIsWhatTheGaugesLeave(Length smallest, Length largest, Length uncertainty, Length from, Length to) {
        assertThat(HoneWindow.of(new Limits(smallest, largest), WINDOW, uncertainty))
                .isEqualTo(from == null ? Optional.empty() : Optional.of(new Limits(from, to)));
    }

    /** Least 0.030, target 0.040, greatest 0.060: 0.010 below the target, 0.020 above it. 3, 4, 5 twice over. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            HOLE,     PISTON, LEAST,     GREATEST,  GAUGE
            0.008,    0.006,  IN,        IN,
            0.008001, 0.006,  TOO_CLOSE, IN,        0.008
            0.012,    0.006,  TOO_CLOSE, IN,        0.008
            0.002,    0.010,  TOO_CLOSE, IN,        0.009998
            0.020,    0.000,  TOO_CLOSE, IN,        0.010
            0.020001, 0.000,  TOO_CLOSE, TOO_CLOSE, 0.010
            """)
    void aTargetThatCannotBeProvenNamesTheGaugeOrBoth(
            Length hole, Length piston, Outcome least, Outcome greatest, Length gauge) {
        List<Comparison> checks = HoneWindow.checkTarget(WINDOW, Length.ZERO, worth(hole), worth(piston));
        assertThat(checks).extracting(Comparison::rule).containsExactly(Rule.TARGET_LEAST, Rule.TARGET_GREATEST);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(least, greatest);
        assertThat(named(checks.get(0))).isEqualTo(Optional.ofNullable(gauge));
    }

    @Property
    boolean aHoleReadInTheWindowIsProvenAndOneBesideItIsNot(
            @ForAll @LongRange(min = 69_990_000, max = 70_020_000) long hole,
            @ForAll @LongRange(min = 0, max = 12_000) long ofHole,
            @ForAll @LongRange(min = 0, max = 9_000) long ofPiston) {
        Limits piston = Limits.exactly(mm("69.960"));
        Optional<Limits> window = HoneWindow.of(piston, WINDOW, Uncertainty.ofApart(nm(ofHole), nm(ofPiston)));
        boolean proven =
                Clearance.check(Limits.exactly(nm(hole)), worth(nm(ofHole)), piston, worth(nm(ofPiston)), WINDOW)
                        .stream()
                        .allMatch(check -> check.outcome() == Outcome.IN);
        return window.filter(limits -> limits.hold(nm(hole))).isPresent() == proven;
    }

    @Property
    boolean theTargetLiesInTheWindowExactlyWhenBothChecksAreIn(
            @ForAll @LongRange(min = 0, max = 20_000) long ofHole,
            @ForAll @LongRange(min = 0, max = 9_000) long ofPiston) {
        Limits piston = limits("69.960", "69.960");
        boolean inside = HoneWindow.of(piston, WINDOW, Uncertainty.ofApart(nm(ofHole), nm(ofPiston)))
                .filter(limits -> limits.hold(mm("70.000")))
                .isPresent();
        return inside
                == HoneWindow.checkTarget(WINDOW, Length.ZERO, worth(nm(ofHole)), worth(nm(ofPiston))).stream()
                        .allMatch(check -> check.outcome() == Outcome.IN);
    }
}
