package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.hole.ReadingLimit.Read;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.SettingRing;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How much a hole of the twin may read, new at 70.000 mm: by the bar 2·D − 70.000 + 0.04 + 2d + 2U ≤ finish − 0.05, so that D may be (finish
 * + 69.910)/2 − d − U; by the hone D + 0.005 + 2d + U ≤ finish. U is 0.005 281 mm up to 70.115, 0.005 282 up to
 * 70.260 and 0.005 283 above.
 */
class ReadingLimitTest {

    private static final Optional<Length> NONE = Optional.empty();

    private final TwinShop shop = new TwinShop();
    private final BoreSpec bore = shop.shelf().engine().bore();
    private final MatchRequest request = shop.request(Condition.WORN, "standard", List.of());

    /** U is that of the limit, not of the reading: at 70.200 a nanometre more than at 70.060, at 70.080 two less than at 70.300. */
    @ParameterizedTest(name = "{0} at {1}: {2} by the bar, {3} by the hone")
    @CsvSource({
        "70.060, 70.250, 70.074719, 70.239718",
        "70.060, 70.500, 70.199718, 70.489716",
        "70.300, 70.250, 70.074719, 70.239718",
        "70.060, 70.100, 69.999719, 70.089719",
    })
    void theLargestDiameterCountsTwiceForTheBarAndOnceForTheHone(
            String diameter, Length finish, Length byBar, Length byHone) {
        Hole hole = hole(Grids.grid("70.005 70.010 / " + diameter + " 70.010"), Wall.UNKNOWN);

        assertThat(ReadingLimit.byBar(hole, finish, request, bore))
                .contains(new ReadingLimit(Read.LARGEST_DIAMETER, byBar));
        assertThat(ReadingLimit.byHone(hole, finish, request, bore))
                .contains(new ReadingLimit(Read.LARGEST_DIAMETER, byHone));
    }

    /** Read as 70.010 at 10 mm from the deck, 70.140 at 20 and 70.020 at 30; finished at 70.500. */
    @ParameterizedTest(name = "scored {0} at {1}: {2}, {3} by the bar; {4}, {5} by the hone")
    @CsvSource({
        "0.06, 30, LARGEST_DIAMETER, 70.199718, LARGEST_DIAMETER, 70.489716",
        // as much as the largest place for the hone, for which a depth counts twice; and a little more
        "0.060001, 30, LARGEST_DIAMETER, 70.199718, DIAMETER_AT_FINDING, 70.369715",
        "0.12, 30, LARGEST_DIAMETER, 70.199718, DIAMETER_AT_FINDING, 70.249718",
        "0.120001, 30, DIAMETER_AT_FINDING, 70.079717, DIAMETER_AT_FINDING, 70.249716",
        // the limit lies below the largest place, and that still tells U: 69.905 − 0.005 282
        "0.3, 30, DIAMETER_AT_FINDING, 69.899718, DIAMETER_AT_FINDING, 69.889718",
        // at the largest place it is the largest diameter
        "0.01, 20, LARGEST_DIAMETER, 70.189718, LARGEST_DIAMETER, 70.469716",
        "0.01, , LARGEST_DIAMETER, 70.189718, LARGEST_DIAMETER, 70.469716",
    })
    void theDeepestPlaceDecidesWhereItLies(
            Length depth, Length height, Read read, Length byBar, Read readByHone, Length byHone) {
        Hole hole = hole(
                Grids.grid("70.010 70.005 / 70.140 70.005 / 70.020 70.005"),
                Wall.UNKNOWN,
                new Finding(Finding.Kind.SCORED, Optional.of(depth), Optional.ofNullable(height)));

        Optional<Length> at = Optional.ofNullable(height);
        assertThat(ReadingLimit.byBar(hole, mm("70.500"), request, bore))
                .contains(new ReadingLimit(read, at.filter(there -> read == Read.DIAMETER_AT_FINDING), byBar));
        assertThat(ReadingLimit.byHone(hole, mm("70.500"), request, bore))
                .contains(new ReadingLimit(
                        readByHone, at.filter(there -> readByHone == Read.DIAMETER_AT_FINDING), byHone));
    }

    @ParameterizedTest(name = "{0}, {1} deep")
    @CsvSource({
        "SCORED, , false, false",
        "SLEEVE_LOOSE, , false, false",
        "SEIZED, 0, true, false",
        "SCORED, 0, true, true"
    })
    void noReadingDecidesWhileTheDepthIsOpenNorForAHoneWhereTheBarMustCut(
            Finding.Kind kind, Length depth, boolean byBar, boolean byHone) {
        Hole hole =
                hole(Grids.grid("70.060 70.010"), Wall.UNKNOWN, new Finding(kind, Optional.ofNullable(depth), NONE));

        assertThat(ReadingLimit.byBar(hole, mm("70.250"), request, bore).isPresent())
                .isEqualTo(byBar);
        assertThat(ReadingLimit.byHone(hole, mm("70.250"), request, bore).isPresent())
                .isEqualTo(byHone);
    }

    /** A radius may be (70.250 − 0.05)/2 − U, less 0.02 of centring error where it was not taken from the bar's own axis. */
    @ParameterizedTest(name = "{0}, wall at {1}, from the bar''s axis {2}: {3}")
    @CsvSource({
        "70.110, 35.060, true, 35.094719",
        "70.110, 35.060, false, 35.074719",
        "-, 35.060, true, 35.094718",
        // 2 × 35.055 is no more than the diameter asks for by itself
        "70.110, 35.055, true, ",
        "70.110, 35.055001, true, 35.094719",
    })
    void aProbedWallDecidesAloneWhereTheDiametersAskForLess(
            String diameter, Length radius, boolean fromBarAxis, Length most) {
        Survey read = diameter.equals("-") ? new NotMeasured() : Grids.grid(diameter + " 70.010");

        assertThat(ReadingLimit.byBar(hole(read, probed(radius, fromBarAxis)), mm("70.250"), request, bore))
                .isEqualTo(Optional.ofNullable(most).map(limit -> new ReadingLimit(Read.PROBED_WALL, limit)));
    }

    @ParameterizedTest(name = "probed to U = {0}: {1}")
    @CsvSource({"0.001, 35.094719", "0.005, 35.094719", "0.005001, 35.094718", "0.020, 35.079927"})
    void aWallThatWasProbedWorseMustLieNearer(Length uncertainty, Length most) {
        Wall wall = TwinShop.probed(new Wall.Reach(mm("35.060"), true, Optional.of(uncertainty)));

        assertThat(ReadingLimit.byBar(hole(Grids.grid("70.110 70.010"), wall), mm("70.250"), request, bore))
                .contains(new ReadingLimit(Read.PROBED_WALL, most));
    }

    /** At 30 mm 2·70.020 − 70 + 0.04 + 2d may come to 70.2 − 2U: up to there the finding is no matter of the wall, beyond it lies behind it. */
    @ParameterizedTest(name = "scored {0} at {1}: {2}")
    @CsvSource({
        "0.054719, 30, 35.094719",
        "0.054720, 30, 35.039999",
        "0.054719, , 35.040000",
    })
    void aProbedWallIsHeldBackByAFindingOnlyWhereItsPlaceDoesNotProveIt(Length depth, Length height, Length most) {
        Hole hole = hole(
                Grids.grid("70.010 70.005 / 70.060 70.005 / 70.020 70.005"),
                probed(mm("35.060"), true),
                new Finding(Finding.Kind.SCORED, Optional.of(depth), Optional.ofNullable(height)));

        assertThat(ReadingLimit.byBar(hole, mm("70.250"), request, bore))
                .contains(new ReadingLimit(Read.PROBED_WALL, most));
    }

    /** A single reading below what the present size can have had is the size when new as well: to move it moves both. */
    @ParameterizedTest(name = "{0}: decides {1}")
    @CsvSource({
        "69.980, false",
        "69.980 69.980, false",
        "69.980 70.060, true",
        "70.000, true",
        "70.060, true",
    })
    void aReadingThatIsTheSizeWhenNewAsWellDecidesNothing(String readings, boolean decides) {
        Hole hole = hole(Grids.grid(readings), Wall.UNKNOWN);

        assertThat(ReadingLimit.byBar(hole, mm("70.250"), request, bore).isPresent())
                .isEqualTo(decides);
    }

    /** As it is: the smallest piston and its greatest clearance, less U; nothing while a depth is open or nothing was measured. */
    @ParameterizedTest(name = "{0}, {1}: decides {2}")
    @CsvSource({"70.010 70.005, WORN, true", "70.010 70.005, SCORED, false", "-, WORN, false"})
    void inAHoleLeftAsItIsTheLargestDiameterDecides(String readings, Finding.Kind kind, boolean decides) {
        Survey read = readings.equals("-") ? new NotMeasured() : Grids.grid(readings);
        PistonShape piston =
                TwinShop.piston("P-1", "standard", "0", Optional.empty()).shape();
        Length most = piston.diameter().least().plus(piston.clearance().greatest());

        assertThat(ReadingLimit.asItIs(hole(read, Wall.UNKNOWN, new Finding(kind, NONE, NONE)), piston, request, bore))
                .isEqualTo(Optional.of(new ReadingLimit(Read.LARGEST_DIAMETER, most.minus(mm("0.005281"))))
                        .filter(limit -> decides));
    }

    /** The score at 30 mm is judged on the row there; all that was above the limit comes down to it, and none but the largest goes up. */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({
        "LARGEST_DIAMETER, 70.200, 70.010 70.020 / 70.200 70.130 / 70.020 70.030",
        "LARGEST_DIAMETER, 70.025, 70.010 70.020 / 70.025 70.025 / 70.020 70.025",
        "DIAMETER_AT_FINDING, 70.050, 70.010 70.020 / 70.140 70.130 / 70.020 70.050",
        "DIAMETER_AT_FINDING, 70.015, 70.010 70.020 / 70.140 70.130 / 70.015 70.015",
    })
    void aReadingIsMovedWithAllThatWouldBeAboveIt(Read read, Length to, String rows) {
        CylinderSurvey survey = new CylinderSurvey(
                "1", Grids.grid("70.010 70.020 / 70.140 70.130 / 70.020 70.030"), Wall.UNKNOWN, List.of());
        ReadingLimit limit =
                new ReadingLimit(read, Optional.of(mm("30")).filter(height -> read == Read.DIAMETER_AT_FINDING), to);

        assertThat(limit.moved(survey, to).asRead()).isEqualTo(Grids.grid(rows));
    }

    /**
     * At 30 °C a hole of 70 mm has grown by 70 × 10 × 11.4 = 7 980 nm and a radius of 35 mm by 3 990; on a ring that had grown by 70 × 10 ×
     * 11.5 = 8 050 nm the gauge shows so much less, and a probe does not.
     */
    @ParameterizedTest(name = "{0} {1} at {2} °C, ring at {3} °C: {4}")
    @CsvSource({
        "LARGEST_DIAMETER, 70, 20, 20, 70",
        "LARGEST_DIAMETER, 70, 30, 20, 70.007980",
        "LARGEST_DIAMETER, 70, 30, 30, 69.999930",
        "DIAMETER_AT_FINDING, 70, 20, 30, 69.991950",
        "PROBED_WALL, 35, 30, 30, 35.003990",
        "PROBED_WALL, 35, 20, 30, 35",
    })
    void aLimitIsToldAsItWouldBeRead(Read read, Length at20, BigDecimal warm, BigDecimal ring, Length asRead) {
        Gauge gauge = Gauge.Kind.BORE_GAUGE
                .usual()
                .zeroedOn(Optional.of(new SettingRing(mm("70"), celsius(ring), SettingRing.STEEL)));
        MatchRequest warmed = Requests.measured(request, gauge, Climate.at(celsius(warm)));

        assertThat(new ReadingLimit(read, at20).asRead(warmed, bore)).isEqualTo(asRead);
    }

    private static Temperature celsius(BigDecimal degrees) {
        return Temperature.parse(degrees, Temperature.Scale.CELSIUS);
    }

    private static Wall probed(Length radius, boolean fromBarAxis) {
        return TwinShop.probed(new Wall.Reach(radius, fromBarAxis));
    }

    private Hole hole(Survey read, Wall wall, Finding... findings) {
        return Hole.of(
                bore,
                shop.shelf().engine().cylinders().get(0),
                new CylinderSurvey("1", read, wall, List.of(findings)),
                request.measuring(),
                Optional.of(mm("70.000")));
    }
}
