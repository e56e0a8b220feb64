package org.borewright.kit;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.borewright.catalog.Build;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Strokes;
import org.borewright.fit.Rule;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.SingleDiameter;

/** Decides which cautions an answer carries. */
final class Cautions {

    private static final int AXES_THAT_SHOW_AN_OVAL = 3;

    private Cautions() {}

    /** The cautions, in their own order. */
    static List<Caution> of(Engine engine, MatchRequest request, List<HoleReport> holes, List<TorqueReminder> torques) {
        Set<Caution> cautions = EnumSet.of(Caution.MAKER_FIRST, Caution.TRAINED_PEOPLE);
        ofBuild(cautions, engine, holes);
        ofReadings(cautions, request, holes);
        ofGauge(cautions, request, holes);
        ofTorques(cautions, torques);
        ofDeck(cautions, engine, request.deck());
        return List.copyOf(cautions);
    }

    private static void ofBuild(Set<Caution> cautions, Engine engine, List<HoleReport> holes) {
        Build build = engine.build();
        addIf(cautions, build.construction() == Construction.SLEEVED_ALUMINIUM_BARREL, Caution.SLEEVE_IN_ALUMINIUM);
        addIf(cautions, !build.construction().mayBeBored(), Caution.NEVER_BORED);
        addIf(cautions, build.strokes() == Strokes.TWO, Caution.RING_PEGS);
        addIf(cautions, build.strokes() == Strokes.TWO && isCut(holes), Caution.PORTS);
        addIf(cautions, !engine.rodEnd().pressed(), Caution.NEW_CLIPS);
    }

    /** Whether some hole is bored or honed at the size named. */
    private static boolean isCut(List<HoleReport> holes) {
        return holes.stream().flatMap(report -> report.atSize().stream()).anyMatch(fate -> fate.work() != Work.AS_IS);
    }

    private static void ofDeck(Set<Caution> cautions, Engine engine, Deck deck) {
        boolean lowered = deck.lowered().isMoreThan(Length.ZERO);
        boolean twoStroke = engine.build().strokes() == Strokes.TWO;
        addIf(cautions, deck.isToBeSkimmed() && deck.isFlat(engine.limits()), Caution.SKIM_NOT_NEEDED);
        addIf(cautions, deck.skimmedBefore().isEmpty(), Caution.EARLIER_SKIMS_NOT_STATED);
        addIf(cautions, lowered, Caution.SKIMMED_DECK);
        addIf(cautions, lowered && !twoStroke, Caution.VALVE_ROOM);
        addIf(cautions, lowered && twoStroke, Caution.CUT_BASE);
    }

    private static void ofReadings(Set<Caution> cautions, MatchRequest request, List<HoleReport> holes) {
        addIf(cautions, isFarFromReference(request), Caution.TEMPERATURE_FAR);
        addIf(cautions, request.climate().stated().isEmpty(), Caution.TEMPERATURE_NOT_STATED);
        addIf(
                cautions,
                request.present().size().isPresent()
                        && !request.present().knownFrom().isReliable(),
                Caution.PRESENT_SIZE_HEARSAY);
        addIf(cautions, request.present().knownFrom() == PresentSize.KnownFrom.CROWN_STAMP, Caution.PRESENT_SIZE_STAMP);
        for (HoleReport report : holes) {
            addIf(cautions, report.hole().at20() instanceof SingleDiameter, Caution.SINGLE_DIAMETER);
            addIf(
                    cautions,
                    report.hole().at20() instanceof Grid grid && grid.axes().size() < AXES_THAT_SHOW_AN_OVAL,
                    Caution.TWO_AXES);
            addIf(
                    cautions,
                    report.checks().stream().anyMatch(check -> check.rule() == Rule.RING_GAP_TO_FILE),
                    Caution.FILE_RINGS);
        }
    }

    /** Of block or setting ring. */
    private static boolean isFarFromReference(MatchRequest request) {
        return request.climate().isFarFromReference()
                || request.gauge()
                        .ring()
                        .filter(ring -> Climate.at(ring.temperature()).isFarFromReference())
                        .isPresent();
    }

    private static void ofGauge(Set<Caution> cautions, MatchRequest request, List<HoleReport> holes) {
        boolean used = holes.stream().anyMatch(report -> report.hole().budget().isPresent());
        Gauge.Calibration calibration = request.gauge().calibration();
        addIf(cautions, used && calibration.expandedUncertainty().isEmpty(), Caution.GAUGE_NOT_STATED);
        addIf(cautions, used && calibration.isOverdue(request.on()), Caution.CALIBRATION_OVERDUE);
    }

    private static void ofTorques(Set<Caution> cautions, List<TorqueReminder> torques) {
        addIf(
                cautions,
                torques.stream().anyMatch(reminder -> reminder.fastener().bolt().intoAluminium()),
                Caution.THREADS_IN_ALUMINIUM);
        addIf(cautions, torques.stream().anyMatch(TorqueReminder::isNearProofLoad), Caution.NEAR_PROOF_LOAD);
    }

    private static void addIf(Set<Caution> cautions, boolean due, Caution caution) {
        if (due) {
            cautions.add(caution);
        }
    }
}
