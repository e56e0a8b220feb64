package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.survey;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.kit.request.Condition;
import org.borewright.kit.table.Settling;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings that may be slips are asked about, and nothing is computed from their grid until somebody stands by them. */
class QueriedReadingsMatchTest {

    private static final String SOUND = "70.060 70.040 / 70.050 70.030 / 70.020 70.010";
    private static final String STRAY = "70.060 70.040 / 70.320 70.030 / 70.020 70.010";
    private static final String OPPOSED = "70.080 70.040 / 70.020 70.060 / 70.050 70.010";
    private static final String OTHER = "70.061 70.041 / 70.052 70.033 / 70.021 70.012";

    private final TwinShop shop = new TwinShop();

    private static CylinderSurvey hole(String name, String rows, boolean checked) {
        return new CylinderSurvey(name, Grids.grid(rows), Wall.UNKNOWN, List.of(), checked);
    }

    private Match ask(Condition condition, CylinderSurvey... holes) {
        return shop.ask(shop.request(condition, "standard", List.of(holes)));
    }

    @ParameterizedTest(name = "{0} beside {1}: {2} {3}, then {4}")
    @CsvSource({
        // 2·70.320 − 70 + 0.04 = 70.680, and 2U below it lies a finish of 71.000 less 0.05
        STRAY + ", " + OTHER + ", 1, STRAY, +0.75",
        OPPOSED + ", " + OTHER + ", 1, OPPOSED, +0.50",
        OTHER + ", " + STRAY + ", 2, STRAY, +0.75",
        SOUND + ", " + SOUND + ", 1 2, SAME_GRID, +0.25",
    })
    void noSizeIsCertainUntilSomebodyStandsByTheReadings(
            String first, String second, String cylinders, Query.Kind kind, String size) {
        Match asked = ask(Condition.WORN, hole("1", first, false), hole("2", second, false));

        assertThat(asked.ruling().verdict()).isEqualTo(Verdict.NO_CERTAIN_SIZE);
        assertThat(TwinShop.named(asked)).isEqualTo("-");
        assertThat(TwinShop.table(asked)).doesNotContain("certain").contains("+0.25:possible");
        assertThat(queried(asked)).isEqualTo(cylinders);
        assertThat(asked.ruling().holds().get(0).queries())
                .extracting(Query::kind)
                .containsExactly(kind);
        assertThat(asked.settling().orElseThrow().readings())
                .extracting(Settling.Reading::what)
                .contains(Settling.What.READ_AGAIN)
                .doesNotContain(Settling.What.MEASURE_HOLE);

        Match stoodBy = ask(Condition.WORN, hole("1", first, true), hole("2", second, true));
        assertThat(queried(stoodBy)).isEmpty();
        assertThat(TwinShop.named(stoodBy)).isEqualTo(size);
    }

    /** The cylinders that are queried, each with a hold of its own before all others. */
    private static String queried(Match match) {
        List<Hold> holds = match.ruling().holds().stream()
                .filter(hold -> hold.reason() == Hold.Reason.READINGS_QUERIED)
                .toList();
        assertThat(match.ruling().holds()).startsWith(holds.toArray(Hold[]::new));
        return String.join(
                " ", holds.stream().flatMap(hold -> hold.cylinders().stream()).toList());
    }

    @ParameterizedTest(name = "{0} beside 70.050 at its depth: {1}")
    @CsvSource({"70.200, ''", "70.200001, 1"})
    void aReadingIsQueriedFromTheExactNanometre(String diameter, String cylinders) {
        String rows = "70.050 70.050 / " + diameter + " 70.050 / 70.050 70.050";

        assertThat(queried(ask(Condition.WORN, hole("1", rows, false), hole("2", OTHER, false))))
                .isEqualTo(cylinders);
    }

    @Test
    void ofTwoSameGridsOnlyTheOneNobodyStandsByStaysQueried() {
        assertThat(queried(ask(Condition.WORN, hole("1", SOUND, true), hole("2", SOUND, false))))
                .isEqualTo("2");
    }

    @Test
    void nothingOfAQueriedGridIsShownAsKnown() {
        HoleReport report = ask(Condition.WORN, hole("1", STRAY, false), hole("2", OTHER, false))
                .holes()
                .get(0);

        assertThat(report.shape()).isEmpty();
        assertThat(report.hole().diameters()).isEmpty();
        assertThat(report.hole().wear()).isEmpty();
        assertThat(report.cleanUp().orElseThrow().worst()).isEmpty();
        assertThat(report.cleanUp().orElseThrow().best()).isEmpty();
    }

    @Test
    void aProbedWallMakesNoSizeCertainBesideAQueriedGrid() {
        Wall probed = TwinShop.probed(new Wall.Reach(mm("35.040"), true));
        CylinderSurvey stray = new CylinderSurvey("1", Grids.grid(STRAY), probed, List.of());

        assertThat(TwinShop.table(ask(Condition.WORN, stray, hole("2", OTHER, false))))
                .doesNotContain("certain");
    }

    @Test
    void aWallThatIsNeverBoredIsNotCertainEither() {
        shop.construction = Construction.PLATED;

        Match match = ask(Condition.WORN, hole("1", STRAY, false), survey("2", "70.010"));

        assertThat(TwinShop.table(match)).startsWith("standard:possible");
        assertThat(queried(match)).isEqualTo("1");
    }

    @Test
    void whereNoSizeIsLeftTheReadingsAreAskedAboutFirst() {
        Match match = ask(Condition.WORN, hole("1", STRAY, false), survey("2", "71.000"));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(match.ruling().holds()).extracting(Hold::reason).containsExactly(Hold.Reason.READINGS_QUERIED);
    }

    @Test
    void aCylinderBeyondMachiningIsNotReadAgain() {
        Finding cracked = new Finding(Finding.Kind.CRACKED, Optional.empty(), Optional.empty());
        Match match = ask(Condition.WORN, hole("1", STRAY, false), survey("2", "70.010", cracked));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.REFER);
    }

    @Test
    void aFinishedHoleIsHeldAndBelongsToNoSize() {
        Match match = ask(
                Condition.FINISHED,
                hole("1", "70.008 70.008 / 70.308 70.008 / 70.009 70.008", false),
                survey("2", "70.260"));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(queried(match)).isEqualTo("1");
        assertThat(match.finishedHoles(Condition.FINISHED))
                .extracting(hole -> hole.size().isPresent())
                .containsExactly(false, true);
        assertThat(match.finishedHoles(Condition.FINISHED).get(0).toGo()).isEmpty();
        assertThat(match.bringTogether(Condition.FINISHED)).isEmpty();
    }

    @Test
    void finishedHolesHonedAlikeAreNotQueried() {
        String straight = "70.008 70.008 / 70.008 70.008 / 70.008 70.008";

        Match match = ask(Condition.FINISHED, hole("1", straight, false), hole("2", straight, false));

        assertThat(queried(match)).isEmpty();
        assertThat(TwinShop.named(match)).isEqualTo("standard");
    }
}
