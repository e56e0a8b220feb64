package org.borewright.api.match.answer;

import java.util.List;
import org.borewright.api.shown.ShownLength;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Reading;

/**
 * A question about readings that may be a slip. Diameters as they were sent, not at 20 °C, so that they can be found in the note.
 *
 * @param says what is odd
 * @param readings the readings in question; empty when it is the whole grid
 * @param beside the readings they were held against
 * @param sameAs the other cylinders with the same grid
 */
public record QueryAnswer(String says, List<ReadingAnswer> readings, List<ReadingAnswer> beside, List<String> sameAs) {

    /**
     * A reading of a grid and its place.
     *
     * @param depth from the deck
     * @param axis thrust, pin, or degrees from thrust
     * @param diameter as it was sent
     */
    public record ReadingAnswer(ShownLength depth, String axis, ShownLength diameter) {

        static ReadingAnswer of(Reading reading, LengthUnit unit) {
            return new ReadingAnswer(
                    ShownLength.of(reading.depth(), unit),
                    reading.axis().label(),
                    ShownLength.of(reading.diameter(), unit));
        }
    }

    static QueryAnswer of(Query query, LengthUnit unit) {
        return new QueryAnswer(
                query.kind().label(), readings(query.readings(), unit), readings(query.beside(), unit), query.sameAs());
    }

    private static List<ReadingAnswer> readings(List<Reading> readings, LengthUnit unit) {
        return readings.stream().map(reading -> ReadingAnswer.of(reading, unit)).toList();
    }
}
