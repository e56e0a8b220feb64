package org.borewright.api.asked;

import java.util.Optional;
import java.util.function.Function;
import org.borewright.api.problem.ProblemType;
import org.borewright.measure.Gauge;
import org.borewright.measure.Gauge.Calibration;
import org.borewright.measure.Length;

/**
 * Holds what a request says of a gauge against the register; its setting ring apart, which belongs to the readings.
 *
 * @param place of the gauge
 * @param ruler for its lengths
 */
record GaugeAgreement(Place place, Ruler ruler) {

    /** Notes every field that says otherwise than the register; what is left out agrees. */
    void check(Gauge described, Gauge registered) {
        Calibration said = described.calibration();
        Calibration kept = registered.calibration();
        agree("kind", Optional.of(described.kind()), Optional.of(registered.kind()), Gauge.Kind::label);
        agreeOnLength("uncertainty", said.expandedUncertainty(), kept.expandedUncertainty());
        agreeOnLength("resolution", described.statedResolution(), registered.statedResolution());
        agreeOnLength("repeatability", Optional.of(described.repeatability()), Optional.of(registered.repeatability()));
        agree("calibratedOn", said.on(), kept.on(), Object::toString);
        agree("due", said.due(), kept.due(), Object::toString);
    }

    /** A length of the register that cannot be typed in the unit of the request agrees with those typed next to it. */
    private void agreeOnLength(String field, Optional<Length> said, Optional<Length> kept) {
        boolean same = said.isPresent() && kept.isPresent() && ruler.isSameAsTyped(said.get(), kept.get());
        agree(field, same ? kept : said, kept, ruler::uncertainty);
    }

    private <T> void agree(String field, Optional<T> said, Optional<T> kept, Function<T, String> shown) {
        Place there = place.at(field);
        if (there.isGiven() && said.isPresent() && !said.equals(kept)) {
            there.fault(
                    ProblemType.GAUGE_DIFFERS,
                    "The register says otherwise of the gauge.",
                    "the register says " + kept.map(shown).orElse("nothing"));
        }
    }
}
