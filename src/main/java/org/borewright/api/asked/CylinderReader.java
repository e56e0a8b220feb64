package org.borewright.api.asked;

import java.util.List;
import java.util.Optional;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Wall;
import org.borewright.measure.survey.Wall.Reach;

/**
 * Reads one hole.
 *
 * @param ruler for its lengths
 * @param condition worn or finished
 */
public record CylinderReader(Ruler ruler, Condition condition) {

    private static final int MOST_FINDINGS = 20;

    /** A wall thicker than this is no wall of a cylinder, and a defect deeper than this no defect in one. */
    private static final Length THICKEST_WALL = Length.ofMicrometres(50_000);

    private static final Length WIDEST_SLEEVE = Length.ofMicrometres(500_000);

    /** The hole; one of no name where it cannot be read, which is noted. */
    public CylinderSurvey read(Place place) {
        if (!place.isObject(
                "cylinder",
                "diameter",
                "grid",
                "readingsChecked",
                "lastFinish",
                "unwornWall",
                "wallReach",
                "sleevedBefore",
                "sleeveOutside",
                "leastWall",
                "findings",
                "presentPiston",
                "grooves",
                "ridge",
                "glaze")) {
            if (!place.isGiven()) {
                place.wrongForm("a cylinder");
            }
            return CylinderSurvey.unsurveyed("");
        }
        place.at("cylinder").need("The name of the cylinder is missing.");
        SurveyReader readings = new SurveyReader(ruler);
        return new CylinderSurvey(
                place.at("cylinder").text().orElse(""),
                readings.read(place, condition == Condition.FINISHED),
                wall(place),
                findings(place.at("findings")),
                readings.readAgain(place));
    }

    private Wall wall(Place place) {
        return new Wall(
                ruler.diameter(place.at("lastFinish")),
                ruler.diameter(place.at("unwornWall")),
                reach(place.at("wallReach")),
                ruler.above(place.at("sleeveOutside"), WIDEST_SLEEVE),
                ruler.above(place.at("leastWall"), THICKEST_WALL),
                place.at("sleevedBefore").truth().orElse(false));
    }

    private Optional<Reach> reach(Place place) {
        if (!place.isObject("radius", "fromBarAxis")) {
            return Optional.empty();
        }
        place.at("radius").need("The probed radius is missing.");
        place.at("fromBarAxis").need("It is not said whether the radius was taken from the bar's own axis.");
        Optional<Boolean> fromBarAxis = place.at("fromBarAxis").truth();
        return ruler.radius(place.at("radius")).flatMap(radius -> fromBarAxis.map(from -> new Reach(radius, from)));
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
