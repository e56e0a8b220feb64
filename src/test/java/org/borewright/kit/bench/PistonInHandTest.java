package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.MassRange;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A piston of +0.50: 70.440 to 70.450, target 0.060. */
class PistonInHandTest {

    private final TwinBench bench = new TwinBench();

    /** Less than 70.390 is no reading across the thrust faces; a micrometer tells a piston to 0.004 100 and a little. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            NUMBER, DIAMETER,  BELIEVED, MAY BE FITTED, OPEN
            P-050,  70.389999, false,    false,         false
            P-050,  70.390,    true,     false,         false
            P-050,  70.435,    true,     false,         false
            P-050,  70.437,    true,     true,          true
            P-050,  70.440,    true,     true,          true
            P-050,  70.445,    true,     true,          false
            P-050,  70.453,    true,     true,          true
            P-050,  70.455,    true,     false,         false
            P-025,  70.195,    true,     false,         false
            """)
    void onlyWhatIsProvenAgainstAPistonKeepsItOut(
            String number, Length diameter, boolean believed, boolean mayBeFitted, boolean open) {
        PistonInHand piston = piston(number, diameter, null);

        assertThat(piston.isBelieved()).isEqualTo(believed);
        assertThat(piston.mayBeFitted()).isEqualTo(mayBeFitted);
        assertThat(piston.isOpen()).isEqualTo(open);
    }

    /** Target of 70.445 is 70.505; twice what the middle of the hole is from it. */
    @ParameterizedTest
    @CsvSource({"70.505, 70.505, 0", "70.503, 70.507, 0", "70.505, 70.508, 0.003", "70.500, 70.505, 0.005"})
    void howFarItIsFromTargetIsTheSameBothWays(Length least, Length greatest, Length twice) {
        assertThat(piston("P-050", mm("70.445"), null).offTarget(new Limits(least, greatest)))
                .isEqualTo(twice);
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(longs = 200_500)
    void itWeighsWhatTheScalesSaidAndNothingElse(Long milligrams) {
        assertThat(piston("P-050", mm("70.445"), milligrams).weight())
                .isEqualTo(Optional.ofNullable(milligrams).map(weighed -> new MassRange(weighed, weighed)));
    }

    private PistonInHand piston(String number, Length diameter, Long milligrams) {
        return bench.plan(List.of(bench.piston("A", number, diameter, Optional.ofNullable(milligrams))), "-", "-")
                .pistons()
                .get(0);
    }
}
