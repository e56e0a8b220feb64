package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;

import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.BoreShape.Form;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ServiceShapeTest {

    /** Taper 0.002 in (0.05 mm), out-of-round 0.003 in (0.075 mm): TM 10-3930-243-34; a difference is worth 0.000 817 mm. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            TAPER,    OUT-OF-ROUND, TAPER IS,  OUT-OF-ROUND IS
            0.049183, 0.074183,     IN,        IN
            0.049184, 0.074183,     TOO_CLOSE, IN
            0.049183, 0.074184,     IN,        TOO_CLOSE
            0.050000, 0.075000,     TOO_CLOSE, TOO_CLOSE
            0.050816, 0.075817,     TOO_CLOSE, OUT
            0.050817, 0.075816,     OUT,       TOO_CLOSE
            """)
    void aHoleRunsOnWhileItIsStraightAndRoundEnough(
            Length taper, Length outOfRound, Outcome taperIs, Outcome outOfRoundIs) {
        BoreShape shape = new BoreShape(taper, taper, outOfRound, Form.BELL_MOUTH);
        var checks = ServiceShape.check(
                shape,
                Uncertainty.of(mm("70"), Gauge.Kind.BORE_GAUGE.usual(), Climate.NOT_STATED, new Expansion(11e-6, 1e-6)),
                mm("0.050"),
                mm("0.075"));
        assertThat(checks).extracting(Comparison::outcome).containsExactly(taperIs, outOfRoundIs);
        assertThat(checks).extracting(Comparison::rule).containsExactly(Rule.SERVICE_TAPER, Rule.SERVICE_OUT_OF_ROUND);
    }
}
