package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.TorqueStage;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.shape.BoltShape;
import org.borewright.fit.shape.MetricThread;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.fit.shape.ThreadCondition;
import org.borewright.measure.Torque;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Oiled bolts M8 of class 8.8, proof load 21.2 kN (ISO 898-1): by T = K·d·F and a K of 0.14, the lowest of oiled threads, 90 % of it is pulled
 * by 0.14 · 8 mm · 0.9 · 21.2 kN = 21.4 N·m.
 */
class TorqueReminderTest {

    private static final TorqueStage ANGLE = new TorqueStage.ByAngle(90);

    @ParameterizedTest(name = "{0} mN·m: near the proof load {1}")
    @CsvSource({"5000, false", "21300, false", "21500, true", "40000, true", "5000 40000, true", "40000 5000, true"})
    void aTorqueThatPullsOverNineTenthsOfTheProofLoadIsNear(String torques, boolean near) {
        TorqueStage[] stages = Arrays.stream(torques.split(" "))
                .map(torque -> new TorqueStage.ToTorque(new Torque(Long.parseLong(torque))))
                .toArray(TorqueStage[]::new);

        assertThat(reminder(stages).isNearProofLoad()).isEqualTo(near);
    }

    @ParameterizedTest
    @CsvSource({"5000, false", "40000, true"})
    void anAngleIsNotReckonedFromATorque(long torque, boolean near) {
        TorqueReminder reminder = reminder(new TorqueStage.ToTorque(new Torque(torque)), ANGLE);

        assertThat(reminder.isNearProofLoad()).isEqualTo(near);
        assertThat(reminder.checks()).hasSize(2);
        assertThat(reminder.checks().get(1)).extracting(Check::outcome).isEqualTo(Outcome.NOT_CHECKED);
        assertThat(reminder(ANGLE).isNearProofLoad()).isFalse();
    }

    private static TorqueReminder reminder(TorqueStage... stages) {
        return TorqueReminder.of(new Fastener(
                "cylinder head bolts",
                6,
                new BoltShape(
                        Optional.of(new MetricThread(mm("8"), mm("1.25"))),
                        Optional.of(PropertyClass.CLASS_8_8),
                        ThreadCondition.OILED,
                        true),
                Optional.empty(),
                List.of(stages),
                "crosswise from the middle",
                List.of("strip")));
    }
}
