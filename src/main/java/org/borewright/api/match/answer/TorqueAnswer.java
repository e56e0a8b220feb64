package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownTorque;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.TorqueStage;
import org.borewright.fit.shape.MetricThread;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * A reminder of how a group of fasteners is tightened: the engine maker's manual comes first.
 *
 * @param fastener which
 * @param count how many
 * @param thread such as M8 × 1.25; absent for another form
 * @param propertyClass such as 8.8; absent when unknown
 * @param condition of the thread: dry, oiled, paste
 * @param lowestFactor the lowest plausible nut factor K that the check reckons with
 * @param intoAluminium whether it is screwed into aluminium, which gives way first
 * @param renewed whether the fastener is used once
 * @param stages in order
 * @param sequence in words
 * @param checks the pull of each torque against the proof load
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record TorqueAnswer(
        String fastener,
        int count,
        @Nullable String thread,
        @Nullable String propertyClass,
        String condition,
        double lowestFactor,
        boolean intoAluminium,
        boolean renewed,
        List<StageAnswer> stages,
        String sequence,
        List<ShownCheck> checks) {

    /**
     * One stage: a torque or an angle.
     *
     * @param torque to tighten to
     * @param angleDegrees to turn on
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record StageAnswer(
            @Nullable ShownTorque torque, @Nullable Integer angleDegrees) {

        static StageAnswer of(TorqueStage stage) {
            return stage instanceof TorqueStage.ToTorque to
                    ? new StageAnswer(ShownTorque.of(to.torque()), null)
                    : new StageAnswer(null, ((TorqueStage.ByAngle) stage).degrees());
        }
    }

    /** The reminder in a unit. */
    public static TorqueAnswer of(TorqueReminder reminder, LengthUnit unit) {
        Fastener fastener = reminder.fastener();
        return new TorqueAnswer(
                fastener.name(),
                fastener.count(),
                fastener.bolt().thread().map(MetricThread::label).orElse(null),
                fastener.bolt().strength().map(PropertyClass::label).orElse(null),
                fastener.bolt().condition().label(),
                fastener.bolt().condition().lowestFactor(),
                fastener.bolt().intoAluminium(),
                fastener.singleUse().isPresent(),
                fastener.stages().stream().map(StageAnswer::of).toList(),
                fastener.sequence(),
                reminder.checks().stream()
                        .map(check -> ShownCheck.of(check, unit))
                        .toList());
    }
}
