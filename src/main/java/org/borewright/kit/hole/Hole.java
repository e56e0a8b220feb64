package org.borewright.kit.hole;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Cylinder;
import org.borewright.fit.CleanUp;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.ProbedWall;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;

/**
 * One hole of the engine as it was surveyed, corrected to 20 °C, and what follows from its readings alone.
 *
 * @param cylinder its place in the engine
 * @param survey what was noted
 * @param at20 the diameters at 20 °C
 * @param diameters the smallest and the largest of them; empty when nothing was measured or what was is queried
 * @param budget the uncertainty of one diameter, term by term; empty when nothing was measured
 * @param uncertainty the expanded uncertainty of one diameter; zero when nothing was measured
 * @param whenNew the size it had when new, and what tells; empty when nothing tells
 * @param contradictedProbe the probe, where it contradicts the diameters so that nothing is computed from it
 * @param probe the probed wall as read; empty when it was not probed, when the probe contradicts the diameters, or when they prove more
 * @param cleanUp by the bar, best and worst
 * @param honeCleanUp what the hone alone must reach; empty when nothing was measured
 */
public record Hole(
        Cylinder cylinder,
        CylinderSurvey survey,
        Survey at20,
        Optional<Limits> diameters,
        Optional<Uncertainty> budget,
        Length uncertainty,
        Optional<WhenNew> whenNew,
        Optional<Comparison> contradictedProbe,
        Optional<Wall.Reach> probe,
        CleanUp cleanUp,
        Optional<Length> honeCleanUp) {

    /**
     * The hole as surveyed, its readings corrected with the α of the engine's wall.
     *
     * @param presentLeast the smallest hole the present size can have had; empty when the present size is not known
     */
    public static Hole of(
            BoreSpec bore, Cylinder cylinder, CylinderSurvey survey, Measuring with, Optional<Length> presentLeast) {
        Temperature temperature = with.climate().temperature();
        CylinderSurvey corrected = survey.map(
                diameter -> with.atReference(diameter, bore.expansion()),
                radius -> bore.expansion().atReference(radius, temperature));
        Survey at20 = corrected.asRead();
        Optional<Limits> diameters = at20.diameters();
        Optional<Uncertainty> budget = diameters
                .map(Limits::greatest)
                .or(() -> corrected.wall().reach().map(reach -> reach.radius().doubled()))
                .map(diameter -> with.budget(diameter, bore.expansion()));
        Optional<WhenNew> whenNew = WhenNew.of(corrected.wall(), presentLeast, diameters.map(Limits::least));
        Optional<Comparison> contradictedProbe = contradictedProbe(corrected, diameters, budget);
        Uncertainty reading = budget.orElse(Uncertainty.NONE);
        CleanUp unprobed = HoleCleanUp.byBar(corrected, Optional.empty(), whenNew, bore.centringError(), reading);
        Optional<CleanUp> probed = corrected
                .wall()
                .reach()
                .filter(reach -> contradictedProbe.isEmpty())
                .map(reach -> HoleCleanUp.byBar(corrected, Optional.of(reach), whenNew, bore.centringError(), reading))
                .filter(cleanUp -> !cleanUp.isWorthLessThan(unprobed));
        Optional<Length> honeCleanUp = HoleCleanUp.byHone(at20, survey.findings(), bore.honeCleanUp());
        return new Hole(
                cylinder,
                survey,
                at20,
                diameters,
                budget,
                reading.expanded(),
                whenNew,
                contradictedProbe,
                survey.wall().reach().filter(reach -> probed.isPresent()),
                probed.orElse(unprobed),
                honeCleanUp);
    }

    /** Whether the gauge read something of one of these holes. */
    public static boolean isAnyRead(List<Hole> holes) {
        return holes.stream().anyMatch(hole -> hole.budget.isPresent());
    }

    /** Holes in a sentence, by their names. */
    public static String inWords(List<String> cylinders) {
        return (cylinders.size() == 1 ? "cylinder " : "cylinders ") + String.join(", ", cylinders);
    }

    /** Its name. */
    public String name() {
        return cylinder.name();
    }

    /**
     * The uncertainty of one of its readings, term by term.
     *
     * @throws java.util.NoSuchElementException if nothing was measured
     */
    public Uncertainty ofReading() {
        return budget.orElseThrow();
    }

    /**
     * The uncertainty of what decides by the bar, likewise: of a reading, or of a probed wall.
     *
     * @throws java.util.NoSuchElementException if nothing was measured
     */
    public Uncertainty ofDeciding() {
        return HoleCleanUp.ofDeciding(probe, ofReading());
    }

    /** Where a check of it stands beside those of other holes. */
    public String place() {
        return "cylinder " + name();
    }

    /** Wear: the largest diameter less the size when new; empty when either is not known. */
    public Optional<Length> wear() {
        return diameters.flatMap(
                measured -> whenNew.map(known -> measured.greatest().minus(known.diameter())));
    }

    private static Optional<Comparison> contradictedProbe(
            CylinderSurvey at20, Optional<Limits> diameters, Optional<Uncertainty> budget) {
        return at20.wall()
                .reach()
                .flatMap(reach -> diameters.map(all -> ProbedWall.check(
                        reach.radius(),
                        all.greatest(),
                        HoleCleanUp.ofDeciding(Optional.of(reach), budget.orElseThrow()))))
                .filter(check -> check.outcome() == Outcome.OUT);
    }

    /** The probed wall at 20 °C, read at a temperature; empty likewise. */
    public Optional<Wall.Reach> probeAt20(BoreSpec bore, Temperature temperature) {
        return probe.map(reach -> reach.at(bore.expansion().atReference(reach.radius(), temperature)));
    }

    /** Whether the wall was probed, the diameters bear it out, and they alone prove no more. */
    public boolean isProbed() {
        return probe.isPresent();
    }

    /** Whether it was probed with something so little worth that the diameters prove more without it. */
    public boolean isProbeSetAside() {
        return survey.wall().reach().isPresent() && probe.isEmpty() && contradictedProbe.isEmpty();
    }

    /** The clean-up by the bar if all findings whose height nobody noted lay at one height below the deck. */
    public CleanUp cleanUpAt(Length height, BoreSpec bore, Temperature temperature) {
        return HoleCleanUp.byBar(
                survey.with(at20).placed(height),
                probeAt20(bore, temperature),
                whenNew,
                bore.centringError(),
                budget.orElse(Uncertainty.NONE));
    }

    /**
     * How near the bar's own axis the farthest wall must prove to lie at 20 °C for a finish to be certain, off the original axis nearer by
     * the centring error.
     */
    public Length wallWithin(Length finish, BoreSpec bore) {
        Length proven = finish.minus(bore.honeStock()).minus(cleanUp.guard());
        Length behind = HoleCleanUp.behindWall(survey.with(at20), whenNew, bore.centringError(), proven);
        return CleanUp.wallWithin(finish, bore.honeStock(), cleanUp.guard(), behind);
    }
}
