package org.borewright.kit.caution;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.borewright.catalog.Build;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Strokes;
import org.borewright.fit.Check;
import org.borewright.fit.Rule;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;

/** Gathers the cautions that an answer carries, each once. */
public final class Cautions {

    private static final int HALF_TURN = 180;
    private static final int FARTHEST_APART = 60;
    private static final int FAR_APART_KELVINS = 5;

    private final Set<Caution> due = EnumSet.of(Caution.MAKER_FIRST, Caution.TRAINED_PEOPLE);

    /** Those that stand on every answer. */
    public Cautions() {}

    /** All that are due, in their own order. */
    public List<Caution> told() {
        return List.copyOf(due);
    }

    /** One more, if it is due. */
    public Cautions when(boolean isDue, Caution caution) {
        if (isDue) {
            due.add(caution);
        }
        return this;
    }

    /**
     * Of how the engine is built.
     *
     * @param cut whether some hole is bored or honed
     */
    public Cautions ofBuild(Engine engine, boolean cut) {
        Build build = engine.build();
        return when(build.construction() == Construction.SLEEVED_ALUMINIUM_BARREL, Caution.SLEEVE_IN_ALUMINIUM)
                .when(build.torquePlate(), Caution.TORQUE_PLATE)
                .when(!build.construction().mayBeBored(), Caution.NEVER_BORED)
                .when(build.strokes() == Strokes.TWO, Caution.RING_PEGS)
                .when(build.strokes() == Strokes.TWO && cut, Caution.PORTS)
                .when(!engine.rodEnd().pressed(), Caution.NEW_CLIPS);
    }

    /** Of a deck that stands so much lower than it was made. */
    public Cautions ofLowered(Engine engine, Length by) {
        boolean lowered = by.isMoreThan(Length.ZERO);
        boolean twoStroke = engine.build().strokes() == Strokes.TWO;
        return when(lowered, Caution.SKIMMED_DECK)
                .when(lowered && !twoStroke, Caution.VALVE_ROOM)
                .when(lowered && twoStroke, Caution.CUT_BASE);
    }

    /** Of how warm it was, the setting ring included. */
    public Cautions ofTemperature(Measuring with) {
        return when(
                        with.climate().isFarFromReference()
                                || with.gauge()
                                        .ring()
                                        .filter(ring ->
                                                Climate.at(ring.temperature()).isFarFromReference())
                                        .isPresent(),
                        Caution.TEMPERATURE_FAR)
                .when(with.climate().stated().isEmpty(), Caution.TEMPERATURE_NOT_STATED);
    }

    /** Of two kinds of things measured against each other, each as warm as it was. */
    private Cautions ofTemperatures(Climate one, Climate other) {
        return when(
                one.temperature().isFurtherThan(FAR_APART_KELVINS, other.temperature()), Caution.MEASURED_WARM_APART);
    }

    /**
     * Of what holes and pistons were read with, and of both side by side.
     *
     * @param holes empty where none was measured, nor will be
     * @param pistons empty where none was measured
     */
    public Cautions ofInstruments(Optional<Measuring> holes, List<Measuring> pistons, LocalDate on) {
        holes.ifPresent(with -> ofTemperature(with)
                .when(isNotStated(with.gauge()), Caution.GAUGE_NOT_STATED)
                .when(with.gauge().calibration().isOverdue(on), Caution.CALIBRATION_OVERDUE));
        pistons.forEach(with -> {
            ofTemperature(with)
                    .when(isNotStated(with.gauge()), Caution.PISTON_GAUGE_NOT_STATED)
                    .when(with.gauge().calibration().isOverdue(on), Caution.PISTON_CALIBRATION_OVERDUE);
            holes.ifPresent(apart -> ofTemperatures(apart.climate(), with.climate()));
        });
        return this;
    }

    private static boolean isNotStated(Gauge gauge) {
        return gauge.calibration().expandedUncertainty().isEmpty();
    }

    /** Of how much of a hole was read. */
    public Cautions ofSurvey(Survey survey) {
        return when(survey instanceof SingleDiameter, Caution.SINGLE_DIAMETER)
                .when(survey instanceof Grid grid && !showsAnOval(grid.axes()), Caution.TWO_AXES)
                .when(survey instanceof Grid grid && showsAnOval(grid.axes()), Caution.LOBES);
    }

    /** Whether no axis lies further from the next than a third of the half turn, all round: thrust follows on the last. */
    private static boolean showsAnOval(List<Axis> axes) {
        int[] degrees = axes.stream().mapToInt(Axis::degrees).sorted().toArray();
        return IntStream.range(0, degrees.length)
                .map(i -> i + 1 < degrees.length ? degrees[i + 1] - degrees[i] : degrees[0] + HALF_TURN - degrees[i])
                .allMatch(apart -> apart <= FARTHEST_APART);
    }

    /** Of what was asked of a hole. */
    public Cautions ofChecks(List<Check> checks) {
        return when(checks.stream().anyMatch(check -> check.rule() == Rule.RING_GAP_TO_FILE), Caution.FILE_RINGS);
    }

    /** Of what is tightened. */
    public Cautions ofTorques(List<TorqueReminder> torques) {
        return when(
                        torques.stream()
                                .anyMatch(reminder -> reminder.fastener().bolt().intoAluminium()),
                        Caution.THREADS_IN_ALUMINIUM)
                .when(torques.stream().anyMatch(TorqueReminder::isNearProofLoad), Caution.NEAR_PROOF_LOAD);
    }
}
