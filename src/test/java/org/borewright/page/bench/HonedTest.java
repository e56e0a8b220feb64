package org.borewright.page.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.borewright.page.bench.paper.Answer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hole that two ring sets go into, of which R-2 is made to be filed. */
class HonedTest {

    private static final Answer PLAN = Answer.of("""
            {"holes":[{"ringGaps":[{"groove":"top","ringSet":"R-1"},
             {"groove":"top","ringSet":"R-2","fileTo":{"least":{"value":"0.204","nm":"204000"},"greatest":{"value":"0.5","nm":"500000"}}}]}]}""");

    /** Whoever signs is not asked of rings that were not sold; where nobody knows which were, of all. */
    @ParameterizedTest
    @CsvSource({"R-1, false", "R-2, true", "R-1 R-2, true", "'', true"})
    void whatIsFiledIsARingThatWasSold(String sold, boolean filed) {
        List<String> sets = sold.isEmpty() ? List.of() : List.of(sold.split(" "));

        assertThat(Honed.isToBeFiled(PLAN, sets)).isEqualTo(filed);
    }
}
