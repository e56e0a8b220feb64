package org.borewright.kit.rings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.RodEnd;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.DeckFlatness;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.RingShape;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.AsFound.Glaze;
import org.borewright.kit.request.AsFound.Grooves;
import org.borewright.kit.request.AsFound.Ridge;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.NewRings;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The twin's first hole worn to 70.060 mm, 0.03 mm tapered and 0.015 mm out of round, its piston 0.010 mm below its tolerance; the second
 * much the same. In service it bears 70.100 mm, 0.05 mm of each, and a clearance of 0.140 mm; a skirt sweeps it from 34.4 mm down.
 */
class RingsOnlyTest {

    private static final String WORN = "70.060 70.045 / 70.050 70.040 / 70.030 70.025";
    private static final String LIKEWISE = "70.058 70.044 / 70.049 70.041 / 70.031 70.026";
    private static final String EVERYTHING_ELSE =
            "present piston, clearance in service, ring grooves of the present piston, ridge above the ring travel, glaze of the wall, "
                    + "greatest ring gap in service";

    private final TwinShop shop = new TwinShop();
    private String present = "standard";
    private Condition condition = Condition.WORN;
    private Survey read = grid(WORN);
    private List<Finding> findings = List.of();
    private String number = "P-STD";
    private Optional<Length> diameter = Optional.of(mm("69.930"));
    private Optional<Grooves> grooves = Optional.of(Grooves.GOOD);
    private Optional<Ridge> ridge = Optional.of(Ridge.OFF);
    private Optional<Glaze> glaze = Optional.of(Glaze.BROKEN);

    private NewRings rings = NewRings.ANY;
    private Deck deck = TwinShop.skimmed("0");

    private static Grid grid(String rows) {
        return Grids.grid(rows, List.of(mm("10"), mm("34.4"), mm("110"), mm("150")));
    }

    private AsFound asFound(String piston) {
        Optional<Piston> part = shop.pistons.stream()
                .filter(made -> made.number().text().equals(piston))
                .findFirst();
        return new AsFound(
                new PresentPiston(
                        part.map(made -> shop.shelf().parts().designs().get(0)),
                        part,
                        diameter,
                        new Measuring(Gauge.Kind.MICROMETER.usual(), Climate.at(Temperature.REFERENCE))),
                grooves,
                ridge,
                glaze);
    }

    private Match match() {
        List<CylinderSurvey> surveys = List.of(
                new CylinderSurvey("1", read, Wall.UNKNOWN, findings),
                new CylinderSurvey("2", grid(LIKEWISE), Wall.UNKNOWN, List.of()));
        MatchRequest plain = shop.request(condition, present, surveys);
        MatchRequest seen =
                Requests.seen(plain.with(deck), List.of(asFound(number), asFound(number.isEmpty() ? "" : "P-STD")));
        return shop.ask(seen.with(rings));
    }

    private RingsOnly ask() {
        return match().ringsOnly().orElseThrow();
    }

    private static String open(RingsOnly rings) {
        return String.join(", ", rings.open());
    }

    /**
     * The groove wants 0.200 mm; the smallest place, 70.025 mm, leaves the ring π · 0.025 = 0.0785 more than in its gauge. What must be filed
     * is asked for once it is told either way, and then never rules rings only out.
     */
    @ParameterizedTest(name = "a ring of {0}, filed: {1}: {2}")
    @CsvSource(useHeadersInDisplayName = true, nullValues = "-", textBlock = """
            AS MADE, FILED, CERTAINTY, ASKED,                                 FILE TO
            0.100,   -,     CERTAIN,   -,                                     0.200
            0.100,   false, POSSIBLE,  least ring gap of a ring to be filed,  0.200
            0.100,   true,  CERTAIN,   -,                                     0.200
            0.115,   false, POSSIBLE,  least ring gap of a ring to be filed,  0.200
            0.115,   true,  CERTAIN,   -,                                     0.200
            0.300,   false, CERTAIN,   -,                                     -
            """)
    void ringsThatAreToBeFiledWantAWordBeforeTheEngineLeaves(
            Length made, Boolean filed, Certainty certainty, String asked, Length fileTo) {
        shop.gapOfRings("standard", made, mm("0.254"));
        rings = new NewRings(Set.of(), Optional.ofNullable(filed));

        RingsOnly told = ask();

        assertThat(told.certainty()).isEqualTo(certainty);
        assertThat(open(told)).isEqualTo(Optional.ofNullable(asked).orElse(""));
        assertThat(told.holes())
                .flatExtracting(RingsInHole::ringGaps)
                .extracting(gap -> gap.fileTo().map(Limits::least))
                .containsOnly(Optional.ofNullable(fileTo))
                .hasSize(2);
    }

    /** The rings of the new size need no file: those of the present pistons alone bring the caution, while they may go in. */
    @ParameterizedTest(name = "a ring of {0} for a piston of {1}: {2}, caution {3}")
    @CsvSource(useHeadersInDisplayName = true, nullValues = "-", textBlock = """
            AS MADE, PISTON,  CERTAINTY, CAUTION
            0.100,   69.930,  CERTAIN,   true
            0.100,   -,       POSSIBLE,  true
            0.100,   69.900,  NO,        false
            0.300,   69.930,  CERTAIN,   false
            """)
    void whoeverFilesTheRingsOfThePresentPistonsIsCautioned(
            Length made, Length piston, Certainty certainty, boolean caution) {
        shop.gapOfRings("standard", made, mm("0.254"));
        diameter = Optional.ofNullable(piston);

        Match match = match();

        assertThat(match.ringsOnly().map(RingsOnly::certainty)).contains(certainty);
        assertThat(TwinShop.named(match)).isEqualTo("+0.25");
        assertThat(match.cautions().contains(Caution.FILE_RINGS)).isEqualTo(caution);
    }

    /** The ring set itself, what its kit is short of, or gaskets that leave the pistons their room; nothing where rings only is ruled out. */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "R-STD, to be had, ''",
        "R-STD, never made, no ring set of the present size is supplied with pin and clips that fit this piston",
        "R-STD, never made for pistons that nobody knows, no ring set of the present size is supplied for any piston of this engine",
        "PIN-1, never made for pistons that nobody knows, ''",
        "R-STD, the last, 'ring set R-STD (needed 2, on the shelf 1)'",
        "GK-1, too low, no gasket kit fits this size",
        "R-STD, never made and the wall cracked, ''",
    })
    void whatCannotBeHadForItIsNamed(String part, String state, String lacking) {
        switch (state) {
            case "never made" -> shop.withdraw(part, Withdrawal.State.NEVER_MADE);
            case "never made for pistons that nobody knows" -> {
                shop.withdraw(part, Withdrawal.State.NEVER_MADE);
                number = "";
                diameter = Optional.empty();
            }
            case "the last" -> shop.lastOf(part, 1);
            case "too low" -> shop.pistonToHead = new Limits(mm("5"), mm("6"));
            case "never made and the wall cracked" -> {
                shop.withdraw(part, Withdrawal.State.NEVER_MADE);
                findings = List.of(new Finding(Finding.Kind.CRACKED, Optional.empty(), Optional.empty()));
            }
            default -> {}
        }

        assertThat(ask().lacking()).isEqualTo(lacking.isEmpty() ? List.of() : List.of(lacking));
    }

    /** Before anything is sold any set is looked for; what is sold and does not go on the piston is quoted anew. */
    @ParameterizedTest(name = "sold {0}: {1}")
    @CsvSource({
        "'', CERTAIN, ''",
        "R-STD, CERTAIN, ''",
        "R-025, POSSIBLE, the rings that were sold are not made for this piston: survey the engine anew as \"did not clean up\"; and quote anew",
    })
    void ringsOfAnotherPistonThanTheyWereSoldForAreQuotedAnew(String sold, Certainty certainty, String wayOut) {
        rings = NewRings.bought(sold.isEmpty() ? Set.of() : Set.of(TwinShop.no(sold)));

        RingsOnly told = ask();

        assertThat(told.certainty()).isEqualTo(certainty);
        assertThat(told.holes().get(0).checks().stream()
                        .filter(Unchecked.class::isInstance)
                        .map(check -> ((Unchecked) check).reason())
                        .collect(Collectors.joining()))
                .isEqualTo(wayOut.replace(';', ','));
    }

    @Test
    void ringsOnThePresentPistonsWillDoWhereEveryConditionIsMet() {
        RingsOnly rings = ask();

        assertThat(rings.certainty()).isEqualTo(Certainty.CERTAIN);
        assertThat(rings.open()).isEmpty();
        assertThat(rings.holes())
                .allSatisfy(hole -> assertThat(hole.checks())
                        .extracting(Check::rule)
                        .containsExactly(
                                Rule.NOTHING_TO_CUT,
                                Rule.SERVICE_WEAR,
                                Rule.SERVICE_TAPER,
                                Rule.SERVICE_OUT_OF_ROUND,
                                Rule.PRESENT_PISTON,
                                Rule.SERVICE_CLEARANCE,
                                Rule.GROOVES,
                                Rule.RIDGE,
                                Rule.GLAZE,
                                Rule.RING_GAP_LEAST,
                                Rule.SERVICE_RING_GAP));
    }

    @Test
    void nothingIsSaidOfRingsWhereThePresentSizeCannotBeRight() {
        assertThat(new TwinShop().worn("+0.50", "70.060", "70.060").ringsOnly()).isEmpty();
    }

    /** Two sets at 20, four clips at 0.50, a gasket kit at 30 and six bolts at 2, with one day of stripping at 50: no piston, no pin. */
    @Test
    void theKitHoldsRingsClipsGasketsAndBolts() {
        RingsOnly rings = ask();
        Kit kit = rings.job().kit().orElseThrow();

        assertThat(kit.lines())
                .extracting(line -> line.box().number().text() + " × " + line.quantity())
                .containsExactly("R-STD × 2", "CLIP-1 × 4", "GK-1 × 1", "BOLT-1 × 6");
        assertThat(rings.job().total()).contains(TwinShop.money("134"));
        assertThat(rings.job().days()).isEqualTo(OptionalInt.of(1));
    }

    @Test
    void aPinThatIsPressedIntoTheRodHasNoClips() {
        shop.rodEnd = new RodEnd(
                new PinSeat(new Limits(mm("17.970"), mm("17.980")), new Limits(mm("-0.035"), mm("-0.012"))),
                true,
                false);

        assertThat(ask().job().kit().orElseThrow().needs())
                .extracting(need -> need.part().kind().label())
                .containsExactly("ring set", "gasket kit", "single-use bolt");
    }

    /** Nobody told: what is not known is never met. */
    @Test
    void nothingIsCertainOfWhatNobodyTold() {
        number = "";
        diameter = Optional.empty();
        grooves = Optional.empty();
        ridge = Optional.empty();
        glaze = Optional.empty();

        RingsOnly rings = ask();

        assertThat(rings.certainty()).isEqualTo(Certainty.POSSIBLE);
        assertThat(open(rings)).isEqualTo(EVERYTHING_ELSE);
        assertThat(rings.rings()).isEmpty();
        assertThat(rings.job().kit()).isEmpty();
        assertThat(rings.job().total()).isEmpty();
    }

    /** U of a diameter 0.005 281 mm, of taper and out-of-round 0.000 817; of the clearance 0.006 678, for the piston's is 0.004 086. */
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            70.0947 70.080 / 70.050 70.040 / 70.050 70.045   | certain  |
            70.0948 70.080 / 70.050 70.040 / 70.050 70.045   | possible | largest diameter in service
            70.1053 70.090 / 70.060 70.055 / 70.060 70.055   | no       | largest diameter in service
            70.079183 70.060 / 70.050 70.040 / 70.030 70.025 | certain  |
            70.079184 70.060 / 70.050 70.040 / 70.030 70.025 | possible | taper in service
            70.081 70.060 / 70.050 70.040 / 70.030 70.025    | no       | taper in service
            70.060 70.045 / 70.050 70.000817 / 70.030 70.025 | certain  |
            70.060 70.045 / 70.050 70.000816 / 70.030 70.025 | possible | out-of-round in service
            70.060 70.045 / 70.050 69.999183 / 70.030 70.025 | no       | out-of-round in service
            70.060 70.045 / 70.063 70.040 / 70.030 70.025    | certain  |
            70.060 70.045 / 70.064 70.040 / 70.030 70.025    | possible | clearance in service
            70.060 70.045 / 70.077 70.040 / 70.030 70.025    | no       | clearance in service
            70.060 70.045 / - 70.040 / - 70.025              | possible | taper in service, out-of-round in service, clearance in service, greatest ring gap in service
            70.060 70.045 / 70.050 70.040                    | possible | taper in service, out-of-round in service, greatest ring gap in service
            70.060 / 70.050 / 70.030                         | possible | taper in service, out-of-round in service, greatest ring gap in service
            """)
    void theReadingsDecide(String rows, String certainty, String open) {
        read = grid(rows);

        RingsOnly rings = ask();

        assertThat(rings.certainty().label()).isEqualTo(certainty);
        assertThat(open(rings)).isEqualTo(open == null ? "" : open);
    }

    /** The most worn place lies above the sweep of the skirt, and so its clearance is not asked there. */
    @Test
    void theClearanceIsThatWhereTheSkirtSweeps() {
        read = grid("70.090 70.080 / 70.060 70.050 / 70.060 70.050");

        assertThat(ask().certainty()).isEqualTo(Certainty.CERTAIN);
    }

    /** A nanometre below where the sweep begins it is not known how large the hole is there: the row above tells of 0.160. */
    @Test
    void whereTheSweepBeginsBetweenTwoRowsAReadingThereSettlesIt() {
        read = Grids.grid(
                "70.090 70.080 / 70.060 70.050 / 70.060 70.050", List.of(mm("10"), mm("34.400001"), mm("110")));
        RingsOnly rings = ask();

        assertThat(rings.certainty()).isEqualTo(Certainty.POSSIBLE);
        assertThat(open(rings)).isEqualTo("clearance in service");
    }

    @Test
    void aSingleDiameterOrNoneProvesNothingOfTheShape() {
        read = new SingleDiameter(mm("70.060"));
        RingsOnly single = ask();
        read = new NotMeasured();
        RingsOnly none = ask();

        assertThat(open(single))
                .isEqualTo(
                        "taper in service, out-of-round in service, clearance in service, greatest ring gap in service");
        assertThat(open(none)).isEqualTo("largest diameter in service, " + open(single));
    }

    /** A poor surface is honed, and a hone takes metal: that is the next way, not this one. */
    @ParameterizedTest(name = "{0} in {1}: {2}")
    @CsvSource({
        "stain, IRON_BARREL, certain",
        "stain, PLATED, certain",
        "finish poor, IRON_BARREL, no",
        "finish poor, PLATED, no",
        "worn, IRON_BARREL, no",
        "worn, PLATED, no",
        "scored, IRON_BARREL, no",
        "corroded, BARE_ALUMINIUM_SILICON, no",
        "cracked, IRON_BARREL, no",
        "smeared aluminium, IRON_BARREL, possible",
        "sleeve loose, IRON_BARREL, possible",
    })
    void whatWasFoundOnTheWallDecides(String found, Construction construction, String certainty) {
        shop.construction = construction;
        Finding.Kind kind = Arrays.stream(Finding.Kind.values())
                .filter(each -> each.label().equals(found))
                .findFirst()
                .orElseThrow();
        findings = List.of(new Finding(kind, Optional.empty(), Optional.empty()));

        assertThat(ask().certainty().label()).isEqualTo(certainty);
    }

    /** Where one condition rules it out, what else is not known is of no use any more. */
    @Test
    void whatRulesItOutIsNamedAlone() {
        grooves = Optional.of(Grooves.WORN);
        ridge = Optional.of(Ridge.THERE);
        glaze = Optional.empty();

        assertThat(open(ask())).isEqualTo("ring grooves of the present piston");
    }

    /** A ridge is taken off and a glaze broken without cutting; worn grooves are not mended. */
    @ParameterizedTest(name = "grooves {0}, ridge {1}, glaze {2}: {3}")
    @CsvSource({
        "GOOD, NONE, BROKEN, certain",
        "WORN, OFF, BROKEN, no",
        "GOOD, THERE, BROKEN, possible",
        "GOOD, OFF, NOT_BROKEN, possible",
    })
    void groovesRidgeAndGlazeDecide(Grooves grooves, Ridge ridge, Glaze glaze, String certainty) {
        this.grooves = Optional.of(grooves);
        this.ridge = Optional.of(ridge);
        this.glaze = Optional.of(glaze);

        assertThat(ask().certainty().label()).isEqualTo(certainty);
    }

    @ParameterizedTest(name = "{0} that reads {1} in an engine of {2}: {3}, {4}")
    @CsvSource(delimiter = '|', textBlock = """
            P-025 | 70.180 | standard | no       | present piston
            P-STD | 69.889 | standard | possible | clearance in service
            P-STD | 69.955 | standard | possible | clearance in service
            P-STD |        | standard | possible | clearance in service
            ''    | 69.930 | standard | possible | present piston, clearance in service, greatest ring gap in service
            P-STD | 69.930 | -        | possible | largest diameter in service, greatest ring gap in service
            """)
    void thePistonMustBeOneOfThePresentSizeAndMeasured(
            String piston, String reads, String size, String certainty, String open) {
        number = piston;
        diameter = Optional.ofNullable(reads).map(TwinShop::mm);
        present = size;

        RingsOnly rings = ask();

        assertThat(rings.certainty().label()).isEqualTo(certainty);
        assertThat(open(rings)).isEqualTo(open);
    }

    @Test
    void aMakerWhoStatesNoWearLimitMustBeAsked() {
        shop.wearLimit = Optional.empty();

        assertThat(open(ask())).isEqualTo("clearance in service");
        assertThat(ask().certainty()).isEqualTo(Certainty.POSSIBLE);
    }

    @Test
    void ringsThatAreNotSuppliedAreNotKnownToFit() {
        shop.withdraw("R-STD", Withdrawal.State.NEVER_MADE);

        RingsOnly rings = ask();

        assertThat(rings.certainty()).isEqualTo(Certainty.POSSIBLE);
        assertThat(open(rings)).isEqualTo("greatest ring gap in service");
        assertThat(rings.job().kit()).isEmpty();
    }

    @Test
    void aWallThatIsNeverHonedHasNoGlazeToBreak() {
        shop.construction = Construction.PLATED;
        glaze = Optional.empty();

        assertThat(ask().certainty()).isEqualTo(Certainty.CERTAIN);
        assertThat(ask().holes().get(0).checks())
                .filteredOn(check -> check.rule() == Rule.GLAZE)
                .extracting(Check::outcome)
                .containsExactly(Outcome.NOT_CHECKED);
    }

    /** A gap of 0.65 mm in the gauge is 0.838 mm at 70.060 mm, and the groove bears 0.8. */
    @Test
    void ofSeveralSetsTheOneThatFitsIsTaken() {
        shop.rings.add(0, wide());
        shop.offer("R-WIDE", "1", 10);

        assertThat(ask().rings().orElseThrow().number()).isEqualTo(no("R-STD"));
    }

    private RingSet wide() {
        RingSet made = shop.rings.get(0);
        RingShape ring = made.rings().get(0);
        return new RingSet(
                no("R-WIDE"),
                made.design(),
                made.size(),
                made.nominalBore(),
                List.of(new RingShape(
                        ring.groove(),
                        ring.section(),
                        ring.axialWidth(),
                        ring.radialWall(),
                        new Limits(mm("0.30"), mm("0.65")),
                        ring.gaugeBore(),
                        ring.fileAllowance(),
                        ring.face())));
    }

    @Test
    void finishedHolesAreNotAsked() {
        condition = Condition.FINISHED;
        read = new SingleDiameter(mm("70.005"));

        assertThat(match().ringsOnly()).isEmpty();
    }

    /** The deck bears 0.05 mm, known to 0.010; a skim makes it flat that takes off what was found and 0.010; 0.3 mm in all are borne. */
    @ParameterizedTest(name = "{0} out of flat, {1} skimmed, {2} before: {3} {4}")
    @CsvSource({
        "0.040, 0, 0, CERTAIN, ''",
        "0.040001, 0, 0, POSSIBLE, DECK_FLATNESS",
        "0.060, 0, 0, POSSIBLE, DECK_FLATNESS",
        "0.060, 0.069999, 0, POSSIBLE, SKIM_TO_FLAT",
        "0.060, 0.070, 0, CERTAIN, ''",
        "0.020, 0, 0.300, CERTAIN, ''",
        "0.020, 0, 0.300001, POSSIBLE, DECK_SKIM",
    })
    void theDeckMustBeFlatAndHighEnoughForRingsAloneToo(
            Length found, Length skim, Length before, Certainty certainty, String open) {
        deck = new Deck(Optional.of(new DeckFlatness(found, Optional.empty())), skim, Optional.of(before));

        assertThat(ask().certainty()).isEqualTo(certainty);
        assertThat(open(ask()))
                .isEqualTo(open.isEmpty() ? "" : Rule.valueOf(open).title());
    }
}
