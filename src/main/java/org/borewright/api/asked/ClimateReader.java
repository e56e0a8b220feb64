package org.borewright.api.asked;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.borewright.api.problem.ProblemType;
import org.borewright.measure.Climate;
import org.borewright.measure.Temperature;
import org.borewright.measure.Temperature.Scale;

/** Reads how warm it was. */
public final class ClimateReader {

    private ClimateReader() {}

    /** The scale of all temperatures; empty when it is none that is known. */
    public static Optional<Scale> scale(Place place) {
        return place.isGiven() ? place.word(List.of(Scale.values()), Scale::symbol) : Optional.of(Scale.CELSIUS);
    }

    /** How warm it was; not stated where nothing was sent. */
    public static Climate climate(Place degrees, Optional<Scale> scale) {
        return temperature(degrees, scale).map(Climate::at).orElse(Climate.NOT_STATED);
    }

    /** A temperature. */
    public static Optional<Temperature> temperature(Place place, Optional<Scale> scale) {
        return place.number().flatMap(typed -> scale.flatMap(known -> temperature(place, typed, known)));
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
