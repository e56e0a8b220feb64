package org.borewright.api.match.answer.size;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownCloser;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.table.Settling;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The smaller size that readings might prove.
 *
 * @param size the possible size
 * @param readings the readings that would settle it, for each hole in the way one, or several of which any may do
 */
public record CouldSaveAnswer(SizeAnswer size, List<ReadingAnswer> readings) {

    /**
     * A reading that would settle a hole.
     *
     * @param cylinder the hole
     * @param read what to read
     * @param within the radius from the original axis that it must not exceed; absent where there is none
     * @param withinFromBarAxis the radius from the bar's own axis that it must not exceed; absent where there is none
     * @param heights the measured depths below the deck at which the finding may lie; absent where it is something else
     * @param next with which gauge, in the words of a check that is too close to call; absent where no better gauge is all that is wanting
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record ReadingAnswer(
            String cylinder,
            String read,
            @Nullable ShownLength within,
            @Nullable ShownLength withinFromBarAxis,
            @Nullable List<ShownLength> heights,
            @Nullable String next) {

        static ReadingAnswer of(Settling.Reading reading, LengthUnit unit) {
            return new ReadingAnswer(
                    reading.cylinder(),
                    reading.what().label(),
                    shown(reading.within(), unit),
                    shown(reading.withinFromBarAxis(), unit),
                    reading.heights().isEmpty()
                            ? null
                            : reading.heights().stream()
                                    .map(height -> ShownLength.of(height, unit))
                                    .toList(),
                    reading.gauge().map(better -> ShownCloser.of(better, unit)).orElse(null));
        }

        private static @Nullable ShownLength shown(Optional<Length> figure, LengthUnit unit) {
            return figure.map(length -> ShownLength.of(length, unit, Flattery.UPPER_LIMIT))
                    .orElse(null);
        }
    }

    /** The size and its readings, in a unit; absent when there is none. */
    public static @Nullable CouldSaveAnswer of(Optional<Settling> settling, LengthUnit unit) {
        return settling.map(saving -> new CouldSaveAnswer(
                        SizeAnswer.of(saving.row()),
                        saving.readings().stream()
                                .map(reading -> ReadingAnswer.of(reading, unit))
                                .toList()))
                .orElse(null);
    }
}
