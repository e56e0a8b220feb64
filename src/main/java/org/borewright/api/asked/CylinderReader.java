package org.borewright.api.asked;

import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Wall;
import org.borewright.measure.survey.Wall.Reach;

/**
 * Reads one hole.
 *
 * @param ruler for its lengths
 */
public record CylinderReader(Ruler ruler) {

    private static final Length WIDEST_SLEEVE = Length.ofMicrometres(500_000);

    /** The hole; one of no name where it cannot be read, which is noted. */
    public CylinderSurvey read(Place place) {
        return new SurveyReader(ruler)
                .read(
                        place,
                        this::wall,
                        "lastFinish",
                        "unwornWall",
                        "wallReach",
                        "sleevedBefore",
                        "sleeveOutside",
                        "leastWall",
                        "presentPiston",
                        "grooves",
                        "ridge",
                        "glaze");
    }

    private Wall wall(Place place) {
        return new Wall(
                ruler.diameter(place.at("lastFinish")),
                ruler.diameter(place.at("unwornWall")),
                reach(place.at("wallReach")),
                ruler.above(place.at("sleeveOutside"), WIDEST_SLEEVE),
                ruler.above(place.at("leastWall"), SurveyReader.THICKEST_WALL),
                place.at("sleevedBefore").truth().orElse(false));
    }

    private Optional<Reach> reach(Place place) {
        if (!place.isObject("radius", "fromBarAxis", "uncertainty")) {
            return Optional.empty();
        }
        place.at("radius").need("The probed radius is missing.");
        place.at("fromBarAxis").need("It is not said whether the radius was taken from the bar's own axis.");
        Optional<Boolean> fromBarAxis = place.at("fromBarAxis").truth();
        Optional<Length> uncertainty = ruler.above(place.at("uncertainty"), GaugeReader.WORST_GAUGE);
        return ruler.radius(place.at("radius"))
                .flatMap(radius -> fromBarAxis.map(from -> new Reach(radius, from, uncertainty)));
    }
}
