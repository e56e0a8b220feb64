package org.borewright.api.match.request;

import java.util.List;
import java.util.Optional;
import org.borewright.api.asked.ClimateReader;
import org.borewright.api.asked.Opening;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.AsFound.Glaze;
import org.borewright.kit.request.AsFound.Grooves;
import org.borewright.kit.request.AsFound.Ridge;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Measuring;

/**
 * Reads what was seen of the piston in a hole and of its wall.
 *
 * @param opening of the question
 * @param warm how warm the pistons were
 */
record AsFoundReader(Opening opening, Climate warm) {

    /** How warm the holes were tells nothing of the pistons: a warm piston against a cold bore is the classic wrong clearance. */
    static AsFoundReader of(Opening opening) {
        return new AsFoundReader(opening, ClimateReader.climate(opening.at("pistonTemperature"), opening.scale()));
    }

    /** What stands beside the survey of a cylinder. */
    AsFound read(Place cylinder) {
        return new AsFound(
                piston(cylinder.at("presentPiston")),
                cylinder.at("grooves").word(List.of(Grooves.values()), Grooves::label),
                cylinder.at("ridge").word(List.of(Ridge.values()), Ridge::label),
                cylinder.at("glaze").word(List.of(Glaze.values()), Glaze::label));
    }

    private PresentPiston piston(Place place) {
        if (!place.isObject("number", "design", "diameter", "gauge")) {
            return PresentPiston.NOT_TOLD;
        }
        if (place.at("number").isGiven() && place.at("design").isGiven()) {
            place.at("design").fault(ProblemType.WRONG_FORM, "The number tells the design already.", "one of the two");
        }
        Optional<Piston> part = part(place.at("number"));
        Optional<PistonDesign> design =
                part.flatMap(known -> design(known.design())).or(() -> design(place.at("design")));
        return new PresentPiston(
                design,
                part,
                opening.ruler().piston(place.at("diameter")),
                new Measuring(opening.gauge(place.at("gauge"), Gauge.Kind.MICROMETER), warm));
    }

    private Optional<Piston> part(Place place) {
        Optional<String> number = place.text();
        List<Piston> pistons =
                opening.shelf().map(known -> known.parts().pistons()).orElse(List.of());
        Optional<Piston> part = number.flatMap(typed -> pistons.stream()
                .filter(piston -> piston.number().text().equals(typed))
                .findFirst());
        if (number.isPresent() && part.isEmpty() && opening.shelf().isPresent()) {
            place.unknownWord(
                    ProblemType.UNKNOWN_PART,
                    number.get(),
                    pistons.stream().map(piston -> piston.number().text()).toList());
        }
        return part;
    }

    private Optional<PistonDesign> design(Place place) {
        return opening.shelf().flatMap(shelf -> place.word(shelf.parts().designs(), PistonDesign::code));
    }

    private Optional<PistonDesign> design(String code) {
        return opening.shelf()
                .flatMap(known -> known.parts().designs().stream()
                        .filter(design -> design.code().equals(code))
                        .findFirst());
    }
}
