package org.borewright.kit.choice;

import java.util.List;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.TorqueStage;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.TorquePreload;
import org.borewright.fit.Unchecked;

/**
 * A group of fasteners to tighten, and what their torque pulls. A reminder: the engine maker's manual comes first.
 *
 * @param fastener the group
 * @param checks the pull of each torque stage against the proof load
 */
public record TorqueReminder(Fastener fastener, List<Check> checks) {

    /** The reminder for a group of fasteners. */
    public static TorqueReminder of(Fastener fastener) {
        return new TorqueReminder(
                fastener,
                fastener.stages().stream().map(stage -> check(fastener, stage)).toList());
    }

    /** Whether a torque pulls over 90 % of the proof load. */
    public boolean isNearProofLoad() {
        return checks.stream()
                .anyMatch(check -> check instanceof Comparison pull && TorquePreload.isNearProofLoad(pull));
    }

    private static Check check(Fastener fastener, TorqueStage stage) {
        return stage instanceof TorqueStage.ToTorque to
                ? TorquePreload.check(fastener.name(), to.torque(), fastener.bolt())
                : new Unchecked(
                        Rule.PRELOAD,
                        fastener.name(),
                        Outcome.NOT_CHECKED,
                        "an angle stage is not reckoned from a torque");
    }
}
