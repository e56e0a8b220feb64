package org.borewright.api.match.answer.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.api.shown.ShownLength;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Uncertainty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;

class BudgetAnswerTest {

    /** 254/√12 = 73.3 nm are 74 nm and 2.91 millionths of an inch, shown as 3. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 74, 74, 2642, 2642", "INCH, 74, 3, 2642, 105"})
    void noTermIsShownSmallerThanItIs(
            LengthUnit unit, long resolution, long resolutionShown, long combined, long combinedShown) {
        BudgetAnswer shown = BudgetAnswer.of(new Uncertainty(2540, 254 / Math.sqrt(12), 0, 722.2, 0, 0, 722.2), unit);
        assertThat(shown.resolution()).isEqualTo(new ShownLength(resolutionShown, resolution));
        assertThat(shown.combined()).isEqualTo(new ShownLength(combinedShown, combined));
    }

    @Test
    void whatAddsNothingIsLeftOut() {
        BudgetAnswer shown = BudgetAnswer.of(new Uncertainty(2500, 0, 0, 800, 0, 0, 800), LengthUnit.MILLIMETRE);
        assertThat(shown.resolution()).isNull();
        assertThat(shown.repeatability()).isNull();
        assertThat(shown.expansion()).isNull();
        assertThat(shown.ring()).isNull();
        assertThat(shown.gauge()).isNotNull();
        assertThat(shown.temperature()).isNotNull();
    }

    @ParameterizedTest
    @CsvSource({
        "3, 1, 2, 1, 2, 1, gauge, a smaller calibration uncertainty",
        "3, 4, 2, 1, 2, 1, resolution, a finer step",
        "3, 4, 5, 1, 2, 1, repeatability, the mean of several readings",
        "3, 4, 5, 6, 2, 1, temperature, come to one temperature",
        "3, 4, 5, 6, 7, 1, expansion, nearer to 20 °C",
        "3, 4, 5, 6, 7, 8, ring, setting ring come to 20 °C",
        "3, 3, 3, 3, 3, 3, gauge, a smaller calibration uncertainty",
        "3, 4, 4, 4, 4, 4, resolution, a finer step"
    })
    void theLargestTermIsNamedWithWhatToDoAboutIt(ArgumentsAccessor row) {
        Uncertainty budget = new Uncertainty(
                row.getDouble(0),
                row.getDouble(1),
                row.getDouble(2),
                row.getDouble(3),
                row.getDouble(4),
                row.getDouble(5),
                0);
        BudgetAnswer shown = BudgetAnswer.of(budget, LengthUnit.MILLIMETRE);
        assertThat(shown.mattersMost()).isEqualTo(row.getString(6));
        assertThat(shown.next()).contains(row.getString(7));
    }
}
