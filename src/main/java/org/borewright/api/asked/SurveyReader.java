package org.borewright.api.asked;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.ProblemType;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;

/**
 * Reads what was measured of a hole and seen in it.
 *
 * @param ruler for its lengths
 */
public record SurveyReader(Ruler ruler) {

    /** A wall thicker than this is no wall of a cylinder, and a defect deeper than this no defect in one. */
    static final Length THICKEST_WALL = Length.ofMicrometres(50_000);

    private static final int MOST_FINDINGS = 20;

    /** A hole of whose wall nothing is asked; one of no name where it cannot be read, which is noted. */
    public CylinderSurvey read(Place place, String... besides) {
        return read(place, unasked -> Wall.UNKNOWN, besides);
    }

    /**
     * The same with its wall.
     *
     * @param wall reads that
     * @param besides what else may be said of the hole
     */
    CylinderSurvey read(Place place, Function<Place, Wall> wall, String... besides) {
        String[] known = Stream.concat(
                        Stream.of("cylinder", "diameter", "grid", "readingsChecked", "findings"), Stream.of(besides))
                .toArray(String[]::new);
        if (!place.isObject(known)) {
            if (!place.isGiven()) {
                place.wrongForm("a cylinder");
            }
            return CylinderSurvey.unsurveyed("");
        }
        place.at("cylinder").need("The name of the cylinder is missing.");
        return new CylinderSurvey(
                place.at("cylinder").text().orElse(""),
                readings(place),
                wall.apply(place),
                findings(place.at("findings")),
                readAgain(place));
    }

    /** Whether a person read the places of its grid again and stands by them; only a grid is ever queried, so that there must be one. */
    private boolean readAgain(Place place) {
        Place checked = place.at("readingsChecked");
        boolean stands = checked.truth().orElse(false);
        if (stands && !place.at("grid").isGiven()) {
            checked.add(Fault.of(
                            ProblemType.WRONG_FORM,
                            checked.pointer(),
                            "It answers a query of a grid, and no grid is given: a single diameter is never queried.")
                    .sent(true)
                    .against("a grid beside it")
                    .wayOut("Leave it out, or send the grid that was read again."));
        }
        return stands;
    }

    /** One diameter or a grid. */
    private Survey readings(Place place) {
        Place diameter = place.at("diameter");
        Place grid = place.at("grid");
        if (diameter.isGiven() && grid.isGiven()) {
            grid.fault(ProblemType.WRONG_FORM, "A single diameter and a grid are both given.", "one of the two");
        }
        return grid.isGiven()
                ? new GridReader(ruler).read(grid)
                : ruler.diameter(diameter).<Survey>map(SingleDiameter::new).orElseGet(NotMeasured::new);
    }

    private List<Finding> findings(Place place) {
        return place.items(MOST_FINDINGS, "findings").stream()
                .flatMap(item -> finding(item).stream())
                .toList();
    }

    private Optional<Finding> finding(Place place) {
        if (!place.isObject("kind", "depth", "height")) {
            if (!place.isGiven()) {
                place.wrongForm("a finding");
            }
            return Optional.empty();
        }
        place.at("kind").need("It is not said what was found.");
        Optional<Length> depth = ruler.above(place.at("depth"), THICKEST_WALL);
        Optional<Length> height = ruler.belowDeck(place.at("height"));
        return place.at("kind")
                .word(List.of(Finding.Kind.values()), Finding.Kind::label)
                .map(kind -> new Finding(kind, depth, height));
    }
}
