package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.Settling;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The smaller size that readings might prove.
 *
 * @param size the possible size
 * @param readings the readings that would settle it, one for each hole in the way
 */
public record CouldSaveAnswer(SizeAnswer size, List<ReadingAnswer> readings) {

    /**
     * A reading that would settle a hole.
     *
     * @param cylinder the hole
     * @param read what to read
     * @param within the figure it must not exceed; absent where there is none
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record ReadingAnswer(
            String cylinder, String read, @Nullable ShownLength within) {}

    static CouldSaveAnswer of(Settling settling, LengthUnit unit) {
        return new CouldSaveAnswer(
                SizeAnswer.of(settling.row()),
                settling.readings().stream()
                        .map(reading -> new ReadingAnswer(
                                reading.cylinder(),
                                reading.what().label(),
                                reading.within()
                                        .map(within -> ShownLength.of(within, unit, Flattery.UPPER_LIMIT))
                                        .orElse(null)))
                        .toList());
    }
}
