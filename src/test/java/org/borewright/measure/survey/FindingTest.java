package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Finding.Kind;
import org.borewright.measure.survey.Finding.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingTest {

    /** Common practice; open: whether a depth not measured leaves every size no better than possible. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            KIND,              LABEL,             WEIGHT,           ALWAYS MACHINED, OPEN,  CUT OF 0.1 mm
            BROKEN_FIN,        broken fin,        COSMETIC,         false,           false, 0
            CRACKED_FIN,       cracked fin,       COSMETIC,         false,           false, 0
            PAINT,             paint,             COSMETIC,         false,           false, 0
            STAIN,             stain,             COSMETIC,         false,           false, 0
            FINISH_POOR,       finish poor,       HONE,             false,           false, 0
            WORN,              worn,              MACHINABLE,       false,           false, 0.1
            SCORED,            scored,            MACHINABLE,       false,           true,  0.1
            PITTED,            pitted,            MACHINABLE,       false,           true,  0.1
            CORRODED,          corroded,          MACHINABLE,       true,            true,  0.1
            SEIZED,            seized,            MACHINABLE,       true,            true,  0.1
            SMEARED_ALUMINIUM, smeared aluminium, HOLD,             false,           false, 0
            SLEEVE_LOOSE,      sleeve loose,      HOLD,             false,           false, 0
            HOLED,             holed,             BEYOND_MACHINING, false,           false, 0
            MELTED,            melted,            BEYOND_MACHINING, false,           false, 0
            CRACKED,           cracked,           BEYOND_MACHINING, false,           false, 0
            """)
    void eachFindingMeansItsWork(Kind kind, String label, Weight weight, boolean always, boolean open, Length cut) {
        assertThat(kind.label()).isEqualTo(label);
        assertThat(kind.weight()).isEqualTo(weight);
        assertThat(kind.alwaysMachined()).isEqualTo(always);
        Finding unmeasured = new Finding(kind, Optional.empty(), Optional.empty());
        assertThat(unmeasured.isOfUnknownDepth()).isEqualTo(open);
        assertThat(unmeasured.cut()).isEqualTo(Length.ZERO);
        Finding measured = new Finding(kind, Optional.of(Length.ofMicrometres(100)), Optional.empty());
        assertThat(measured.isOfUnknownDepth()).isFalse();
        assertThat(measured.cut()).isEqualTo(cut);
    }

    @ParameterizedTest
    @CsvSource({
        "COSMETIC, 'noted, never blocks'",
        "HONE, settled by a hone",
        "MACHINABLE, cut out by the bar",
        "HOLD, 'put right first, then measure again'",
        "BEYOND_MACHINING, beyond machining"
    })
    void eachWeightSaysWhatItMeans(Weight weight, String says) {
        assertThat(weight.says()).isEqualTo(says);
    }

    /** Neither bar nor hone may touch a plated wall. */
    @ParameterizedTest
    @CsvSource({
        "STAIN, COSMETIC",
        "FINISH_POOR, BEYOND_MACHINING",
        "WORN, BEYOND_MACHINING",
        "SEIZED, BEYOND_MACHINING",
        "SMEARED_ALUMINIUM, HOLD",
        "HOLED, BEYOND_MACHINING"
    })
    void inAWallThatIsNeverCutNothingSettlesWhatBarOrHoneWould(Kind kind, Weight weight) {
        Finding finding = new Finding(kind, Optional.empty(), Optional.empty());

        assertThat(finding.weightIn(false)).isEqualTo(weight);
        assertThat(finding.weightIn(true)).isEqualTo(kind.weight());
    }

    @Test
    void noTwoFindingsShareAWord() {
        assertThat(Arrays.stream(Kind.values()).map(Kind::label)).doesNotHaveDuplicates();
    }
}
