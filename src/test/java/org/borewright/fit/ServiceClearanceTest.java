package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.worth;

import java.util.Optional;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.HeadShape;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ServiceClearanceTest {

    /** 70.060 mm against a piston; hole and piston worth 0.003 and 0.004 mm are worth 0.005 together. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            PISTON,    CLEARANCE, OUTCOME
            69.925000, 0.135,     IN
            69.924999, 0.135001,  TOO_CLOSE
            69.920000, 0.140,     TOO_CLOSE
            69.915001, 0.144999,  TOO_CLOSE
            69.915000, 0.145,     OUT
            """)
    void aWornPistonMayHaveTheClearanceOfItsWearLimit(Length piston, Length clearance, Outcome outcome) {
        Comparison check =
                ServiceClearance.check(mm("70.060"), worth(mm("0.003")), piston, worth(mm("0.004")), mm("0.140"));
        assertThat(check.value()).isEqualTo(Amount.of(clearance));
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.rule()).isEqualTo(Rule.SERVICE_CLEARANCE);
    }

    /** Geometry: at top dead centre the pin stands half a stroke and a rod above the crankshaft; an odd nanometre counts as skirt. */
    @ParameterizedTest
    @CsvSource({"199.4, 80, 125, 0, 34.4", "199.4, 80.000001, 125, 0, 34.399999", "199.4, 80, 125, 0.3, 34.1"})
    void aSkirtSweepsTheHoleFromThePinAtTopDeadCentre(
            String barrel, Length stroke, Length rod, Length skimmed, Length from) {
        DeckShape deck = new DeckShape(
                limits(barrel, "300"),
                stroke,
                rod,
                limits("1", "2"),
                new HeadShape(40, true, Optional.empty(), mm("76"), 9_000_000));
        assertThat(ServiceClearance.sweptFrom(deck, skimmed)).isEqualTo(from);
    }
}
