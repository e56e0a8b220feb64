package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.survey;
import static org.borewright.kit.TwinShop.surveys;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.fit.CloserReading;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.choice.Block;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.kit.table.Settling;
import org.borewright.measure.Climate;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The size for worn holes. With the twin's figures (standard 70.000, e 0.02, hone stock 0.05) a hole of largest reading D is certain at a finish
 * F when F − 0.05 − (2·D − 70.000 + 0.04) ≥ 2U and excluded when F − 0.05 − D &lt; −U; U is 0.005 281 mm at 20 ± 1 °C.
 */
class WornHolesMatchTest {

    @ParameterizedTest(name = "{0} and {1}: {2}, {3}")
    @CsvSource({
        // as new: a hone alone does it
        "69.989, 69.989, serves, standard, standard:certain +0.25:certain +0.50:certain +0.75:certain +1.00:certain",
        // 2·70.080 − 70 + 0.04 = 70.200 = 70.250 − 0.05: no room for the guard at +0.25
        "70.080, 70.000, serves, +0.50, standard:no +0.25:possible +0.50:certain +0.75:certain +1.00:certain",
        // 70.110 → 70.260, the worked example of the rule
        "70.110, 70.020, serves, +0.50, standard:no +0.25:possible +0.50:certain +0.75:certain +1.00:certain",
        // one bad hole drags all
        "70.010, 70.300, serves, +0.75, standard:no +0.25:no +0.50:possible +0.75:certain +1.00:certain",
        // possible at +0.75 and +1.00, certain nowhere
        "70.480, 70.480, no certain size, -, standard:no +0.25:no +0.50:no +0.75:possible +1.00:possible",
        // beyond all of them
        "71.000, 70.000, no common size, -, standard:no +0.25:no +0.50:no +0.75:no +1.00:no",
        "-, 70.050, no certain size, -, standard:no +0.25:possible +0.50:possible +0.75:possible +1.00:possible",
    })
    void theWorstHoleDecidesTheSizeOfTheEngine(String first, String second, String verdict, String size, String table) {
        Match match = new TwinShop().worn("standard", first, second);

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(TwinShop.table(match)).isEqualTo(table);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        // certain at +0.25 needs 2·D ≤ 70.250 − 0.05 + 70.000 − 0.04 − 2U, with U = 5 281 nm: D ≤ 70.074 719 mm
        "70.074719, certain",
        "70.074720, possible",
        // excluded from D > 70.250 − 0.05 + U = 70.205 281 (U of that diameter: 5 282 nm)
        "70.205282, possible",
        "70.205283, no",
    })
    void aSizeTurnsAtTheExactNanometre(String diameter, String certainty) {
        Match match = new TwinShop().worn("standard", diameter, "70.000");

        assertThat(match.table().get(1).certainty().label()).isEqualTo(certainty);
    }

    /** 0.005 mm is common practice, and an engine may say otherwise: 70.000 − (D + 0.005) ≥ U. */
    @ParameterizedTest(name = "{0} at a hone that takes {1} more: {2}")
    @CsvSource({
        "69.989719, 0.005, certain",
        "69.989720, 0.005, possible",
        "70.000281, 0.005, possible",
        "70.000282, 0.005, no",
        "69.986719, 0.008, certain",
        "69.986720, 0.008, possible",
        "69.997281, 0.008, possible",
        "69.997282, 0.008, no",
        "69.994719, 0,     certain",
        "69.994720, 0,     possible",
    })
    void aHoneAloneNeedsALittleBeyondTheLargestReading(String diameter, Length beyond, String certainty) {
        TwinShop shop = new TwinShop();
        shop.honeCleanUp = beyond;

        Match match = shop.worn("standard", diameter, "69.980");

        assertThat(match.table().get(0).certainty().label()).isEqualTo(certainty);
    }

    @Test
    void aProbedWallSavesAStepAndTheFigureThatWouldIsNamed() {
        TwinShop shop = new TwinShop();
        Match blind = shop.worn("standard", "70.110", "70.020");

        Settling settling = blind.settling().orElseThrow();
        assertThat(settling.row().size().label()).isEqualTo("+0.25");
        assertThat(settling.readings()).hasSize(1);
        // (70.250 − 0.05 − 2U)/2 − 0.02 with U = 5 281 nm
        assertThat(settling.readings().get(0).within()).contains(mm("35.074719"));
        assertThat(settling.readings().get(0).withinFromBarAxis()).contains(mm("35.094719"));

        assertThat(TwinShop.named(probed(shop, "35.074719"))).isEqualTo("+0.25");
        assertThat(TwinShop.named(probed(shop, "35.074720"))).isEqualTo("+0.50");
    }

    /** The smallest hole +0.50 can have had is 70.480 (70.440 + 0.040); 0.02 and U = 0.005 28 below that it is not of that size. */
    @ParameterizedTest(name = "{0} in an engine recorded as +0.50: {1}")
    @CsvSource({
        "70.150000, SMALLER_THAN_PRESENT_SIZE",
        "70.454600, SMALLER_THAN_PRESENT_SIZE",
        "70.454800, ''",
    })
    void readingsSmallerThanThePresentSizeAllowsAreHeld(String diameter, String reason) {
        Match match = new TwinShop().worn("+0.50", diameter, "70.500");

        assertThat(match.ruling().holds())
                .extracting(hold -> hold.reason().name())
                .filteredOn(name -> name.equals("SMALLER_THAN_PRESENT_SIZE"))
                .isEqualTo(reason.isEmpty() ? List.of() : List.of(reason));
    }

    /** U = 0.005 28: what is told of the hole when new may lie so far above its largest reading, and no further. */
    @ParameterizedTest(name = "{0}, last finish {1}, unworn wall {2}: {3}")
    @CsvSource({
        "70.050, 70.0552, , ''",
        "70.050, 70.0553, , SMALLER_THAN_WHEN_NEW",
        "70.050, , 70.0552, ''",
        "70.050, , 70.0553, SMALLER_THAN_WHEN_NEW",
    })
    void readingsSmallerThanTheHoleWhenNewAreHeld(String diameter, String finish, String unworn, String reason) {
        TwinShop shop = new TwinShop();
        Wall told = new Wall(
                Optional.ofNullable(finish).map(TwinShop::mm),
                Optional.ofNullable(unworn).map(TwinShop::mm),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
        CylinderSurvey first = new CylinderSurvey("1", new SingleDiameter(mm(diameter)), told, List.of());

        Match match = shop.ask(shop.request(Condition.WORN, "standard", List.of(first, survey("2", "70.050"))));

        assertThat(match.ruling().holds())
                .extracting(hold -> hold.reason().name())
                .filteredOn(name -> name.equals("SMALLER_THAN_WHEN_NEW"))
                .isEqualTo(reason.isEmpty() ? List.of() : List.of(reason));
    }

    /** Geometry: 70.110 across needs a wall 35.055 off the axis at the least, known to U = 0.005 281. */
    @ParameterizedTest(name = "wall at {0}: {1} {2}")
    @CsvSource({
        "35.055000, serves, +0.25",
        "35.049720, serves, +0.25",
        "35.049719, hold, +0.50",
        "34.000000, hold, +0.50",
    })
    void aProbeShorterThanHalfTheDiameterProvesNothing(String radius, String verdict, String size) {
        Match match = probed(new TwinShop(), radius);

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
        assertThat(match.holes().get(0).cleanUp().orElseThrow().worst().orElseThrow())
                .isGreaterThanOrEqualTo(mm("70.110"));
    }

    /** +0.25 is bored to 70.200, so its wall lies 35.094718 off the bar's axis at the most, once U = 5 282 nm is guarded. */
    @ParameterizedTest(name = "{0}: {1}, off the bar''s {2}")
    @CsvSource(useHeadersInDisplayName = true, nullValues = "-", textBlock = """
            DIAMETER,  WITHIN,    FROM BAR AXIS
            70.149436, 35.074718, 35.094718
            70.149437, -,         35.094718
            70.189436, -,         35.094718
            """)
    void noWallIsAskedToLieNearerThanHalfTheLargestDiameter(String diameter, Length within, Length fromBarAxis) {
        Settling settling =
                new TwinShop().worn("standard", diameter, "70.020").settling().orElseThrow();

        assertThat(settling.row().size().label()).isEqualTo("+0.25");
        assertThat(settling.readings().get(0).within()).isEqualTo(Optional.ofNullable(within));
        assertThat(settling.readings().get(0).withinFromBarAxis()).contains(fromBarAxis);
        assertThat(settling.readings().get(0).what())
                .isEqualTo(within == null ? Settling.What.PROBE_FROM_BAR_AXIS : Settling.What.PROBE_WALL);
    }

    @Test
    void aSizeThatNoProbeCanProveIsNotOffered() {
        Match match = new TwinShop().worn("standard", "70.189437", "70.020");

        assertThat(TwinShop.table(match)).contains("+0.25:possible");
        assertThat(match.settling()).isEmpty();
    }

    @ParameterizedTest(name = "scored {0} mm deep: within {1} mm")
    @CsvSource({"0.01, 35.064719", "0.001, 35.073719"})
    void theWallMustLieNearerByTheDepthOfWhatIsCutOutBehindIt(Length depth, Length within) {
        TwinShop shop = new TwinShop();
        Finding score = new Finding(Finding.Kind.SCORED, Optional.of(depth), Optional.empty());
        Match match = shop.ask(
                shop.request(Condition.WORN, "standard", List.of(survey("1", "70.100", score), survey("2", "70.020"))));

        assertThat(match.settling().orElseThrow().readings().get(0).within()).contains(within);
    }

    @ParameterizedTest(name = "probed at {0}, from the bar''s axis {1}: {2}")
    @CsvSource({
        // 2r + 2e lies 0.005 below 70.200, and only the guard of 2U is missing
        "35.0775, false, BETTER_PROBE",
        "35.0975, true, BETTER_PROBE",
        // 0.002 below it: 2U of the temperature alone is more, but the wall may stand nearer to the bar's own axis
        "35.079, false, PROBE_FROM_BAR_AXIS",
        // 2r + 2e lies above it, but the wall may stand nearer to the bar's own axis
        "35.085, false, PROBE_FROM_BAR_AXIS",
        "35.114719, false, PROBE_FROM_BAR_AXIS",
        // shorter than half the diameter: nothing is known of the wall
        "34.000, true, PROBE_WALL",
    })
    void aHoleAlreadyProbedIsToldWhatStillStandsInTheWay(String radius, boolean fromBarAxis, Settling.What what) {
        Match match = probed(new TwinShop(), radius, fromBarAxis);

        assertThat(match.settling().orElseThrow().readings().get(0).what()).isEqualTo(what);
    }

    /** Hone only, U 0.005281, of which 1 K (0.001 596) and the step (0.000 577) leave √(4² − 1.596² − 0.577²) = 3.622 µm. */
    @Test
    void aHoneThatIsTooCloseNamesTheGaugeThatProvesIt() {
        Settling.Reading reading = honed(4_000).orElseThrow().readings().get(0);

        assertThat(reading.what()).isEqualTo(Settling.What.BETTER_GAUGE);
        assertThat(reading.gauge())
                .contains(new CloserReading.Better(CloserReading.What.CALIBRATION, false, mm("0.003622")));
    }

    /** On the limit, beyond it, or nearer than 1 K tells, a better reading is no saving to promise. */
    @ParameterizedTest
    @ValueSource(longs = {0, -500, -4_000, 1_000})
    void aHoneThatNoGaugeProvesIsNotPromised(long margin) {
        assertThat(honed(margin)).isEmpty();
    }

    /** The standard size, where the first hole lies so far below what the hone may reach. */
    private static Optional<Settling> honed(long margin) {
        TwinShop shop = new TwinShop();
        Length largest = shop.pistons
                .get(0)
                .shape()
                .finishForCleanUp()
                .minus(mm("0.005"))
                .minus(Length.ofNanometres(margin));
        String read = BigDecimal.valueOf(largest.nanometres(), 6).toPlainString();
        return shop.ask(shop.request(Condition.WORN, "standard", List.of(survey("1", read), survey("2", "69.980"))))
                .settling();
    }

    @ParameterizedTest
    @CsvSource({"35.114720, false", "35.101, true", "35.099, true"})
    void aWallThatNoReadingProvesNearEnoughIsNotProbedAgain(String radius, boolean fromBarAxis) {
        assertThat(probed(new TwinShop(), radius, fromBarAxis).settling()).isEmpty();
    }

    /** ISO 1: a radius read in a cold barrel is smaller than at 20 °C, and must not pass by that. */
    @Test
    void aWallProbedInTheColdIsCorrectedLikeADiameter() {
        TwinShop shop = new TwinShop();
        MatchRequest warm = probing(shop, "35.070", false);
        MatchRequest cold =
                Requests.measured(warm, Climate.at(Temperature.parse(BigDecimal.TEN, Temperature.Scale.CELSIUS)));

        assertThat(worst(shop.ask(warm))).isEqualTo(mm("70.180"));
        // 35.070 mm / (1 − 10 × α), α of the twin 11.4 × 10⁻⁶: 35.073998 mm
        assertThat(worst(shop.ask(cold))).isEqualTo(mm("70.187996"));
    }

    private static Length worst(Match match) {
        return match.holes().get(0).cleanUp().orElseThrow().worst().orElseThrow();
    }

    private static Match probed(TwinShop shop, String radius) {
        return probed(shop, radius, false);
    }

    private static Match probed(TwinShop shop, String radius, boolean fromBarAxis) {
        return shop.ask(probing(shop, radius, fromBarAxis));
    }

    private static MatchRequest probing(TwinShop shop, String radius, boolean fromBarAxis) {
        return probing(shop, new Wall.Reach(mm(radius), fromBarAxis));
    }

    /** The hold on it says what there is to say. */
    @Test
    void aProbeThatContradictsTheDiametersIsNoneThatIsSetAside() {
        Match match = probed(new TwinShop(), "34.000");

        assertThat(match.surveyed().get(0).isProbed()).isFalse();
        assertThat(match.cautions()).doesNotContain(Caution.PROBE_SET_ASIDE);
        assertThat(match.ruling().holds()).isNotEmpty();
    }

    private static MatchRequest probing(TwinShop shop, Wall.Reach reach) {
        return probing(shop, mm("70.110"), reach);
    }

    private static MatchRequest probing(TwinShop shop, Length diameter, Wall.Reach reach) {
        CylinderSurvey first = new CylinderSurvey("1", new SingleDiameter(diameter), TwinShop.probed(reach), List.of());
        return shop.request(Condition.WORN, "standard", List.of(first, survey("2", "70.020")));
    }

    /**
     * +0.25 is bored to 70.200, so 2·(r + 0.02) + 2U must not exceed it, with U² = U(probe)² + 2.888 µm² for step and temperature. The gauge of
     * the holes is worth 0.005 mm, and no probe is worth more; a poor one hides that 2r is less than 70.110.
     */
    @ParameterizedTest(name = "wall at {0}, probed to U = {1}: {2}")
    @CsvSource(useHeadersInDisplayName = true, nullValues = "-", textBlock = """
            RADIUS,    U,        SIZE
            35.074719, -,        +0.25
            35.074719, 0.005,    +0.25
            35.074719, 0.001,    +0.25
            35.074720, 0.001,    +0.50
            35.074719, 0.005001, +0.50
            35.070,    0.009854, +0.25
            35.070,    0.009855, +0.50
            35.059927, 0.020,    +0.25
            35.059928, 0.020,    +0.50
            35.049720, 0.001,    +0.25
            35.049719, 0.001,    +0.50
            35.034928, 0.020,    +0.25
            35.034927, 0.020,    +0.50
            """)
    void aWallIsProvenNoBetterThanItWasProbed(Length radius, Length uncertainty, String size) {
        TwinShop shop = new TwinShop();
        Wall.Reach reach = new Wall.Reach(radius, false, Optional.ofNullable(uncertainty));

        assertThat(TwinShop.named(shop.ask(probing(shop, reach)))).isEqualTo(size);
    }

    /** 2·70.060 − 70 + 0.04 = 70.160 and 2U = 0.011 prove +0.25 already: to know more never takes a size away. */
    @ParameterizedTest(name = "probed to U = {0}: counts {1}")
    @CsvSource(
            nullValues = "-",
            value = {"-, true", "0.020, true", "0.030233, true", "0.030234, false", "0.500, false"})
    void aProbeThatProvesLessThanTheDiametersIsSetAside(Length uncertainty, boolean counts) {
        TwinShop shop = new TwinShop();
        Wall.Reach reach = new Wall.Reach(mm("35.035"), false, Optional.ofNullable(uncertainty));

        Match match = shop.ask(probing(shop, mm("70.060"), reach));

        assertThat(TwinShop.named(match)).isEqualTo("+0.25");
        assertThat(match.surveyed().get(0).isProbed()).isEqualTo(counts);
        assertThat(match.cautions().contains(Caution.PROBE_SET_ASIDE)).isNotEqualTo(counts);
    }

    /** 70.2 − 2·35.070 − 0.04 leaves 0.020 mm: √(0.010² − 2.888 µm²), rounded down. */
    @Test
    void theBetterProbeIsNamed() {
        TwinShop shop = new TwinShop();
        Wall.Reach reach = new Wall.Reach(mm("35.070"), false, Optional.of(mm("0.020")));

        Settling settling = shop.ask(probing(shop, reach)).settling().orElseThrow();

        assertThat(settling.readings()).hasSize(1);
        assertThat(settling.readings().get(0).what()).isEqualTo(Settling.What.BETTER_PROBE);
        assertThat(settling.readings().get(0).gauge().orElseThrow().atMost()).isEqualTo(mm("0.009854"));
    }

    @ParameterizedTest(name = "{0}, {1} deep: {2}, {3}")
    @CsvSource({
        "BROKEN_FIN, , serves, standard",
        "FINISH_POOR, , serves, standard",
        "WORN, , serves, standard",
        // a scratch of 0.1 mm counts twice on the diameter: 2·69.989 − 69.989 + 0.04 + 0.2 = 70.229
        "SCORED, 0.1, serves, +0.50",
        "SCORED, , no certain size, -",
        "PITTED, , no certain size, -",
        // rust is always machined, whatever the diameter says
        "CORRODED, 0.01, serves, +0.25",
        "SEIZED, 0, serves, +0.25",
        "SMEARED_ALUMINIUM, , no certain size, -",
        "SLEEVE_LOOSE, , no certain size, -",
        "HOLED, , refer to a specialist, -",
        "MELTED, , refer to a specialist, -",
        "CRACKED, , refer to a specialist, -",
    })
    void findingsWeighAsTheTradeWeighsThem(Finding.Kind kind, String depth, String verdict, String size) {
        TwinShop shop = new TwinShop();
        Finding finding = new Finding(kind, Optional.ofNullable(depth).map(TwinShop::mm), Optional.empty());

        Match match = shop.ask(shop.request(
                Condition.WORN, "standard", List.of(survey("1", "69.989", finding), survey("2", "69.989"))));

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
    }

    @Test
    void nothingIsCertainWhileThePresentSizeIsHearsay() {
        TwinShop shop = new TwinShop();
        MatchRequest known = shop.request(Condition.WORN, "standard", surveys("70.110", "70.020"));
        MatchRequest hearsay =
                Requests.of(known, new PresentSize(known.present().size(), PresentSize.KnownFrom.HEARSAY));

        Match match = shop.ask(hearsay);

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_CERTAIN_SIZE);
        assertThat(match.ruling().holds()).extracting(Hold::reason).contains(Hold.Reason.SIZE_WHEN_NEW_NOT_KNOWN);
        assertThat(match.cautions()).contains(Caution.PRESENT_SIZE_HEARSAY);
    }

    @Test
    void aSizeNeverMadeIsPassedOverAndSaidSo() {
        TwinShop shop = new TwinShop();
        shop.pistons.removeIf(piston -> piston.size().equals("+0.50"));

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(TwinShop.named(match)).isEqualTo("+0.75");
        assertThat(match.table().get(2).blocks()).extracting(Block::reason).containsExactly(Block.Reason.NEVER_MADE);
    }

    @Test
    void outOfStockMeansTheSameSizeOnALaterDay() {
        TwinShop shop = new TwinShop();
        shop.offer("P-050", "40", 1);

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(TwinShop.named(match)).isEqualTo("+0.50");
        assertThat(match.ruling().row().orElseThrow().kit().orElseThrow().leadDays())
                .isEqualTo(10);
    }

    @Test
    void aLargerSizeIsGivenWhenAskedForAndASmallerOneIsNot() {
        TwinShop shop = new TwinShop();

        assertThat(TwinShop.named(asking(shop, 3))).isEqualTo("+0.75");
        Match smaller = asking(shop, 1);
        assertThat(TwinShop.named(smaller)).isEqualTo("+0.50");
        assertThat(smaller.ruling().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(smaller.ruling().holds())
                .extracting(Hold::reason)
                .containsExactly(Hold.Reason.ASKED_SIZE_DOES_NOT_SERVE);
    }

    private static Match asking(TwinShop shop, int size) {
        MatchRequest plain = shop.request(Condition.WORN, "standard", surveys("70.110", "70.020"));
        return shop.ask(Requests.asking(plain, Optional.of(shop.sizes.get(size))));
    }

    @ParameterizedTest(name = "outside {0}: {1}")
    @CsvSource({
        // (outside − 70.550)/2 − 0.02 ≥ 2.5 at +0.50, whose largest finish is 69.950 + 0.50 + 0.100
        "75.590, serves, +0.50",
        // a nanometre less and +0.50 is gone; +0.25 stays possible
        "75.589999, no certain size, -",
    })
    void theWallLeftIsJudgedAtTheLargestFinish(String outside, String verdict, String size) {
        TwinShop shop = new TwinShop();
        shop.wall = new WallShape(
                Optional.of(mm(outside)), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(TwinShop.named(match)).isEqualTo(size);
    }

    @Test
    void aWallNobodySurveyedHolds() {
        TwinShop shop = new TwinShop();
        shop.wall = new WallShape(
                Optional.empty(), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.HOLD);
        assertThat(match.ruling().holds()).extracting(Hold::reason).containsExactly(Hold.Reason.CHECK_OPEN);
    }

    @ParameterizedTest(name = "pitch {0}: {1}")
    @CsvSource({"75.550, +0.50", "75.549999, -"})
    void theBridgeIsJudgedAtTheLargestFinish(String pitch, String size) {
        TwinShop shop = new TwinShop();
        shop.pitch = Optional.of(mm(pitch));
        shop.wall = new WallShape(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(mm("5")));

        assertThat(TwinShop.named(shop.worn("standard", "70.110", "70.020"))).isEqualTo(size);
    }

    @Test
    void aPlatedWallIsNeverBored() {
        TwinShop shop = new TwinShop();
        shop.construction = Construction.PLATED;

        Match fits = shop.worn("standard", "70.010", "70.010");
        Match worn = shop.worn("standard", "70.110", "70.010");

        assertThat(TwinShop.named(fits)).isEqualTo("standard");
        assertThat(worn.ruling().verdict()).isEqualTo(Verdict.NO_COMMON_SIZE);
        assertThat(worn.table().get(2).blocks()).extracting(Block::reason).contains(Block.Reason.NEVER_BORED);
    }

    @Test
    void theLargestOversizeIsInclusive() {
        TwinShop shop = new TwinShop();
        assertThat(shop.worn("standard", "70.060", "70.000").table().get(4).blocks())
                .isEmpty();
        shop.largestOversize = mm("0.999999");
        assertThat(shop.worn("standard", "70.060", "70.000").table().get(4).blocks())
                .extracting(Block::reason)
                .containsExactly(Block.Reason.BEYOND_LARGEST);
    }

    @Test
    void anOpeningTooSmallBlocksTheSizesItDoesNotClear() {
        TwinShop shop = new TwinShop();
        // +0.50 needs 70.550 + 2 × 0.5
        shop.gaskets.set(0, TwinShop.gasket("GK-1", "71.549999"));

        Match match = shop.worn("standard", "70.110", "70.020");

        assertThat(match.ruling().verdict()).isEqualTo(Verdict.NO_CERTAIN_SIZE);
        assertThat(match.table().get(1).blocks()).isEmpty();
        assertThat(match.table().get(2).blocks()).extracting(Block::reason).containsExactly(Block.Reason.GASKET);
    }
}
