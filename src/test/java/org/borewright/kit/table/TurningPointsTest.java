package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Size;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.kit.hole.TurningPoint;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Readings of a 70.000 mm twin that would change its size, worked by hand: 2·D − 70.000 + 0.040 + 2U ≤ finish − 0.050, so that D may be
 * (finish + 69.910)/2 − U, with U = 0.00528 mm at such a diameter; by the hone alone D + 0.005 + U ≤ finish.
 */
class TurningPointsTest {

    private static final Optional<Length> NONE = Optional.empty();

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // hole 1 | hole 2 | the turning points: hole, side, reading in mm to 0.1 µm, size then
                "70.060 | 70.050 | 1 above 70.0747 +0.50; 2 above 70.0747 +0.50",
                "70.060 | 70.150 | 1 above 70.1997 +0.75; 2 above 70.1997 +0.75; 2 at most 70.0747 +0.25",
                "70.150 | 70.150 | 1 above 70.1997 +0.75; 2 above 70.1997 +0.75",
                // +1.00 is the last: above 70.4497 no size is certain
                "70.420 | 70.002 | 1 above 70.4497 -; 1 at most 70.3247 +0.75; 2 above 70.4497 -",
                // none is certain, and one hole alone is in the way
                "70.460 | 70.002 | 1 at most 70.4497 +1.00",
                // nothing measured decides nothing
                "70.060 | -      | ''",
            })
    void aReadingThatWouldChangeTheSizeIsNamed(String first, String second, String points) {
        assertThat(told(shop.worn("standard", first, second))).isEqualTo(points);
    }

    /** Never bored, so no larger size: the smallest piston, 69.940, bears a clearance of 0.100 mm less U. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "70.010 | 70.034 | 1 above 70.0347 -; 2 above 70.0347 -",
                "70.010 | 70.035 | 2 at most 70.0347 standard",
                "70.035 | 70.035 | ''",
            })
    void aWallThatIsNeverCutBearsTheGreatestClearanceOfItsPiston(String first, String second, String points) {
        shop.construction = Construction.PLATED;

        assertThat(told(shop.worn("standard", first, second))).isEqualTo(points);
    }

    /** Nor is a reading of the sound hole told: whatever it reads, there is no kit. */
    @ParameterizedTest
    @EnumSource(
            value = Finding.Kind.class,
            names = {"HOLED", "MELTED", "CRACKED"})
    void noReadingHealsAHoleThatIsBeyondMachining(Finding.Kind found) {
        Finding finding = new Finding(found, NONE, NONE);
        CylinderSurvey first =
                new CylinderSurvey("1", new SingleDiameter(mm("70.460")), Wall.UNKNOWN, List.of(finding));

        assertThat(told(shop.ask(
                        shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.460"))))))
                .isEmpty();
    }

    /** An unworn wall of 70.200 contradicts 70.150: something is wrong with the one or the other, and no diameter is told beside. */
    @Test
    void noReadingIsToldBesideOneThatContradictsTheOthers() {
        Wall wall = new Wall(NONE, Optional.of(mm("70.200")), Optional.empty(), NONE, NONE, false);
        CylinderSurvey first = new CylinderSurvey("1", new SingleDiameter(mm("70.150")), wall, List.of());

        assertThat(told(shop.ask(
                        shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.460"))))))
                .isEmpty();
    }

    /**
     * An engine at +0.25, the smallest such hole 70.230: the hone bears 70.239 7; the bar at +0.34, which finishes at 70.340, no more than
     * (70.290 + 70.230 − 0.04)/2 − U = 70.234 7, and at +0.50 it bears 70.314 7.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // a larger size that bears less is passed over
                "70.232 | 70.231 | 1 above 70.2397 +0.50; 2 above 70.2397 +0.50",
                // and of two smaller sizes the one that bears more is named
                "70.245 | 70.232 | 1 above 70.3147 +0.75; 1 at most 70.2397 +0.25; 2 above 70.3147 +0.75",
                "70.245 | 70.245 | 1 above 70.3147 +0.75; 2 above 70.3147 +0.75",
            })
    void theHoneOfThePresentSizeMayBearMoreThanTheBarOfTheNext(String first, String second, String points) {
        shop.size("+0.34", "0.34");

        assertThat(told(shop.worn("+0.25", first, second))).isEqualTo(points);
    }

    /** The hone of +0.25 bears hole 2 wherever its wall lies, but not hole 1: a nearer wall brings +0.50, and no less. */
    @Test
    void aSizeThatAnotherHoleIsTooLargeForIsNotBrought() {
        Wall wall = TwinShop.probed(new Wall.Reach(mm("35.207"), false));
        CylinderSurvey second = new CylinderSurvey("2", new SingleDiameter(mm("70.232")), wall, List.of());

        assertThat(told(shop.ask(
                        shop.request(Condition.WORN, "+0.25", List.of(TwinShop.survey("1", "70.245"), second)))))
                .isEqualTo("1 above 70.4397 +1.00; 1 at most 70.2397 +0.25; "
                        + "2 above 35.3247 +1.00; 2 at most 35.1997 +0.50");
    }

    /** Never bored, with a second grade that is 0.05 larger and bears 70.045 3 to 70.084 7; between it and the smaller one lies a gap. */
    @Test
    void theLimitOfASmallerGradeThatIsPassedAlreadyTurnsNothing() {
        shop.construction = Construction.PLATED;
        shop.pistons.set(0, TwinShop.piston("P-STD", "standard", "0", Optional.of("A")));
        Piston small = shop.pistons.get(0);
        PistonShape shape = small.shape();
        PistonShape larger = new PistonShape(
                shape.diameter().plus(mm("0.05")),
                shape.nominalBore(),
                shape.clearance(),
                shape.crown(),
                shape.grooves(),
                shape.pinSeat(),
                shape.clipSeat(),
                shape.mass());
        shop.pistons.add(new Piston(
                TwinShop.no("P-STD-B"), small.design(), small.size(), small.hand(), Optional.of("B"), larger));
        shop.offer("P-STD-B", "40", 10);

        assertThat(told(shop.worn("standard", "70.060", "70.010"))).isEqualTo("1 above 70.0847 -; 2 above 70.0347 -");
    }

    /** The second maker's +0.25 finishes at 70.240 and bears 70.069 7: a size that serves already is no smaller one, nor a larger. */
    @ParameterizedTest
    @ValueSource(strings = {"70.072", "70.060"})
    void anotherMakersPistonsOfTheSameSizeTurnNothing(String first) {
        TwoMakers makers = new TwoMakers(shop, "0.240", "40");

        assertThat(told(makers.ask(shop.request(Condition.WORN, "standard", TwinShop.surveys(first, "70.050")))))
                .isEqualTo("1 above 70.0747 +0.50; 2 above 70.0747 +0.50");
    }

    /** At +0.25 a hole new at D₀ may read (70.200 + D₀ − 0.04)/2 − 0.005 28: never less than D₀ was, which is 70.149 4 at the most. */
    @ParameterizedTest(name = "new at {0}, reads {1}, wall {2}, scored {3}: {4}")
    @CsvSource(
            delimiter = '|',
            value = {
                "70.149 | 70.160 |       |      | 70.1492",
                "70.150 | 70.160 |       |      | -",
                "70.149 | 70.160 | 3.500 |      | -",
                "70.000 | 70.100 |       | 0    | 70.0747",
                "70.000 | 70.100 |       | 0.01 | -",
            })
    void noReadingIsNamedThatTheHoleCannotHaveOrThatTellsNothingAlone(
            Length whenNew, Length diameter, Length leastWall, Length depth, String most) {
        Wall wall = new Wall(Optional.of(whenNew), NONE, Optional.empty(), NONE, Optional.ofNullable(leastWall), false);
        List<Finding> scored =
                depth == null ? List.of() : List.of(new Finding(Finding.Kind.SCORED, Optional.of(depth), NONE));

        assertThat(smaller(new CylinderSurvey("1", new SingleDiameter(diameter), wall, scored)))
                .isEqualTo(most);
    }

    /** A wall may lie 35.094 7 off the bar's own axis, and never nearer than half the diameter. */
    @ParameterizedTest(name = "{0}, wall at {1}: {2}")
    @CsvSource({"70.189, 35.097, 35.0947", "70.1894, 35.097, 35.0947", "70.1895, 35.097, -", "70.110, 35.097, 35.0947"})
    void aProbedWallTurnsTheSizeNoNearerThanHalfTheDiameter(Length diameter, Length radius, String most) {
        Wall wall = TwinShop.probed(new Wall.Reach(radius, true));

        assertThat(smaller(new CylinderSurvey("1", new SingleDiameter(diameter), wall, List.of())))
                .isEqualTo(most);
    }

    /** The reading of the first hole that brings +0.25, the second being good for it. */
    private String smaller(CylinderSurvey first) {
        return shop
                .ask(shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.010"))))
                .turningPoints()
                .stream()
                .filter(point -> point.side() == TurningPoint.Side.AT_MOST)
                .map(point -> String.format(Locale.ROOT, "%.4f", point.limit().toMillimetres()))
                .collect(Collectors.collectingAndThen(
                        Collectors.joining(" "), points -> points.isEmpty() ? "-" : points));
    }

    private static String told(Match match) {
        return match.turningPoints().stream().map(TurningPointsTest::inWords).collect(Collectors.joining("; "));
    }

    private static String inWords(TurningPoint point) {
        String side = point.side() == TurningPoint.Side.ABOVE ? "above" : "at most";
        return String.format(
                Locale.ROOT,
                "%s %s %.4f %s",
                point.cylinder(),
                side,
                point.limit().toMillimetres(),
                size(point).map(Size::label).orElse("-"));
    }

    private static Optional<Size> size(TurningPoint point) {
        return ((TurningPoint.Goes) point.then()).size();
    }
}
