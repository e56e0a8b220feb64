package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.fit.Outcome;
import org.borewright.fit.shape.MassRange;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A piston of +0.50: 70.440 to 70.450, target 0.060. */
class PistonInHandTest {

    private final TwinBench bench = new TwinBench();

    /** Less than 70.390 is no reading across the thrust faces; a micrometer tells a piston to 0.004 100 and a little. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            NUMBER, DIAMETER,  BELIEVED, MAY BE FITTED, OPEN
            P-050,  70.389999, false,    false,         false
            P-050,  70.390,    true,     false,         false
            P-050,  70.435,    true,     false,         false
            P-050,  70.437,    true,     true,          true
            P-050,  70.440,    true,     true,          true
            P-050,  70.445,    true,     true,          false
            P-050,  70.453,    true,     true,          true
            P-050,  70.455,    true,     false,         false
            P-025,  70.195,    true,     false,         false
            """)
    void onlyWhatIsProvenAgainstAPistonKeepsItOut(
            String number, Length diameter, boolean believed, boolean mayBeFitted, boolean open) {
        PistonInHand piston = piston(number, diameter, null);

        assertThat(piston.isBelieved()).isEqualTo(believed);
        assertThat(piston.mayBeFitted()).isEqualTo(mayBeFitted);
        assertThat(piston.isOpen()).isEqualTo(open);
    }

    /** 70.445 mm read at 30 °C: the alloy of DESIGN-1 grows by 19.4 × 10⁻⁶, that of DESIGN-2, which is no piston of this size's choice, by 25. */
    @ParameterizedTest(name = "A of {0}, B of {1}: {2} and {3}")
    @CsvSource({
        "DESIGN-1, DESIGN-2, 70.431336, 70.427393",
        "DESIGN-2, DESIGN-1, 70.427393, 70.431336",
        "DESIGN-2, DESIGN-2, 70.427393, 70.427393",
    })
    void eachIsCorrectedWithItsOwnAlloy(String first, String second, Length ofFirst, Length ofSecond) {
        PistonDesign ours = bench.choice().design();
        PistonDesign other = new PistonDesign(
                "DESIGN-2",
                "Likewright",
                new Expansion(25e-6, 1e-6),
                ours.gaugeHeight(),
                ours.coating(),
                ours.wearLimit());
        Measuring warm = new Measuring(
                Gauge.Kind.MICROMETER.usual(),
                Climate.at(Temperature.parse(BigDecimal.valueOf(30), Temperature.Scale.CELSIUS)));

        List<PistonInHand> pistons = BenchPlan.pistons(
                List.of(other, ours), bench.choice(), warm, List.of(read("A", first), read("B", second)), Weighed.BARE);

        assertThat(pistons).extracting(PistonInHand::diameter).containsExactly(ofFirst, ofSecond);
        assertThat(pistons)
                .extracting(piston -> piston.checks().get(0).outcome() == Outcome.OUT)
                .containsExactly(first.equals("DESIGN-2"), second.equals("DESIGN-2"));
    }

    private PistonReading read(String tag, String design) {
        PistonReading plain = bench.piston(tag, "P-050", mm("70.445"), Optional.empty());
        Piston made = plain.part();
        return new PistonReading(
                tag,
                new Piston(made.number(), design, made.size(), made.hand(), made.grade(), made.shape()),
                plain.diameter(),
                plain.milligrams());
    }

    /** Target of 70.445 is 70.505; twice what the middle of the hole is from it. */
    @ParameterizedTest
    @CsvSource({"70.505, 70.505, 0", "70.503, 70.507, 0", "70.505, 70.508, 0.003", "70.500, 70.505, 0.005"})
    void howFarItIsFromTargetIsTheSameBothWays(Length least, Length greatest, Length twice) {
        assertThat(piston("P-050", mm("70.445"), null).offTarget(new Limits(least, greatest)))
                .isEqualTo(twice);
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(longs = 200_500)
    void itWeighsWhatTheScalesSaidAndNothingElse(Long milligrams) {
        assertThat(piston("P-050", mm("70.445"), milligrams).weight())
                .isEqualTo(Optional.ofNullable(milligrams).map(weighed -> new MassRange(weighed, weighed)));
    }

    /** Bare 200 to 201 g: a point one digit too far left is no piston, and with pin and clips it weighs more. */
    @ParameterizedTest
    @CsvSource({
        "200500, BARE, true",
        "20050,  BARE, false",
        "290000, BARE, false",
        "290000, WITH_PIN_AND_CLIPS, true",
        "29000,  WITH_PIN_AND_CLIPS, false",
    })
    void whatWeighsFarFromItsNumberIsHeld(Long milligrams, Weighed weighed, boolean mayBeFitted) {
        bench.weighed = weighed;

        BenchPlan plan =
                bench.plan(List.of(bench.piston("A", "P-050", mm("70.445"), Optional.of(milligrams))), "70.500", "-");

        assertThat(plan.pistons().get(0).mayBeFitted()).isEqualTo(mayBeFitted);
        assertThat(plan.holds().stream()
                        .filter(hold -> hold.reason() == BenchHold.Reason.MASS_MISREAD)
                        .flatMap(hold -> hold.pistons().stream()))
                .isEqualTo(mayBeFitted ? List.of() : List.of("A"));
    }

    private PistonInHand piston(String number, Length diameter, Long milligrams) {
        return bench.plan(List.of(bench.piston("A", number, diameter, Optional.ofNullable(milligrams))), "-", "-")
                .pistons()
                .get(0);
    }
}
