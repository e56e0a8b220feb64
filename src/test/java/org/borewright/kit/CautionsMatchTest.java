package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Strokes;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Climate;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which cautions stand beside an answer, and which do not. */
class CautionsMatchTest {

    @ParameterizedTest(name = "present size from {0}, {1} °C, {2} mm skimmed: {3} {4}")
    @CsvSource({
        "RECORD, 20, 0, MAKER_FIRST, true",
        "RECORD, 20, 0, TRAINED_PEOPLE, true",
        "RECORD, 20, 0, NEW_CLIPS, true",
        "RECORD, 20, 0, THREADS_IN_ALUMINIUM, true",
        // a four-stroke with rings that are not filed
        "RECORD, 20, 0, PORTS, false",
        "RECORD, 20, 0, FILE_RINGS, false",
        "RECORD, 20, 0, PRESENT_SIZE_HEARSAY, false",
        "MEASURED_PISTON, 20, 0, PRESENT_SIZE_HEARSAY, false",
        "CROWN_STAMP, 20, 0, PRESENT_SIZE_HEARSAY, false",
        "HEARSAY, 20, 0, PRESENT_SIZE_HEARSAY, true",
        "CROWN_STAMP, 20, 0, PRESENT_SIZE_STAMP, true",
        "HEARSAY, 20, 0, PRESENT_SIZE_STAMP, false",
        "RECORD, 25, 0, TEMPERATURE_FAR, false",
        "RECORD, 25.001, 0, TEMPERATURE_FAR, true",
        "RECORD, 14.999, 0, TEMPERATURE_FAR, true",
        "RECORD, , 0, TEMPERATURE_FAR, false",
        "RECORD, , 0, TEMPERATURE_NOT_STATED, true",
        "RECORD, 20, 0, TEMPERATURE_NOT_STATED, false",
        "RECORD, 20, 0, SKIMMED_DECK, false",
        "RECORD, 20, 0.000001, SKIMMED_DECK, true",
    })
    void aCautionStandsWhereItIsDue(
            PresentSize.KnownFrom from, BigDecimal celsius, String skim, Caution caution, boolean due) {
        TwinShop shop = new TwinShop();
        MatchRequest plain = shop.request(Condition.WORN, "standard", TwinShop.surveys("70.010", "70.010"));
        Climate climate = celsius == null
                ? Climate.NOT_STATED
                : Climate.at(Temperature.parse(celsius, Temperature.Scale.CELSIUS));

        Match match = shop.ask(Requests.measured(
                Requests.of(
                        plain.with(TwinShop.skimmed(skim)),
                        new PresentSize(plain.present().size(), from)),
                climate));

        assertThat(match.cautions().contains(caution)).isEqualTo(due);
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource({
        "SLEEVED_ALUMINIUM_BARREL, SLEEVE_IN_ALUMINIUM, true",
        "IRON_BARREL, SLEEVE_IN_ALUMINIUM, false",
        "PLATED, NEVER_BORED, true",
        "BARE_ALUMINIUM_SILICON, NEVER_BORED, true",
        "IRON_BARREL, NEVER_BORED, false",
    })
    void theWallBringsItsOwnCaution(Construction construction, Caution caution, boolean due) {
        TwinShop shop = new TwinShop();
        shop.construction = construction;

        assertThat(shop.worn("standard", "70.010", "70.010").cautions().contains(caution))
                .isEqualTo(due);
    }

    @ParameterizedTest(name = "{0}-stroke, {1}, finished {2}: chamfer {3}, pegs {4}")
    @CsvSource({
        "FOUR, IRON_BARREL, 70.200, false, false",
        // honed, and left as it is
        "TWO, IRON_BARREL, 70.200, true, true",
        "TWO, IRON_BARREL, 70.010, false, true",
        "TWO, PLATED, 70.010, false, true",
    })
    void portsAreChamferedOnlyWhereTheHoleIsCut(
            Strokes strokes, Construction construction, String diameter, boolean chamfer, boolean pegs) {
        TwinShop shop = new TwinShop();
        shop.strokes = strokes;
        shop.construction = construction;
        MatchRequest plain = shop.request(Condition.FINISHED, "standard", TwinShop.surveys(diameter, diameter));

        Match match = shop.ask(Requests.asking(plain, Optional.of(shop.sizes.get(diameter.equals("70.010") ? 0 : 1))));

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.SERVES);
        assertThat(match.cautions().contains(Caution.PORTS)).isEqualTo(chamfer);
        assertThat(match.cautions().contains(Caution.RING_PEGS)).isEqualTo(pegs);
    }

    @ParameterizedTest(name = "axes at {0}: {1} {2}")
    @CsvSource({
        "'', SINGLE_DIAMETER, true",
        "'', TWO_AXES, false",
        "0, TWO_AXES, true",
        "0 90, TWO_AXES, true",
        "0 90, SINGLE_DIAMETER, false",
        "0 60 120, TWO_AXES, false",
        "0 60 120, LOBES, true",
        "0 90, LOBES, false",
        "0 45 90 135, TWO_AXES, false",
        "0 60 119, TWO_AXES, true",
        "0 59 120, TWO_AXES, true",
        "0 45 90, TWO_AXES, true",
        "30 90 150, TWO_AXES, false",
    })
    void aPassSaysWhatItsReadingsCannotSee(String axes, Caution caution, boolean due) {
        TwinShop shop = new TwinShop();
        List<CylinderSurvey> surveys =
                axes.isEmpty() ? TwinShop.surveys("70.010", "70.010") : List.of(round("1", axes), round("2", axes));

        Match match = shop.ask(shop.request(Condition.WORN, "standard", surveys));

        assertThat(match.cautions().contains(caution)).isEqualTo(due);
    }

    /** A hole without wear, read at one depth along some axes. */
    private static CylinderSurvey round(String cylinder, String axes) {
        List<Axis> along = Arrays.stream(axes.split(" ", -1))
                .map(degrees -> new Axis(Integer.parseInt(degrees)))
                .toList();
        Grid grid = new Grid(
                List.of(mm("30")),
                along,
                List.of(along.stream().map(axis -> Optional.of(mm("70.010"))).toList()));
        return new CylinderSurvey(cylinder, grid, Wall.UNKNOWN, List.of());
    }
}
