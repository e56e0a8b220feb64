package org.borewright.kit.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.TorqueStage;
import org.borewright.fit.shape.BoltShape;
import org.borewright.fit.shape.MetricThread;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.fit.shape.ThreadCondition;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.measure.Torque;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which cautions are due. */
class CautionsTest {

    /** 23.780 857 N·m pull the whole proof load (ISO 898-1) of an oiled M8 × 1.25 of class 8.8, nine tenths of them 90 %. */
    @ParameterizedTest(name = "into aluminium {0}, {1} mN·m: {2}")
    @CsvSource({
        "false, 21402, ''",
        "true, 21402, THREADS_IN_ALUMINIUM",
        "false, 21403, NEAR_PROOF_LOAD",
        "true, 21403, THREADS_IN_ALUMINIUM NEAR_PROOF_LOAD",
    })
    void aThreadInAluminiumAndAPullNearTheProofLoadAreNamed(boolean aluminium, int torque, String due) {
        Fastener bolts = new Fastener(
                "cylinder head bolts",
                6,
                new BoltShape(
                        Optional.of(new MetricThread(TwinShop.mm("8"), TwinShop.mm("1.25"))),
                        Optional.of(PropertyClass.CLASS_8_8),
                        ThreadCondition.OILED,
                        aluminium),
                Optional.empty(),
                List.of(new TorqueStage.ToTorque(new Torque(torque))),
                "crosswise from the middle",
                List.of("strip"));

        assertThat(new Cautions().ofTorques(List.of(TorqueReminder.of(bolts))).told())
                .extracting(Enum::name)
                .containsAll(List.of("MAKER_FIRST", "TRAINED_PEOPLE"))
                .filteredOn(name -> !name.equals("MAKER_FIRST") && !name.equals("TRAINED_PEOPLE"))
                .isEqualTo(due.isEmpty() ? List.of() : List.of(due.split(" ")));
    }
}
