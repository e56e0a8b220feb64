package org.borewright.kit.rings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.Suitability;
import org.borewright.fit.Unchecked;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known of the piston that runs in the first hole of the twin, the other running on pistons of DESIGN-1. */
class PistonInHoleTest {

    private final TwinShop shop = new TwinShop();
    private Survey read = Grids.grid("70.060 70.045 / 70.050 70.040 / 70.043 70.025 / 70.043 70.020");

    /** Parts as a code and a size, {@code DESIGN-1 +0.25}; the code alone where the number is not known. */
    @ParameterizedTest(name = "{0} for {1} hole in an engine of {2}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
            DESIGN-1 standard | any  | standard | DESIGN-1, standard (P-1, made for any hole)  | DESIGN-1, standard | IN
            DESIGN-1 +0.25    | any  | +0.25    | DESIGN-1, +0.25 (P-1, made for any hole)     | DESIGN-1, +0.25    | IN
            DESIGN-1 +0.25    | any  | standard | DESIGN-1, +0.25 (P-1, made for any hole)     | DESIGN-1, standard | OUT
            DESIGN-2 standard | any  | standard | DESIGN-2, standard (P-1, made for any hole)  | DESIGN-1, standard | OUT
            DESIGN-1 standard | left | standard | DESIGN-1, standard (P-1, made for left hole) | DESIGN-1, standard | OUT
            DESIGN-1 +0.25    | any  | -        | DESIGN-1, +0.25 (P-1, made for any hole)     | DESIGN-1           | IN
            DESIGN-1          | any  | standard | DESIGN-1                                     | DESIGN-1, standard | IN
            DESIGN-2          | any  | standard | DESIGN-2                                     | DESIGN-1, standard | OUT
            DESIGN-1          | any  | -        | DESIGN-1                                     | DESIGN-1           | IN
            """)
    void itMustBeOfTheDesignOfTheOthersOfThePresentSizeAndOfTheHandOfItsHole(
            String piston, String hand, String present, String found, String asked, Outcome outcome) {
        Optional<Piston> part = piston.contains(" ")
                ? Optional.of(made(piston.split(" ", -1)[0], piston.split(" ", -1)[1], hand))
                : Optional.empty();

        Suitability kind = (Suitability) pistons(present, design(piston.split(" ", -1)[0]), part, Optional.empty())
                .kind(0)
                .orElseThrow();

        assertThat(kind.rule()).isEqualTo(Rule.PRESENT_PISTON);
        assertThat(kind.found()).isEqualTo(found);
        assertThat(kind.asked()).isEqualTo(asked);
        assertThat(kind.outcome()).isEqualTo(outcome);
    }

    /**
     * The skirt sweeps from 34.4 mm down, where the hole reads 70.043 across the thrust faces; 0.140 mm is borne, known to 0.006 678. A known
     * number has 69.940 to 69.950 mm, without one grades A and B of the present size 69.940 to 69.956; 0.05 below is not believed.
     */
    @ParameterizedTest(name = "number known {0}, reads {1}: {2} {3}")
    @CsvSource({
        "true, 69.909678, IN, 0.133322",
        "true, 69.909677, TOO_CLOSE, 0.133323",
        "true, 69.896321, OUT, 0.146679",
        "true, 69.890, OUT, 0.153",
        "true, 69.889999, UNKNOWN, measure it again at its gauge height",
        // 69.950 and U of the micrometer, 0.004 087, above it
        "true, 69.954087, IN, 0.088913",
        "true, 69.954088, UNKNOWN, find out which piston it is",
        "false, 69.954088, IN, 0.088912",
        "false, 69.960087, IN, 0.082913",
        "false, 69.960088, UNKNOWN, find out which piston it is",
        "false, 69.890, OUT, 0.153",
        "false, 69.889999, UNKNOWN, measure it again at its gauge height",
    })
    void itsClearanceIsThatWhereItsSkirtSweeps(boolean numbered, Length reads, Outcome outcome, String told) {
        Piston unlettered = shop.pistons.get(0);
        shop.pistons.set(0, TwinShop.piston("P-A", "standard", "0", Optional.of("A")));
        shop.pistons.add(TwinShop.piston("P-B", "standard", "0.006", Optional.of("B")));

        Check clearance = clearance(pistons(
                        "standard",
                        design("DESIGN-1"),
                        numbered ? Optional.of(unlettered) : Optional.empty(),
                        Optional.of(reads)))
                .orElseThrow();

        assertThat(clearance.rule()).isEqualTo(Rule.SERVICE_CLEARANCE);
        assertThat(clearance.outcome()).isEqualTo(outcome);
        assertThat(told(clearance)).contains(told);
    }

    /** Read at 30 mm and at 40: at 34.4 it may be as large as at 30. The piston of 69.930 mm is in up to 70.063 322 and out from 70.076 68. */
    @ParameterizedTest(name = "{0} above where the sweep begins, {1} below: {2} {3}")
    @CsvSource({
        "70.063322, 70.043, IN, 0.133322",
        "70.043, 70.063322, IN, 0.133322",
        "70.063323, 70.043, UNKNOWN, '34.4 mm below the deck'",
        "70.063323, 70.063323, TOO_CLOSE, 0.133323",
        "70.076600, 70.063323, TOO_CLOSE, 0.1466",
        "70.076700, 70.063323, UNKNOWN, '34.4 mm below the deck'",
        "70.090, 70.076700, OUT, 0.1467",
        "-, 70.050, IN, 0.12",
    })
    void whereTheSweepBeginsBetweenTwoRowsTheLargerBoundsIt(String above, String below, Outcome outcome, String told) {
        read = Grids.grid("70.040 70.045 / 70.040 70.040 / %s 70.025 / %s 70.020".formatted(above, below));

        Check clearance = clearance(pistons(
                        "standard", design("DESIGN-1"), Optional.of(shop.pistons.get(0)), Optional.of(mm("69.930"))))
                .orElseThrow();

        assertThat(clearance.outcome()).isEqualTo(outcome);
        assertThat(told(clearance)).contains(told);
    }

    /** Nothing was read as far up as the sweep begins, at 34.4 mm; what was read below it may still prove the piston too loose. */
    @ParameterizedTest(name = "first read at {0}, {1}: {2}")
    @CsvSource({"34.4, 70.043, IN", "34.400001, 70.043, UNKNOWN", "40, 70.043, UNKNOWN", "40, 70.090, OUT"})
    void aHoleMustBeReadAsFarUpAsTheSkirtSweepsIt(Length first, String reads, Outcome outcome) {
        read = Grids.grid(
                "%s 70.040 / 70.043 70.040 / 70.043 70.040".formatted(reads), List.of(first, mm("70"), mm("110")));

        assertThat(clearance(pistons(
                        "standard", design("DESIGN-1"), Optional.of(shop.pistons.get(0)), Optional.of(mm("69.930")))))
                .hasValueSatisfying(check -> assertThat(check.outcome()).isEqualTo(outcome));
    }

    private static String told(Check clearance) {
        return clearance instanceof Unchecked unchecked
                ? unchecked.reason()
                : Length.ofNanometres(((Comparison) clearance).value().units()).toString();
    }

    @ParameterizedTest(name = "hole {0}: {1}")
    @CsvSource({
        "70.060 70.045 / 70.050 70.040 / 70.045 70.025 / 70.043 70.020, IN",
        // nothing read in the sweep, or not across the thrust faces
        "70.060 70.045 / 70.050 70.040, UNKNOWN",
        "70.060 70.045 / 70.050 70.040 / 70.045 70.025 / - 70.020, UNKNOWN",
        "70.060, UNKNOWN",
    })
    void withoutAReadingWhereTheSkirtSweepsItsClearanceIsNotKnown(String rows, Outcome outcome) {
        read = rows.contains(" ") ? Grids.grid(rows) : new SingleDiameter(mm(rows));

        assertThat(clearance(pistons(
                        "standard", design("DESIGN-1"), Optional.of(shop.pistons.get(0)), Optional.of(mm("69.930")))))
                .hasValueSatisfying(check -> assertThat(check.outcome()).isEqualTo(outcome));
    }

    /**
     * Both read 69.930 mm at 30 °C, for a hole of 70.043: 69.916 436 mm in the alloy of DESIGN-1, 19.4 × 10⁻⁶, and 69.912 522 in that of
     * DESIGN-2, 25 × 10⁻⁶, which is refused beside the other. Which of them is in the first hole does not matter.
     */
    @ParameterizedTest(name = "{0} in the first hole, {1} in the second: {2} and {3}")
    @CsvSource({
        "DESIGN-1, DESIGN-2, 0.126564, 0.130478",
        "DESIGN-2, DESIGN-1, 0.130478, 0.126564",
    })
    void eachIsCorrectedWithItsOwnAlloy(String inFirst, String inSecond, Length first, Length second) {
        MatchRequest request = Requests.seen(
                request("standard", AsFound.NOT_TOLD), List.of(found(warm(inFirst)), found(warm(inSecond))));
        PistonInHole pistons = new PistonInHole(
                shop.shelf().engine(), request, design("DESIGN-1"), first(FitTable.of(shop.shelf()), request));
        Hole hole = shop.ask(request).surveyed().get(0);

        assertThat(List.of(first, second))
                .isEqualTo(Stream.of(0, 1)
                        .map(index ->
                                (Comparison) pistons.clearance(index, hole).orElseThrow())
                        .map(clearance -> Length.ofNanometres(clearance.value().units()))
                        .toList());
    }

    private PresentPiston warm(String code) {
        PistonDesign made = design(code).orElseThrow();
        Expansion alloy = code.equals("DESIGN-2") ? new Expansion(25e-6, 1e-6) : made.expansion();
        return new PresentPiston(
                Optional.of(new PistonDesign(
                        code, made.maker(), alloy, made.gaugeHeight(), made.coating(), made.wearLimit())),
                Optional.empty(),
                Optional.of(mm("69.930")),
                new Measuring(
                        Gauge.Kind.MICROMETER.usual(),
                        Climate.at(Temperature.parse(BigDecimal.valueOf(30), Temperature.Scale.CELSIUS))));
    }

    /** Neither its number nor a present size: nobody knows how large it was made. */
    @ParameterizedTest(name = "design {0}, present size {1}, reads {2}: told {3}")
    @CsvSource({
        "DESIGN-1, standard, 69.930, true",
        "DESIGN-1, -, 69.930, false",
        "DESIGN-1, standard, , false",
        ", standard, 69.930, false",
    })
    void nothingIsToldOfAPistonThatNobodyKnowsOrMeasured(String code, String present, Length reads, boolean told) {
        PistonInHole pistons = pistons(
                present, Optional.ofNullable(code).flatMap(this::design), Optional.empty(), Optional.ofNullable(reads));

        assertThat(clearance(pistons).isPresent()).isEqualTo(told);
        assertThat(pistons.kind(0).isPresent()).isEqualTo(code != null);
    }

    private Optional<Check> clearance(PistonInHole pistons) {
        return pistons.clearance(
                0, shop.ask(request("standard", AsFound.NOT_TOLD)).surveyed().get(0));
    }

    private Optional<PistonDesign> design(String code) {
        PistonDesign first = shop.shelf().parts().designs().get(0);
        return Optional.of(new PistonDesign(
                code, first.maker(), first.expansion(), first.gaugeHeight(), first.coating(), first.wearLimit()));
    }

    private static Piston made(String code, String size, String hand) {
        Piston piston = TwinShop.piston("P-1", size, "0", Optional.empty());
        Hand made = hand.equals("left") ? Hand.LEFT : Hand.ANY;
        return new Piston(piston.number(), code, size, made, piston.grade(), piston.shape());
    }

    private PistonInHole pistons(
            String present, Optional<PistonDesign> design, Optional<Piston> part, Optional<Length> reads) {
        Measuring micrometer = new Measuring(Gauge.Kind.MICROMETER.usual(), Climate.at(Temperature.REFERENCE));
        MatchRequest request = request(present, found(new PresentPiston(design, part, reads, micrometer)));
        return new PistonInHole(
                shop.shelf().engine(), request, design("DESIGN-1"), first(FitTable.of(shop.shelf()), request));
    }

    private static Optional<Choice> first(FitTable fits, MatchRequest request) {
        return request.present()
                .reliable()
                .flatMap((Size size) -> fits.at(size).stream().findFirst());
    }

    private static AsFound found(PresentPiston piston) {
        return new AsFound(piston, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private MatchRequest request(String present, AsFound found) {
        MatchRequest plain = shop.request(
                Condition.WORN,
                present,
                List.of(new CylinderSurvey("1", read, Wall.UNKNOWN, List.of()), CylinderSurvey.unsurveyed("2")));
        return Requests.seen(plain, List.of(found, AsFound.NOT_TOLD));
    }
}
