package org.borewright.kit.bench.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.DeckFlatness;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.Choke;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.TwinBench;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Climate;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Temperature;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishTest {

    private static final String GOOD = TwinFinish.GOOD;
    private static final String GOOD_TOO = TwinFinish.GOOD_TOO;

    private final TwinFinish twin = new TwinFinish();
    private final TwinBench bench = twin.bench;

    @Test
    void anEnginePassesWhenEveryHoleIsProven() {
        Finish finish = twin.judge(true, GOOD, GOOD_TOO);

        assertThat(finish.judgement()).isEqualTo(Judgement.PASS);
        assertThat(finish.holds()).isEmpty();
        assertThat(finish.holes()).extracting(JudgedHole::judgement).containsOnly(Judgement.PASS);
        assertThat(finish.cautions()).contains(Caution.TWO_AXES);
    }

    @Test
    void noTwoJudgementsAreToldAlike() {
        assertThat(Judgement.values()).extracting(Judgement::label).doesNotHaveDuplicates();
    }

    /** Tolerance 70.440 to 70.450: the clearance is proven, the piston is not. */
    @Test
    void aPistonTooCloseToCallIsNotSignedFor() {
        PistonReading close = bench.piston("A", "P-050", mm("70.442"), Optional.empty());

        Finish finish = Finish.of(
                bench.fits(),
                twin.request(
                        List.of(close),
                        List.of(
                                twin.fitted("1", TwinFinish.survey(GOOD), "A"),
                                twin.fitted("2", TwinFinish.survey(GOOD_TOO), "")),
                        true));

        assertThat(finish.judgement()).isEqualTo(Judgement.TOO_CLOSE);
        assertThat(finish.holds()).extracting(BenchHold::reason).containsExactly(Reason.PISTON_OPEN);
        assertThat(finish.holes().get(0).judgement()).isEqualTo(Judgement.TOO_CLOSE);
    }

    /** Wider at the bottom by 0.010 to 0.014: a straight hole is no better than one with too much. */
    @ParameterizedTest
    @CsvSource({
        "70.500 70.500 70.506 70.506 70.512 70.512, PASS,",
        "70.505 70.505 70.505 70.505 70.505 70.505, HOLD, CHOKE_LEAST",
        "70.498 70.498 70.506 70.506 70.514 70.514, HOLD, CHOKE_GREATEST",
        "70.500 70.500 70.506 70.506 70.510 70.512, TOO_CLOSE, CHOKE_LEAST"
    })
    void aHoleWithChokeIsJudgedByItsWindow(String readings, Judgement judgement, Rule rule) {
        bench.shop.choke = Optional.of(new Choke(new Limits(mm("0.010"), mm("0.014"))));

        Finish finish = twin.judge(true, readings, "70.501 70.501 70.506 70.506 70.513 70.513");

        assertThat(finish.judgement()).isEqualTo(judgement);
        assertThat(finish.holds())
                .flatExtracting(BenchHold::checks)
                .extracting(Check::rule)
                .isEqualTo(rule == null ? List.of() : List.of(rule));
    }

    @Test
    void aWarmBlockNeverPasses() {
        Finish finish = twin.judge(false, GOOD, GOOD_TOO);

        assertThat(finish.judgement()).isEqualTo(Judgement.HOLD);
        assertThat(finish.holds()).extracting(BenchHold::reason).containsExactly(Reason.NOT_AT_ROOM_TEMPERATURE);
        assertThat(finish.holes()).extracting(JudgedHole::judgement).containsOnly(Judgement.HOLD);
    }

    /** A room lies within 15 K of 20 °C (common practice): a block that is stated warmer or colder has not come to it. */
    @ParameterizedTest(name = "stated {0} °C: {1}")
    @CsvSource({"35, true", "35.001, false", "5, true", "4.999, false", "80, false"})
    void aStatedTemperatureThatNoRoomHasIsNoRoomTemperature(BigDecimal celsius, boolean room) {
        bench.ofHoles = Climate.at(Temperature.parse(celsius, Temperature.Scale.CELSIUS));

        assertThat(twin.judge(true, GOOD, GOOD_TOO).holds().stream()
                        .anyMatch(hold -> hold.reason() == Reason.NOT_AT_ROOM_TEMPERATURE))
                .isNotEqualTo(room);
    }

    /** Piston 70.445: least 0.040 at 70.485, greatest 0.100 at 70.545, each guarded by hole and piston together. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            LIMIT,  TIMES U, BESIDE, JUDGEMENT,  HOLD
            70.485, 1,       0,      PASS,
            70.485, 1,       -1,     TOO_CLOSE,  CHECK_OPEN
            70.485, 0,       0,      TOO_CLOSE,  CHECK_OPEN
            70.485, -1,      1,      TOO_CLOSE,  CHECK_OPEN
            70.485, -1,      0,      HOLD,       CHECK_OUT
            70.545, -1,      0,      PASS,
            70.545, -1,      1,      TOO_CLOSE,  CHECK_OPEN
            70.545, 1,       -1,     TOO_CLOSE,  CHECK_OPEN
            70.545, 1,       0,      HOLD,       CHECK_OUT
            """)
    void theClearanceIsJudgedToTheNanometre(Length limit, int times, long beside, Judgement judgement, Reason reason) {
        Length together = Uncertainty.ofApart(bench.ofHole(limit), TwinBench.ofPiston(mm("70.445")));
        Length diameter = limit.plus(together.times(times)).plus(Length.ofNanometres(beside));

        Finish finish = twin.judge(true, TwinFinish.grid(diameter), TwinFinish.survey(GOOD_TOO));

        assertThat(finish.holes().get(0).judgement()).isEqualTo(judgement);
        assertThat(finish.judgement()).isEqualTo(judgement);
        assertThat(finish.holds())
                .extracting(BenchHold::reason)
                .isEqualTo(reason == null ? List.of() : List.of(reason));
    }

    /** 0.010 mm each; a difference taken with one gauge of 0.001 mm step is worth 0.000 817 mm. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            TOP THRUST, TOP PIN,   JUDGEMENT, RULE
            70.514183,  70.514183, PASS,
            70.514184,  70.514184, TOO_CLOSE, FINISHED_TAPER
            70.515816,  70.515816, TOO_CLOSE, FINISHED_TAPER
            70.515817,  70.515817, HOLD,      FINISHED_TAPER
            70.500,     70.509183, PASS,
            70.500,     70.509184, TOO_CLOSE, FINISHED_OUT_OF_ROUND
            70.500,     70.510817, HOLD,      FINISHED_OUT_OF_ROUND
            """)
    void taperAndOutOfRoundAreJudgedToTheNanometre(String thrust, String pin, Judgement judgement, Rule rule) {
        Finish finish = twin.judge(true, String.join(" ", thrust, pin, "70.505 70.505 70.505 70.505"), GOOD_TOO);

        assertThat(finish.holes().get(0).judgement()).isEqualTo(judgement);
        assertThat(finish.holes().get(0).checks())
                .filteredOn(check -> check.outcome() != Outcome.IN)
                .extracting(Check::rule)
                .isEqualTo(rule == null ? List.of() : List.of(rule));
    }

    @Test
    void aSingleDiameterIsNotEnoughToPass() {
        Finish finish = twin.judge(true, TwinShop.survey("1", "70.505").asRead(), TwinFinish.survey(GOOD_TOO));

        assertThat(finish.judgement()).isEqualTo(Judgement.HOLD);
        assertThat(finish.holds()).extracting(BenchHold::reason).containsExactly(Reason.CHECK_UNKNOWN);
        assertThat(finish.holds().get(0).checks())
                .extracting(Check::rule)
                .containsExactly(Rule.FINISHED_TAPER, Rule.FINISHED_OUT_OF_ROUND);
    }

    @Test
    void whatWasNotMeasuredIsNeverAPass() {
        Finish finish = twin.judge(true, TwinShop.survey("1", "-").asRead(), TwinFinish.survey(GOOD_TOO));

        assertThat(finish.holes().get(0).judgement()).isEqualTo(Judgement.HOLD);
        assertThat(finish.holds().get(0).cylinders()).containsExactly("1");
        assertThat(finish.holes().get(0).clearance()).isEmpty();
    }

    /** 70.440 to 70.450 in 70.504 to 70.506: 0.054 to 0.066. */
    @Test
    void aPistonNotMeasuredCountsWithItsTolerance() {
        Finish finish = Finish.of(
                bench.fits(),
                twin.request(
                        List.of(),
                        List.of(
                                twin.fitted("1", TwinFinish.survey(GOOD), ""),
                                twin.fitted("2", TwinFinish.survey(GOOD_TOO), "")),
                        true));

        assertThat(finish.judgement()).isEqualTo(Judgement.PASS);
        assertThat(finish.holes().get(0).clearance().orElseThrow().least()).isEqualTo(mm("0.054"));
        assertThat(finish.holes().get(0).clearance().orElseThrow().greatest()).isEqualTo(mm("0.066"));
    }

    @ParameterizedTest
    @CsvSource({"70.3, PISTON_MISREAD", "70.460, PISTON_OUT_OF_TOLERANCE"})
    void aPistonThatIsProvenWrongHolds(String diameter, Reason reason) {
        List<PistonReading> pistons = bench.pistons("P-050", "70.445", diameter);

        Finish finish = Finish.of(
                bench.fits(),
                twin.request(
                        pistons,
                        List.of(
                                twin.fitted("1", TwinFinish.survey(GOOD), "A"),
                                twin.fitted("2", TwinFinish.survey(GOOD_TOO), "B")),
                        true));

        assertThat(finish.judgement()).isEqualTo(Judgement.HOLD);
        assertThat(finish.holes().get(1).judgement()).isEqualTo(Judgement.HOLD);
        assertThat(finish.holds()).extracting(BenchHold::reason).contains(reason);
    }

    /** Good in every figure: what is still seen in it decides, and the other hole is none the worse. */
    @ParameterizedTest
    @CsvSource({
        "IRON_BARREL, STAIN,",
        "IRON_BARREL, WORN, DID_NOT_CLEAN_UP",
        "IRON_BARREL, SCORED, DID_NOT_CLEAN_UP",
        "IRON_BARREL, FINISH_POOR, FINISH_POOR",
        "IRON_BARREL, SMEARED_ALUMINIUM, SMEARED_ALUMINIUM",
        "IRON_BARREL, CRACKED, BEYOND_MACHINING",
        "PLATED, FINISH_POOR, FINDING_NEVER_CUT"
    })
    void whatIsLeftInAFinishedHoleHolds(Construction construction, Finding.Kind kind, Reason reason) {
        bench.shop.construction = construction;
        Finding seen = new Finding(kind, Optional.empty(), Optional.empty());
        FittedHole first = new FittedHole(
                new CylinderSurvey("1", TwinFinish.survey(GOOD), Wall.UNKNOWN, List.of(seen)),
                bench.pistons("P-050", "70.445").get(0).part(),
                Optional.of("A"));

        Finish finish = Finish.of(
                bench.fits(),
                twin.request(
                        bench.pistons("P-050", "70.445", "70.445"),
                        List.of(first, twin.fitted("2", TwinFinish.survey(GOOD_TOO), "B")),
                        true));

        assertThat(finish.holds().stream()
                        .filter(hold -> hold.reason() != Reason.SIZE_BLOCKED)
                        .map(BenchHold::reason))
                .isEqualTo(reason == null ? List.of() : List.of(reason));
        assertThat(finish.holes().get(0).judgement()).isEqualTo(reason == null ? Judgement.PASS : Judgement.HOLD);
        assertThat(finish.holes().get(1).judgement())
                .isEqualTo(construction.mayBeBored() ? Judgement.PASS : Judgement.HOLD);
        assertThat(finish.judgement()).isEqualTo(reason == null ? Judgement.PASS : Judgement.HOLD);
    }

    @Test
    void aPistonMadeForAnotherHandHolds() {
        Piston right = new Piston(
                TwinShop.no("P-RIGHT"),
                "DESIGN-1",
                "+0.50",
                Hand.RIGHT,
                Optional.empty(),
                bench.pistons("P-050", "70.445").get(0).part().shape());
        FittedHole first = new FittedHole(TwinFinish.survey("1", TwinFinish.survey(GOOD)), right, Optional.empty());

        Finish finish = Finish.of(
                bench.fits(),
                twin.request(List.of(), List.of(first, twin.fitted("2", TwinFinish.survey(GOOD_TOO), "")), true));

        assertThat(finish.holds()).extracting(BenchHold::reason).containsExactly(Reason.WRONG_PISTON);
    }

    @Test
    void theSameGridInBothHolesIsQueried() {
        Finish finish = twin.judge(true, GOOD, GOOD);

        assertThat(finish.holds()).extracting(BenchHold::reason).contains(Reason.READINGS_QUERIED);
        assertThat(finish.judgement()).isEqualTo(Judgement.HOLD);
    }

    /** 2 g at the most; a piston that was not weighed counts as its number allows: 200 to 201 g. */
    @ParameterizedTest
    @CsvSource({
        "200000, 202000, PASS",
        "200000, 202001, HOLD",
        "202000, , PASS",
        "202001, , HOLD",
        "199000, , PASS",
        "198999, , HOLD"
    })
    void pistonsTooFarApartInMassNeverPass(Long first, Long second, Judgement judgement) {
        PistonReading weighed = bench.piston("A", "P-050", mm("70.445"), Optional.of(first));
        List<PistonReading> pistons = new ArrayList<>(List.of(weighed));
        Optional.ofNullable(second)
                .ifPresent(mass -> pistons.add(bench.piston("B", "P-050", mm("70.445"), Optional.of(mass))));
        List<FittedHole> holes = List.of(
                twin.fitted("1", TwinFinish.survey(GOOD), "A"),
                twin.fitted("2", TwinFinish.survey(GOOD_TOO), second == null ? "" : "B"));

        Finish finish = Finish.of(bench.fits(), twin.request(pistons, holes, true));

        assertThat(finish.judgement()).isEqualTo(judgement);
        assertThat(finish.holds())
                .extracting(BenchHold::reason)
                .isEqualTo(judgement == Judgement.PASS ? List.of() : List.of(Reason.MASSES_APART));
    }

    @Test
    void whatStandsAgainstTheSizeStandsAgainstEveryHole() {
        bench.shop.construction = Construction.PLATED;

        Finish finish = twin.judge(true, GOOD, GOOD_TOO);

        assertThat(finish.judgement()).isEqualTo(Judgement.HOLD);
        assertThat(finish.holds()).extracting(BenchHold::reason).containsExactly(Reason.SIZE_BLOCKED);
        assertThat(finish.holes()).extracting(JudgedHole::judgement).containsOnly(Judgement.HOLD);
    }

    /** As before honing: all skims together may take 0.3 mm, and one may be what brings the piston near enough to the head. */
    @ParameterizedTest
    @CsvSource({
        "2.4, 0.3, 0, false",
        "2.4, 0.3, 0.000001, true",
        "2.4, 0, 0.300001, true",
        "2.0, 0, 0, true",
        "2.0, 0.099999, 0, true",
        "2.0, 0.1, 0, false",
        "2.0, 0, 0.1, false",
    })
    void theSizeStandsOnTheDeckAsItWasSkimmed(String mostToHead, String skim, Length before, boolean held) {
        bench.shop.pistonToHead = new Limits(mm("0.6"), mm(mostToHead));
        bench.deck = TwinBench.skimmed(skim, Optional.of(before));

        assertThat(twin.judge(true, GOOD, GOOD_TOO).holds())
                .extracting(BenchHold::reason)
                .isEqualTo(held ? List.of(Reason.SIZE_BLOCKED) : List.of());
    }

    /** Proven flat to 0.040 mm; from there on only a skim of what was found and U makes it so. */
    @ParameterizedTest
    @CsvSource({"0.040, 0, PASS,", "0.040001, 0, HOLD, CHECK_OPEN", "0.060, 0, HOLD, CHECK_OUT", "0.060, 0.070, PASS,"})
    void aDeckThatIsNotFlatIsNotSignedFor(String found, String skim, Judgement judgement, Reason reason) {
        bench.deck = new Deck(
                Optional.of(new DeckFlatness(mm(found), Optional.empty())), mm(skim), Optional.of(Length.ZERO));

        Finish finish = twin.judge(true, GOOD, GOOD_TOO);

        assertThat(finish.judgement()).isEqualTo(judgement);
        assertThat(finish.holds())
                .extracting(BenchHold::reason)
                .isEqualTo(reason == null ? List.of() : List.of(reason));
        assertThat(finish.checks())
                .extracting(Check::rule)
                .contains(skim.equals("0") ? Rule.DECK_FLATNESS : Rule.SKIM_TO_FLAT);
        assertThat(finish.holes()).extracting(JudgedHole::judgement).containsOnly(Judgement.PASS);
    }

    /** A gauge that measured nothing needs no caution. */
    @ParameterizedTest
    @CsvSource({"A, true", "'', false"})
    void theGaugeOfThePistonsIsCautionedOfWhereOneWasMeasured(String tag, boolean told) {
        List<PistonReading> pistons = tag.isEmpty() ? List.of() : bench.pistons("P-050", "70.445");
        List<FittedHole> holes = List.of(
                twin.fitted("1", TwinFinish.survey(GOOD), tag), twin.fitted("2", TwinFinish.survey(GOOD_TOO), ""));

        assertThat(Finish.of(bench.fits(), twin.request(pistons, holes, true))
                        .cautions()
                        .contains(Caution.PISTON_GAUGE_NOT_STATED))
                .isEqualTo(told);
    }
}
