package org.borewright.api.match.answer.size;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.kit.ladder.Rung;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One way to restore the engine.
 *
 * @param way what is done
 * @param size it goes to; absent for rings only and for a sleeve
 * @param certainty whether it will do
 * @param open what is not known, or stands against it
 * @param readings that would settle it; absent where none would
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RungAnswer(
        String way,
        @Nullable SizeAnswer size,
        String certainty,
        List<String> open,
        @Nullable List<CouldSaveAnswer.ReadingAnswer> readings) {

    /** The ways of a ladder; absent where it has none. */
    public static @Nullable List<RungAnswer> ladder(List<Rung> rungs, LengthUnit unit) {
        return rungs.isEmpty()
                ? null
                : rungs.stream().map(rung -> RungAnswer.of(rung, unit)).toList();
    }

    private static RungAnswer of(Rung rung, LengthUnit unit) {
        return new RungAnswer(
                rung.way().label(),
                rung.row().map(SizeAnswer::of).orElse(null),
                rung.certainty().label(),
                rung.open(),
                rung.readings().isEmpty()
                        ? null
                        : rung.readings().stream()
                                .map(reading -> CouldSaveAnswer.ReadingAnswer.of(reading, unit))
                                .toList());
    }
}
