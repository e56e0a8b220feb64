package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.fit.Amount;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Quantity;
import org.borewright.fit.Readings;
import org.borewright.fit.Rule;
import org.borewright.fit.Sense;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two pistons may go into the holes of the twin at standard: the usual one, P-STD, and another that differs in one thing. */
class EveryPistonTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "{0} with {1} {2} to {3}: {4}")
    @CsvSource({
        // pin 17.996 to 18.000, 0 to 0.012 in the piston
        "P-A, pin bore, 18.000, 18.008, ",
        "P-A, pin bore, 17.999999, 18.008, PIN_IN_PISTON_LEAST P-A",
        "P-Z, pin bore, 17.999999, 18.008, PIN_IN_PISTON_LEAST P-Z",
        "P-Z, pin bore, 18.000, 18.008001, PIN_IN_PISTON_GREATEST P-Z",
        // 57.9 − 2·1.20 − 55.4 = 0.1; 58.16 − 2·1.18 − 55.2 = 0.6
        "P-Z, clip span, 57.9, 58.16, ",
        "P-A, clip span, 57.899999, 58.16, CLIP_FLOAT_LEAST P-A",
        "P-Z, clip span, 57.9, 58.160001, CLIP_FLOAT_GREATEST P-Z",
        // ring 1.48 to 1.50 high, play 0.01 to 0.08
        "P-Z, groove, 1.51, 1.56, ",
        "P-A, groove, 1.509999, 1.56, 'RING_PLAY_LEAST top, P-A'",
        "P-Z, groove, 1.51, 1.560001, 'RING_PLAY_GREATEST top, P-Z'",
        // the ring gap in holes from 69.928 170 + 0.040 on: 0.30 − π·0.031 830 = 0.200 003
        "P-A, diameter, 69.928170, 69.950, ",
        "P-A, diameter, 69.928169, 69.950, 'RING_GAP_LEAST top, P-A'",
        // and in holes up to 70.011 408 + 0.100: 0.45 + π·0.111 408 = 0.799 999, rounded up
        "P-Z, diameter, 69.941, 70.011408, ",
        "P-Z, diameter, 69.941, 70.011409, 'RING_GAP_GREATEST top, P-Z'",
        // 199.4 + 0.5 − (80/2 + 125 + 35.3) + 1.0 = 0.6
        "P-Z, crown, 35.3, 35.3, ",
        "P-A, crown, 35.300001, 35.300001, PISTON_TO_HEAD_LEAST P-A",
        "P-Z, crown, 35.300001, 35.300001, PISTON_TO_HEAD_LEAST P-Z",
    })
    void whatOneOfThemDoesNotBearStandsAgainstTheSize(
            String number, String what, String least, String greatest, String standing) {
        shop.pistons.add(piston(number, changed(what, new Limits(mm(least), mm(greatest)))));

        Choice choice = standard();

        assertThat(choice.blocksAsMade(shop.shelf().engine()).stream()
                        .flatMap(block -> block.checks().stream())
                        .map(check -> check.rule() + " " + check.place()))
                .isEqualTo(standing == null ? List.of() : List.of(standing));
        assertThat(choice.outfits().isEmpty()
                        || GasketFit.fitting(choice.gaskets()).isEmpty())
                .isEqualTo(standing != null);
    }

    /** The gasket opens 73 mm: 71.9 + 0.1 + 2·0.5. */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({"70.090, 70.100, ", "70.090, 71.900, ", "70.090, 71.900001, GASKET_OPENING P-Z"})
    void theGasketClearsTheLargest(String least, String greatest, String standing) {
        shop.pistons.add(piston("P-Z", changed("diameter", new Limits(mm(least), mm(greatest)))));

        assertThat(standard().gaskets().stream()
                        .flatMap(fit -> Check.holding(fit.checks()).stream())
                        .map(check -> check.rule() + " " + check.place()))
                .isEqualTo(standing == null ? List.of() : List.of(standing));
    }

    /** A figure is the margin with a piston; {@code ?} not known, {@code /} not checked, {@code -} the rule is not asked of it. */
    @ParameterizedTest(name = "A {0}, B {1}, C {2}: {3} with margin {4} at {5}")
    @CsvSource({
        "5, 5, 5, IN, 5, top",
        "5, 3, 4, IN, 3, 'top, P-B'",
        "3, 3, 4, IN, 3, 'top, P-A'",
        "5, 0, 4, IN, 0, 'top, P-B'",
        "5, 4, -1, OUT, -1, 'top, P-C'",
        "-2, 4, -1, OUT, -2, 'top, P-A'",
        "?, 4, -1, OUT, -1, 'top, P-C'",
        "/, 4, ?, UNKNOWN, , 'top, P-C'",
        "9, /, 3, NOT_CHECKED, , 'top, P-B'",
        "/, /, /, NOT_CHECKED, , top",
        "5, -, 5, IN, 5, 'top, P-A'",
        "-, -, 5, IN, 5, 'top, P-C'",
    })
    void aRuleIsToldOnceAsItEndsWorst(String a, String b, String c, Outcome outcome, Long margin, String place) {
        Map<PistonShape, List<Check>> told = Map.of(
                ofDiameter("69.941"), check(a),
                ofDiameter("69.942"), check(b),
                ofDiameter("69.943"), check(c));

        List<Check> checks = EveryPiston.asked(
                List.of(
                        piston("P-A", ofDiameter("69.941")),
                        piston("P-B", ofDiameter("69.942")),
                        piston("P-C", ofDiameter("69.943"))),
                told::get);

        assertThat(checks).singleElement().satisfies(check -> {
            assertThat(check.outcome()).isEqualTo(outcome);
            assertThat(check.place()).isEqualTo(place);
            assertThat(check instanceof Comparison found ? found.margin() : null)
                    .isEqualTo(margin);
        });
    }

    /** Left smaller than right, or right smaller than left: 69.941 + 0.060, and 69.943 + 0.100. */
    @ParameterizedTest
    @CsvSource({"69.941, 69.943", "69.943, 69.941"})
    void theFinishIsThatOfTheSmallestAndTheLargestFinishThatOfTheLargestInWhicheverHole(String first, String second) {
        Choice usual = standard();
        Choice handed = new Choice(
                usual.size(),
                usual.design(),
                List.of(List.of(piston("P-L", ofDiameter(first))), List.of(piston("P-R", ofDiameter(second)))),
                usual.outfits(),
                usual.gaskets(),
                usual.metalChecks(),
                usual.blocks(),
                usual.wallAsMade());

        assertThat(handed.finish()).isEqualTo(mm("70.001"));
        assertThat(handed.largest().shape().largestFinish()).isEqualTo(mm("70.043"));
    }

    private PistonShape ofDiameter(String millimetres) {
        return changed("diameter", Limits.exactly(mm(millimetres)));
    }

    private static List<Check> check(String figure) {
        return switch (figure) {
            case "-" -> List.of();
            case "?" -> List.of(new Unchecked(Rule.RING_BACK, "top", Outcome.UNKNOWN, "not known"));
            case "/" -> List.of(new Unchecked(Rule.RING_BACK, "top", Outcome.NOT_CHECKED, "does not apply"));
            default ->
                List.of(new Comparison(
                        Rule.RING_BACK,
                        "top",
                        new Amount(100 + Long.parseLong(figure), Quantity.LENGTH),
                        Sense.AT_LEAST,
                        new Amount(100, Quantity.LENGTH),
                        0,
                        Readings.NONE));
        };
    }

    private Choice standard() {
        FitTable fits = FitTable.of(shop.shelf());
        return fits.at(fits.shelf().sizes().get(0)).get(0);
    }

    private Piston piston(String number, PistonShape shape) {
        Piston usual = shop.pistons.get(0);
        return new Piston(no(number), usual.design(), usual.size(), usual.hand(), Optional.of("B"), shape);
    }

    private PistonShape changed(String what, Limits to) {
        PistonShape usual = shop.pistons.get(0).shape();
        GrooveShape top = usual.grooves().get(0);
        ClipSeat clips = usual.clipSeat().orElseThrow();
        return new PistonShape(
                what.equals("diameter") ? to : usual.diameter(),
                usual.nominalBore(),
                usual.clearance(),
                what.equals("crown") ? new Crown(to.least(), mm("0"), 0) : usual.crown(),
                List.of(new GrooveShape(
                        top.name(),
                        top.section(),
                        what.equals("groove") ? to : top.width(),
                        top.root(),
                        top.gap(),
                        top.axialPlay(),
                        top.backClearanceLeast())),
                what.equals("pin bore") ? new PinSeat(to, usual.pinSeat().fit()) : usual.pinSeat(),
                Optional.of(
                        what.equals("clip span")
                                ? new ClipSeat(to, clips.width(), clips.endFloat(), clips.sidePlayGreatest())
                                : clips),
                usual.mass());
    }
}
