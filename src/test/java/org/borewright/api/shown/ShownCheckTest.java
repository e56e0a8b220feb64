package org.borewright.api.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.borewright.fit.DeckFlatness;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownCheckTest {

    private static final String SKIM =
            "skim the deck as needed: its out-of-flat and the uncertainty of that at the least";

    /** A deck of 0.040 mm allowed, read with blades worth 0.010 mm: what is too close may be skimmed as what is out must be. */
    @ParameterizedTest(name = "{0} mm out of flat: {1}")
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "0.030 | -",
                "0.035 | measure again with a gauge whose expanded uncertainty is at most 0.005 mm, all else as it was, or "
                        + SKIM,
                "0.040 | the value lies on the limit and no gauge settles it: move off the limit, or " + SKIM,
                "0.045 | measure again with a gauge whose expanded uncertainty is at most 0.005 mm, all else as it was, or "
                        + SKIM,
                "0.050 | " + SKIM,
            })
    void aDeckThatIsNotProvenFlatMayBeSkimmed(Length found, String next) {
        ShownCheck shown = ShownCheck.of(
                new DeckFlatness(found, Optional.empty()).check(Length.parseMillimetres("0.040")),
                LengthUnit.MILLIMETRE);

        assertThat(shown.next()).isEqualTo(next);
    }
}
