package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.api.shown.ShownLength;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Uncertainty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetAnswerTest {

    /** 254/√12 = 73.3 nm are 74 nm and 2.91 millionths of an inch, shown as 3. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 74, 74, 2642, 2642", "INCH, 74, 3, 2642, 105"})
    void noTermIsShownSmallerThanItIs(
            LengthUnit unit, long resolution, long resolutionShown, long combined, long combinedShown) {
        BudgetAnswer shown = BudgetAnswer.of(new Uncertainty(2540, 254 / Math.sqrt(12), 722.2, 0), unit);
        assertThat(shown.resolution()).isEqualTo(new ShownLength(resolutionShown, resolution));
        assertThat(shown.combined()).isEqualTo(new ShownLength(combinedShown, combined));
    }

    @Test
    void whatAddsNothingIsLeftOut() {
        BudgetAnswer shown = BudgetAnswer.of(new Uncertainty(2500, 0, 800, 0), LengthUnit.MILLIMETRE);
        assertThat(shown.resolution()).isNull();
        assertThat(shown.expansion()).isNull();
        assertThat(shown.gauge()).isNotNull();
        assertThat(shown.temperature()).isNotNull();
    }

    @ParameterizedTest
    @CsvSource({
        "3, 1, 2, 1, gauge, a smaller calibration uncertainty",
        "3, 4, 2, 1, resolution, a finer step",
        "3, 4, 5, 1, temperature, come to one temperature",
        "3, 4, 5, 6, expansion, nearer to 20 °C",
        "3, 3, 3, 3, gauge, a smaller calibration uncertainty",
        "3, 4, 4, 4, resolution, a finer step"
    })
    void theLargestTermIsNamedWithWhatToDoAboutIt(
            double gauge, double resolution, double temperature, double expansion, String largest, String next) {
        BudgetAnswer shown =
                BudgetAnswer.of(new Uncertainty(gauge, resolution, temperature, expansion), LengthUnit.MILLIMETRE);
        assertThat(shown.mattersMost()).isEqualTo(largest);
        assertThat(shown.next()).contains(next);
    }
}
