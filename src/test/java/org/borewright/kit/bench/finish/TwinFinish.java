package org.borewright.kit.bench.finish;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.RingSet;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.TwinBench;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;

/** Both holes of the {@link TwinBench} finished to +0.50 and measured again. */
final class TwinFinish {

    static final String GOOD = "70.504 70.505 70.505 70.506 70.505 70.505";
    static final String GOOD_TOO = "70.505 70.504 70.505 70.505 70.506 70.505";

    final TwinBench bench = new TwinBench();

    /** Whether a ring set is named. */
    boolean ringsNamed = true;

    /** Whether somebody says that the rings are filed. */
    boolean ringsFiled;

    Finish judge(boolean atRoomTemperature, String first, String second) {
        return judge(atRoomTemperature, survey(first), survey(second));
    }

    Finish judge(boolean atRoomTemperature, Survey first, Survey second) {
        List<PistonReading> pistons = bench.pistons("P-050", "70.445", "70.445");
        return Finish.of(
                bench.fits(),
                request(pistons, List.of(fitted("1", first, "A"), fitted("2", second, "B")), atRoomTemperature));
    }

    FinishRequest request(List<PistonReading> pistons, List<FittedHole> holes, boolean atRoomTemperature) {
        return new FinishRequest(
                bench.choice(),
                rings(),
                pistons,
                bench.weighed,
                holes,
                bench.deck,
                bench.ofHoles(),
                TwinBench.ofPistons(),
                atRoomTemperature,
                ringsFiled,
                TwinShop.DAY);
    }

    FittedHole fitted(String cylinder, Survey survey, String tag) {
        return new FittedHole(
                survey(cylinder, survey),
                bench.pistons("P-050", "70.445").get(0).part(),
                Optional.of(tag).filter(text -> !text.isEmpty()));
    }

    static CylinderSurvey survey(String cylinder, Survey survey) {
        return new CylinderSurvey(cylinder, survey, Wall.UNKNOWN, List.of());
    }

    /** Three depths by thrust and pin, row by row. */
    static Grid survey(String readings) {
        return Grids.crosswise(
                Arrays.stream(readings.split(" ", -1)).map(TwinShop::mm).toList());
    }

    static Grid grid(Length everywhere) {
        return survey(
                String.join(" ", Collections.nCopies(6, everywhere.toString().replace(" mm", ""))));
    }

    private Optional<RingSet> rings() {
        return bench.choice().ringSets().stream().findFirst().filter(set -> ringsNamed);
    }
}
