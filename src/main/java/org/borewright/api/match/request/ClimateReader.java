package org.borewright.api.match.request;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.borewright.api.problem.ProblemType;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.Temperature.Scale;

/** Reads what the readings were taken with, and how warm it was. */
final class ClimateReader {

    /** A gauge worse than half a millimetre measures no bore. */
    private static final Length WORST_GAUGE = Length.ofMicrometres(500);

    private ClimateReader() {}

    /** The gauge; what is not said of it is that of the usual bore gauge. */
    static Gauge gauge(Place place, Ruler ruler) {
        Gauge usual = Gauge.USUAL_BORE_GAUGE;
        if (!place.isObject("uncertainty", "resolution")) {
            return usual;
        }
        return new Gauge(
                ruler.above(place.at("uncertainty"), WORST_GAUGE).orElse(usual.expandedUncertainty()),
                ruler.above(place.at("resolution"), WORST_GAUGE).orElse(usual.resolution()));
    }

    static Climate climate(Place degrees, Place scale) {
        Optional<Scale> on =
                scale.isGiven() ? scale.word(List.of(Scale.values()), Scale::symbol) : Optional.of(Scale.CELSIUS);
        return degrees.number()
                .flatMap(typed -> on.flatMap(known -> temperature(degrees, typed, known)))
                .map(Climate::at)
                .orElse(Climate.NOT_STATED);
    }

    private static Optional<Temperature> temperature(Place place, BigDecimal typed, Scale scale) {
        try {
            return Optional.of(Temperature.parse(typed, scale));
        } catch (IllegalArgumentException refused) {
            place.fault(
                    ProblemType.BAD_FIGURE,
                    refused.getMessage() + ".",
                    switch (scale) {
                        case CELSIUS -> "−60 to 200 °C, at most three decimals";
                        case FAHRENHEIT -> "−76 to 392 °F, at most three decimals";
                    });
            return Optional.empty();
        }
    }
}
