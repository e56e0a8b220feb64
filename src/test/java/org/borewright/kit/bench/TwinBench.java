package org.borewright.kit.bench;

import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.catalog.Piston;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;

/** The bench of the {@link TwinShop} at +0.50: pistons of 70.440 to 70.450 mm, clearance 0.040, 0.060, 0.100 mm, hone stock 0.05 mm. */
public final class TwinBench {

    private static final Expansion WALL = new Expansion(11.4e-6, 1e-6);
    private static final Expansion ALLOY = new Expansion(19.4e-6, 1e-6);

    public final TwinShop shop = new TwinShop();
    public Gauge gauge = Gauge.Kind.BORE_GAUGE.usual();
    public Climate ofHoles = Climate.at(Temperature.REFERENCE);
    public Condition condition = Condition.WORN;
    public Weighed weighed = Weighed.BARE;
    public Deck deck = skimmed("0", Optional.empty());

    /** A deck that so much is to be skimmed off, and so much was. */
    public static Deck skimmed(String skim, Optional<Length> before) {
        return new Deck(Optional.empty(), mm(skim), before);
    }

    /** What fits the engine of the shop. */
    public FitTable fits() {
        return FitTable.of(shop.shelf());
    }

    /** The pistons of +0.50. */
    public Choice choice() {
        FitTable fits = fits();
        return fits.at(fits.shelf().size("+0.50").orElseThrow()).get(0);
    }

    /** Pistons of a number, tagged A, B, C and so on, each with a diameter as read at 20 °C. */
    public List<PistonReading> pistons(String number, String... diameters) {
        return IntStream.range(0, diameters.length)
                .mapToObj(i -> piston(String.valueOf((char) ('A' + i)), number, mm(diameters[i]), Optional.empty()))
                .toList();
    }

    /** One piston. */
    public PistonReading piston(String tag, String number, Length diameter, Optional<Long> milligrams) {
        Piston part = shop.pistons.stream()
                .filter(made -> made.number().text().equals(number))
                .findFirst()
                .orElseThrow();
        return new PistonReading(tag, part, diameter, milligrams);
    }

    /** The plan for pistons and holes, everything measured at 20 °C. */
    public BenchPlan plan(List<PistonReading> pistons, List<CylinderSurvey> holes) {
        return BenchPlan.of(fits(), request(pistons, holes, ofPistons()));
    }

    /** The question of pistons and holes. */
    public BenchRequest request(List<PistonReading> pistons, List<CylinderSurvey> holes, Measuring ofPistons) {
        return new BenchRequest(choice(), condition, pistons, weighed, holes, deck, ofHoles(), ofPistons, TwinShop.DAY);
    }

    /** The plan for holes of one diameter each, {@code -} for one not measured. */
    public BenchPlan plan(List<PistonReading> pistons, String... diameters) {
        return plan(pistons, TwinShop.surveys(diameters));
    }

    /** The gauge of holes, at 20 °C unless told. */
    public Measuring ofHoles() {
        return new Measuring(gauge, ofHoles);
    }

    /** A micrometer at 20 °C. */
    public static Measuring ofPistons() {
        return new Measuring(Gauge.Kind.MICROMETER.usual(), Climate.at(Temperature.REFERENCE));
    }

    /** The expanded uncertainty of a hole. */
    public Length ofHole(Length diameter) {
        return ofHoles().budget(diameter, WALL).expanded();
    }

    /** The expanded uncertainty of a piston. */
    public static Length ofPiston(Length diameter) {
        return ofPistons().budget(diameter, ALLOY).expanded();
    }
}
