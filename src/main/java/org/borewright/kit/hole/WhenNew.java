package org.borewright.kit.hole;

import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Wall;

/**
 * The size a hole had when new, D0: the finish on record, else a reading of unworn wall, else the smallest hole the present size can
 * have had; a smaller reading replaces it, for a hole does not grow smaller (common practice).
 *
 * @param diameter at 20 °C
 * @param from what tells
 */
public record WhenNew(Length diameter, From from) {

    /** What tells the size when new. */
    public enum From {
        /** The finished size on record from the last visit. */
        LAST_FINISH("recorded finish of the last visit"),
        /** A reading where no ring runs. */
        UNWORN_WALL("unworn wall"),
        /** The smallest hole the present size can have had. */
        PRESENT_SIZE("smallest hole of the present size"),
        /** A reading below what the others say. */
        SMALLEST_READING("smallest reading");

        private final String label;

        From(String label) {
            this.label = label;
        }

        /** The words as shown. */
        public String label() {
            return label;
        }
    }

    /** The size when new from the best that is known; empty when nothing tells. */
    static Optional<WhenNew> of(Wall wall, Optional<Length> presentLeast, Optional<Length> smallestReading) {
        Optional<WhenNew> told = wall.lastFinish()
                .map(diameter -> new WhenNew(diameter, From.LAST_FINISH))
                .or(() -> wall.unworn().map(diameter -> new WhenNew(diameter, From.UNWORN_WALL)))
                .or(() -> presentLeast.map(diameter -> new WhenNew(diameter, From.PRESENT_SIZE)));
        return told.map(known -> smallestReading
                .filter(reading -> reading.isLessThan(known.diameter))
                .map(reading -> new WhenNew(reading, From.SMALLEST_READING))
                .orElse(known));
    }
}
