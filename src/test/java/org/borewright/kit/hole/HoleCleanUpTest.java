package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What one hole of the twin needs, new at 70.000 mm and read as 70.010 at 10 mm from the deck, 70.100 at 45 and 70.020 at 90: worst 2·D
 * − 70.000 + 0.04 + 2d, best D + 2d, by the hone D + 0.005 + 2d, each at its place.
 */
class HoleCleanUpTest {

    private static final List<Length> DEPTHS = List.of(mm("10"), mm("45"), mm("90"));

    @ParameterizedTest(name = "{0} {1} deep at {2}: worst {3}, best {4}, hone {5}")
    @CsvSource({
        // the largest place without a defect
        ", , , 70.240, 70.100, 70.105",
        "BROKEN_FIN, 0.3, 45, 70.240, 70.100, 70.105",
        // at the worst place, where nobody noted the height
        "SCORED, 0.05, , 70.340, 70.200, 70.205",
        "SCORED, 0.05, 45, 70.340, 70.200, 70.205",
        // elsewhere it counts there, and the largest place still decides: 70.180 and 70.120 at 90 mm
        "SCORED, 0.05, 90, 70.240, 70.120, 70.125",
        // 2·70.020 − 70 + 0.04 + 2·0.08 = 70.240, and a nanometre deeper
        "SCORED, 0.08, 90, 70.240, 70.180, 70.185",
        "SCORED, 0.080001, 90, 70.240002, 70.180002, 70.185002",
        "PITTED, 0.2, 10, 70.460, 70.410, 70.415",
        // between two rows on the larger of them; where nothing was read on the largest of all
        "SCORED, 0.05, 60, 70.340, 70.200, 70.205",
        "SCORED, 0.05, 120, 70.340, 70.200, 70.205",
        "SCORED, 0.05, 9.999999, 70.340, 70.200, 70.205",
        // no depth: the worst is not known
        "SCORED, , 90, , 70.100, 70.105",
        "SLEEVE_LOOSE, , , , 70.100, 70.105",
    })
    void aDefectCountsWhereItLies(
            Finding.Kind kind, String depth, String height, String worst, String best, String hone) {
        Hole hole = hole(
                grid("70.010", "70.100", "70.020"),
                Wall.UNKNOWN,
                kind == null ? List.of() : List.of(new Finding(kind, length(depth), length(height))));

        assertThat(hole.cleanUp().worst()).isEqualTo(length(worst));
        assertThat(hole.cleanUp().best()).isEqualTo(length(best));
        assertThat(hole.honeCleanUp()).isEqualTo(length(hone));
    }

    /** 2·(r − e), or 2·r from the bar's own axis; nothing is ruled out by a probe of a hole in which something else is open. */
    @ParameterizedTest(name = "{0}, from the bar''s axis {1}, {2} {3} deep: from {4}")
    @CsvSource({
        "35.060, false, , , 70.080",
        "35.060, true, , , 70.120",
        "35.060, true, SCORED, 0.03, 70.120",
        "35.060, true, SCORED, , ",
        "35.060, true, SLEEVE_LOOSE, , ",
        "35.060, true, STAIN, , 70.120",
        // shorter than half the diameter: the probe is not believed
        "35.040, true, , , ",
    })
    void theBarReachesAProbedWallFromWhereItStands(
            String radius, boolean fromBarAxis, Finding.Kind kind, String depth, String reach) {
        Wall wall = TwinShop.probed(new Wall.Reach(mm(radius), fromBarAxis));
        List<Finding> findings = kind == null ? List.of() : List.of(new Finding(kind, length(depth), Optional.empty()));

        assertThat(hole(grid("70.010", "70.100", "70.020"), wall, findings)
                        .cleanUp()
                        .reach())
                .isEqualTo(length(reach));
    }

    /**
     * A probed wall decides alone, 2·(r + e), or 2·r from the bar's own axis. A finding is cut out behind it, but where its height is known
     * needs no more than all wear on one wall there: at 90 mm 2·70.020 − 70 + 0.04 + 2d.
     */
    @ParameterizedTest(name = "{0}, from the bar''s axis {1}, scored {2} at {3}: worst {4}")
    @CsvSource({
        "35.060, false, , , 70.160",
        "35.060, true, , , 70.120",
        "35.060, false, 0.03, , 70.220",
        "35.060, true, 0.03, , 70.180",
        // at the largest place the wall probed is the nearer bound: 70.240 + 2d
        "35.060, false, 0.03, 45, 70.220",
        // 70.080 + 2d at 90 mm: beside the wall itself until it passes it
        "35.060, false, 0.03, 90, 70.160",
        "35.060, false, 0.04, 90, 70.160",
        "35.060, false, 0.040001, 90, 70.160002",
        "35.060, true, 0.03, 90, 70.140",
        "35.060, true, 0.06, 90, 70.200",
    })
    void behindAProbedWallAFindingIsCutOutAndNoMoreThanItsPlaceNeeds(
            String radius, boolean fromBarAxis, String depth, String height, String worst) {
        Wall wall = TwinShop.probed(new Wall.Reach(mm(radius), fromBarAxis));
        List<Finding> findings = depth == null
                ? List.of()
                : List.of(
                        new Finding(Finding.Kind.SCORED, length("0.01"), length("10")),
                        new Finding(Finding.Kind.SCORED, length(depth), length(height)));

        assertThat(hole(grid("70.010", "70.100", "70.020"), wall, findings)
                        .cleanUp()
                        .worst())
                .contains(mm(worst));
    }

    private static Hole hole(Survey survey, Wall wall, List<Finding> findings) {
        TwinShop shop = new TwinShop();
        CylinderSurvey first = new CylinderSurvey("1", survey, wall, findings);
        return shop.ask(shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.000"))))
                .holes()
                .get(0)
                .hole();
    }

    private static Grid grid(String... rows) {
        return new Grid(
                DEPTHS,
                List.of(Axis.THRUST, Axis.PIN),
                Arrays.stream(rows)
                        .map(row -> List.of(Optional.of(mm(row)), Optional.of(mm("70.005"))))
                        .toList());
    }

    private static Optional<Length> length(String millimetres) {
        return Optional.ofNullable(millimetres).map(TwinShop::mm);
    }
}
