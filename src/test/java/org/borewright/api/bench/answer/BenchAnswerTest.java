package org.borewright.api.bench.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.kit.TwinShop;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.TwinBench;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchAnswerTest {

    private static final String READY =
            "Ready: every hole has its measured piston, and its size and window stand with it.";

    private final TwinBench bench = new TwinBench();

    /** What goes into no hole and is good needs no word; C is read amiss. */
    @ParameterizedTest
    @CsvSource({
        "70.445 70.445, ''",
        "70.445 70.445 70.445, ''",
        "70.445 70.445 70.300, ' Set aside, for it is proven wrong: piston C.'",
        "70.445 70.300 70.445 70.300, ' Set aside, for it is proven wrong: piston B, piston D.'"
    })
    void aPistonThatIsSetAsideIsNamed(String pistons, String aside) {
        BenchRequest request = bench.request(
                bench.pistons("P-050", pistons.split(" ", -1)), TwinShop.surveys("-", "-"), TwinBench.ofPistons());

        BenchPlan plan = BenchPlan.of(bench.fits(), request);

        assertThat(BenchAnswer.of(bench.fits(), request, plan, LengthUnit.MILLIMETRE)
                        .says())
                .isEqualTo(READY + aside);
    }
}
