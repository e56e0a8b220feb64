package org.borewright.kit.rings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.catalog.PistonDesign;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.Suitability;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.Choke;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.AsFound.Glaze;
import org.borewright.kit.request.AsFound.Grooves;
import org.borewright.kit.request.AsFound.Ridge;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of each condition for new rings alone in the first hole of the twin, new at 70.000 mm. */
class ConditionsTest {

    private static final String WORN = "70.060 70.045 / 70.050 70.040 / 70.030 70.025";

    private final TwinShop shop = new TwinShop();
    private String present = "standard";
    private Survey read = grid(WORN);
    private List<Finding> findings = List.of();
    private AsFound found = AsFound.NOT_TOLD;
    private boolean knownDesign;
    private boolean suppliedRings;

    @ParameterizedTest(name = "{0} in {1}: {2}, {3}")
    @CsvSource(delimiter = '|', textBlock = """
            ''                  | IRON_BARREL | IN      | nothing
            STAIN               | IRON_BARREL | IN      | nothing
            STAIN BROKEN_FIN    | IRON_BARREL | IN      | nothing
            SCORED              | IRON_BARREL | OUT     | scored
            SCORED STAIN PITTED | IRON_BARREL | OUT     | scored, pitted
            FINISH_POOR         | PLATED      | OUT     | finish poor
            SCORED              | PLATED      | OUT     | scored
            CRACKED             | IRON_BARREL | OUT     | cracked
            SLEEVE_LOOSE SCORED | IRON_BARREL | UNKNOWN | take smeared aluminium off and refit a loose sleeve, then measure again
            SMEARED_ALUMINIUM   | IRON_BARREL | UNKNOWN | take smeared aluminium off and refit a loose sleeve, then measure again
            """)
    void whatMustBeCutIsNamed(String kinds, Construction construction, Outcome outcome, String told) {
        shop.construction = construction;
        findings = Arrays.stream(kinds.split(" "))
                .filter(kind -> !kind.isEmpty())
                .map(kind -> new Finding(Finding.Kind.valueOf(kind), Optional.empty(), Optional.empty()))
                .toList();

        Check check = asked(Rule.NOTHING_TO_CUT);

        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(told(check)).isEqualTo(told);
    }

    @ParameterizedTest(name = "{0} in an engine of {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            70.060 70.045                                   | standard | 70.060 mm
            70.060                                          | standard | 70.060 mm
            -                                               | standard | measure the hole: along two axes at three depths at the least
            70.060 70.040 / 70.320 70.030 / 70.020 70.010   | standard | read the queried places again
            70.060 70.045                                   | -        | find out the present size: from a record, or from a measured piston
            -                                               | -        | measure the hole: along two axes at three depths at the least
            """)
    void theWearWantsADiameterAndThePresentSize(String rows, String size, String told) {
        read = read(rows);
        present = size;

        Check check = asked(Rule.SERVICE_WEAR);

        assertThat(told(check)).isEqualTo(told);
        assertThat(check.outcome()).isEqualTo(check instanceof Unchecked ? Outcome.UNKNOWN : Outcome.IN);
    }

    /** Pistons and rings are two questions: without pistons nobody knows which rings, without rings nobody can have any. */
    @ParameterizedTest(name = "{0}, pistons known {1}, rings supplied {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            70.060 70.045 / 70.050 70.040 / 70.030 70.025 | false | false | find out which piston is in the hole: its rings are not known before
            70.060 70.045 / 70.050 70.040 / 70.030 70.025 | true  | false | no ring set of the present size is supplied with pin and clips that fit this piston
            70.060 70.045 / 70.050 70.040 / 70.030 70.025 | true  | true  | 0.638496 mm
            70.060 70.045 / 70.050 70.040                 | true  | true  | measure the hole along two axes at three depths at the least, over the travel of the rings
            70.060                                        | true  | true  | measure the hole along two axes at three depths at the least, over the travel of the rings
            """)
    void theGapsWantPistonsRingsAndAGrid(String rows, boolean pistons, boolean rings, String told) {
        read = read(rows);
        knownDesign = pistons;
        suppliedRings = rings;

        assertThat(told(asked(Rule.SERVICE_RING_GAP))).isEqualTo(told);
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            70.060 70.045 / 70.050 70.040 / 70.030 70.025 | 0.030 mm | 0.015 mm
            70.060 70.045 / 70.050 70.040                 | measure the hole at three depths at the least, over half the stroke or more, along two axes 45° apart or more | measure the hole at three depths at the least, over half the stroke or more, along two axes 45° apart or more
            70.060                                        | measure the hole at three depths at the least, over half the stroke or more, along two axes 45° apart or more | measure the hole at three depths at the least, over half the stroke or more, along two axes 45° apart or more
            """)
    void theShapeWantsEnoughOfTheHoleRead(String rows, String taper, String outOfRound) {
        read = read(rows);

        assertThat(told(asked(Rule.SERVICE_TAPER))).isEqualTo(taper);
        assertThat(told(asked(Rule.SERVICE_OUT_OF_ROUND))).isEqualTo(outOfRound);
    }

    /** 0.030 mm wider at the bottom across the thrust faces, 0.020 along the pin. */
    @ParameterizedTest(name = "choke {0} to {1}: {2} beyond it")
    @CsvSource({"0.020, 0.030, 0.000 mm", "0.020, 0.025, 0.005 mm", "0.022, 0.030, 0.002 mm"})
    void aChokeOfTheMakersIsNoTaper(Length least, Length greatest, String beyond) {
        shop.choke = Optional.of(new Choke(new Limits(least, greatest)));
        read = grid("70.030 70.025 / 70.045 70.035 / 70.060 70.045");

        assertThat(told(asked(Rule.SERVICE_TAPER))).isEqualTo(beyond);
        assertThat(told(asked(Rule.SERVICE_OUT_OF_ROUND))).isEqualTo("0.015 mm");
    }

    @ParameterizedTest(name = "{0}: grooves {1}, ridge {2}, glaze {3}")
    @CsvSource(delimiter = '|', textBlock = """
            IRON_BARREL | GOOD | OFF   | BROKEN     | good IN  | off IN    | broken IN
            IRON_BARREL | WORN | THERE | NOT_BROKEN | worn OUT | there OUT | not broken OUT
            IRON_BARREL | GOOD | NONE  | BROKEN     | good IN  | none IN   | broken IN
            PLATED      | GOOD | OFF   | BROKEN     | good IN  | off IN    | this wall is never honed NOT_CHECKED
            PLATED      | GOOD | OFF   | NOT_BROKEN | good IN  | off IN    | this wall is never honed NOT_CHECKED
            IRON_BARREL |      |       |            | clean the grooves and try a new ring in each: are they good or worn? UNKNOWN | feel for a ridge above the travel of the top ring: is it off, there, or was there none? UNKNOWN | look whether the glaze is broken UNKNOWN
            PLATED      | GOOD | OFF   |            | good IN  | off IN    | this wall is never honed NOT_CHECKED
            """)
    void whatTheEyeAndTheFingerFindIsToldAsItWasFound(
            Construction construction,
            Grooves grooves,
            Ridge ridge,
            Glaze glaze,
            String ofGrooves,
            String ofRidge,
            String ofGlaze) {
        shop.construction = construction;
        found = new AsFound(
                PresentPiston.NOT_TOLD,
                Optional.ofNullable(grooves),
                Optional.ofNullable(ridge),
                Optional.ofNullable(glaze));

        assertThat(List.of(asked(Rule.GROOVES), asked(Rule.RIDGE), asked(Rule.GLAZE)))
                .extracting(check -> told(check) + " " + check.outcome())
                .containsExactly(ofGrooves, ofRidge, ofGlaze);
    }

    /** What nobody told is the same in every answer, and said once. */
    @ParameterizedTest(name = "{0}, present size {1}, pistons known {2}")
    @CsvSource({"-, standard, false", "-, -, true", "70.060, -, true"})
    void whatIsNotKnownOfAHoleStandsInOneList(String rows, String size, boolean pistons) {
        read = read(rows);
        present = size;
        knownDesign = pistons;

        assertThat(RingsOnly.untold())
                .containsAll(asked().stream()
                        .filter(check -> check.outcome() == Outcome.UNKNOWN)
                        .toList())
                .doesNotHaveDuplicates();
    }

    private static Survey read(String rows) {
        if (rows.equals("-")) {
            return new NotMeasured();
        }
        return rows.contains(" ") ? grid(rows) : new SingleDiameter(mm(rows));
    }

    /** At 10, 60 and 110 mm from the deck. */
    private static Grid grid(String rows) {
        return Grids.grid(rows, List.of(mm("10"), mm("60"), mm("110")));
    }

    private static String told(Check check) {
        if (check instanceof Unchecked unchecked) {
            return unchecked.reason();
        }
        return check instanceof Suitability suits
                ? suits.found()
                : Length.ofNanometres(((Comparison) check).value().units()).toString();
    }

    private Check asked(Rule rule) {
        return asked().stream()
                .filter(check -> check.rule() == rule)
                .findFirst()
                .orElseThrow();
    }

    private List<Check> asked() {
        MatchRequest plain = shop.request(
                Condition.WORN,
                present,
                List.of(new CylinderSurvey("1", read, Wall.UNKNOWN, findings), CylinderSurvey.unsurveyed("2")));
        MatchRequest request = Requests.seen(plain, List.of(found, AsFound.NOT_TOLD));
        List<Hole> holes = shop.ask(request).surveyed();
        FitTable fits = FitTable.of(shop.shelf());
        Optional<Choice> choice =
                knownDesign ? Optional.of(fits.at(shop.sizes.get(0)).get(0)) : Optional.empty();
        Optional<PistonDesign> design = choice.map(Choice::design);
        return new Conditions(fits, request, design, choice)
                .of(holes, suppliedRings ? Optional.of(shop.rings.get(0)) : Optional.empty())
                .get(0)
                .checks();
    }
}
