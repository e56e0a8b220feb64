package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.kit.bench.BenchHold.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchHoldsTest {

    private final TwinBench bench = new TwinBench();

    /** Two holes, good pistons of 70.445, and one more: proven wrong it stands in the way only where a hole is left for it. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            GOOD, NUMBER, DIAMETER, READINESS,   HOLD,                    SET ASIDE
            2,    P-050,  70.445,   READY,       ,                        ''
            2,    P-050,  70.300,   READY,       ,                        X
            2,    P-050,  70.460,   READY,       ,                        X
            2,    P-025,  70.195,   READY,       ,                        X
            1,    P-050,  70.445,   READY,       ,                        ''
            1,    P-050,  70.300,   HOLD,        PISTON_MISREAD,          X
            1,    P-050,  70.460,   HOLD,        PISTON_OUT_OF_TOLERANCE, X
            1,    P-025,  70.195,   HOLD,        WRONG_PISTON,            X
            """)
    void aPistonThatIsProvenWrongHoldsOnlyWhereAHoleLacksOne(
            int good, String number, String diameter, Readiness readiness, Reason reason, String aside) {
        List<PistonReading> pistons =
                new ArrayList<>(bench.pistons("P-050", "70.445", "70.445").subList(0, good));
        pistons.add(bench.piston("X", number, mm(diameter), Optional.empty()));

        BenchPlan plan = bench.plan(pistons, "-", "-");

        assertThat(plan.readiness()).isEqualTo(readiness);
        assertThat(plan.holds()).extracting(BenchHold::reason).isEqualTo(reason == null ? List.of() : List.of(reason));
        assertThat(plan.setAside())
                .extracting(PistonInHand::tag)
                .isEqualTo(aside.isEmpty() ? List.of() : List.of(aside));
    }

    @Test
    void everyReasonHasWordsAndAWayOutOfItsOwn() {
        assertThat(Reason.values()).extracting(Reason::label).doesNotHaveDuplicates();
        assertThat(Reason.values()).extracting(Reason::wayOut).doesNotHaveDuplicates();
    }

    @Test
    void whatStandsAgainstTheSizeIsNamedOnce() {
        bench.shop.construction = Construction.PLATED;

        BenchPlan plan = bench.plan(bench.pistons("P-050", "70.445", "70.445"), "70.505", "70.506");

        assertThat(plan.holds())
                .extracting(BenchHold::says)
                .containsExactly("Something else than the wear stands against the size: this wall is never bored.");
    }
}
