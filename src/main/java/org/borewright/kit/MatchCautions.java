package org.borewright.kit;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Engine;
import org.borewright.fit.Certainty;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.caution.Cautions;
import org.borewright.kit.choice.TorqueReminder;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.measure.Length;

/**
 * Decides which cautions a match carries.
 *
 * @param engine that is asked about
 * @param request what is asked
 * @param portsHigher how much higher the ports come to stand; empty where they stay
 */
record MatchCautions(Engine engine, MatchRequest request, Optional<Length> portsHigher) {

    /**
     * The cautions, in their own order.
     *
     * @param ringsOnly new rings on the pistons that are in it; nothing is said of them where they are ruled out
     */
    List<Caution> of(List<HoleReport> holes, Optional<RingsOnly> ringsOnly, List<TorqueReminder> torques) {
        Cautions cautions = new Cautions()
                .ofBuild(engine, isCut(holes))
                .ofTemperature(request.measuring())
                .ofTorques(torques);
        ofPresentSize(cautions, request.present());
        ofDeck(cautions, engine, request.deck());
        cautions.when(portsHigher.isPresent(), Caution.PORT_TIMING)
                .when(holes.stream().anyMatch(report -> report.hole().isProbeSetAside()), Caution.PROBE_SET_ASIDE);
        holes.forEach(report -> cautions.ofSurvey(report.hole().at20()).ofChecks(report.checks()));
        ringsOnly
                .filter(rings -> rings.certainty() != Certainty.NO)
                .ifPresent(rings -> rings.holes().forEach(hole -> cautions.ofChecks(hole.checks())));
        ofInstruments(
                cautions,
                request,
                Hole.isAnyRead(holes.stream().map(HoleReport::hole).toList()));
        return cautions.told();
    }

    /** A gauge that measured nothing needs no caution. */
    private static void ofInstruments(Cautions cautions, MatchRequest request, boolean holesMeasured) {
        cautions.ofInstruments(
                Optional.of(request.measuring()).filter(holes -> holesMeasured), request.ofPistons(), request.on());
    }

    /** Whether some hole is bored or honed at the size named. */
    private static boolean isCut(List<HoleReport> holes) {
        return holes.stream().flatMap(report -> report.atSize().stream()).anyMatch(fate -> fate.work() != Work.AS_IS);
    }

    private static void ofPresentSize(Cautions cautions, PresentSize present) {
        cautions.when(present.size().isPresent() && !present.knownFrom().isReliable(), Caution.PRESENT_SIZE_HEARSAY)
                .when(present.knownFrom() == PresentSize.KnownFrom.CROWN_STAMP, Caution.PRESENT_SIZE_STAMP);
    }

    private static void ofDeck(Cautions cautions, Engine engine, Deck deck) {
        cautions.when(deck.isToBeSkimmed() && deck.isFlat(engine.limits()), Caution.SKIM_NOT_NEEDED)
                .when(deck.skimmedBefore().isEmpty(), Caution.EARLIER_SKIMS_NOT_STATED)
                .ofLowered(engine, deck.lowered());
    }
}
