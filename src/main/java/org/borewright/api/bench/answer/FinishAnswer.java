package org.borewright.api.bench.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import org.borewright.api.match.answer.TorqueAnswer;
import org.borewright.api.match.answer.size.SizeAnswer;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownCorrection;
import org.borewright.api.shown.ShownGauge;
import org.borewright.catalog.Revision;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.kit.bench.finish.Finish;
import org.borewright.kit.bench.finish.FinishRequest;
import org.borewright.kit.bench.finish.JudgedHole;
import org.borewright.kit.bench.finish.Judgement;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The judgement of finished holes on the wire.
 *
 * @param engine its code
 * @param revision the catalogue revision it stands on
 * @param unit of all lengths
 * @param date of the question
 * @param size the size the engine went to, and whose pistons
 * @param ringSet reckoned with; absent where none goes with the pistons
 * @param gauge the holes were measured with
 * @param pistonGauge the pistons were measured with; absent without measured pistons
 * @param correctedFrom how warm the holes were, and how their wall grows; absent when none was measured
 * @param judgement of the engine: pass, too close to call, or hold
 * @param says that in one plain sentence
 * @param holds what stands in the way
 * @param pistons measured
 * @param holes each judged
 * @param checks the spread of the masses, the flatness of the deck
 * @param torques what is tightened: reminders
 * @param cautions what must be said
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record FinishAnswer(
        String engine,
        Revision revision,
        String unit,
        LocalDate date,
        SizeAnswer size,
        @Nullable String ringSet,
        ShownGauge gauge,
        @Nullable ShownGauge pistonGauge,
        @Nullable ShownCorrection correctedFrom,
        String judgement,
        String says,
        List<BenchHoldAnswer> holds,
        List<PistonAnswer> pistons,
        List<JudgedHoleAnswer> holes,
        List<ShownCheck> checks,
        List<TorqueAnswer> torques,
        List<String> cautions) {

    /** The answer to a question, in its unit. */
    public static FinishAnswer of(FitTable fits, FinishRequest request, Finish finish, LengthUnit unit) {
        Shelf shelf = fits.shelf();
        boolean mayBeCut = shelf.engine().build().construction().mayBeBored();
        return new FinishAnswer(
                shelf.engine().code(),
                shelf.revision(),
                unit.symbol(),
                request.on(),
                SizeAnswer.of(request.choice()),
                request.rings()
                        .map(RingSet::number)
                        .map(number -> number.text())
                        .orElse(null),
                ShownGauge.of(request.ofHoles().gauge(), unit),
                request.pistons().isEmpty()
                        ? null
                        : ShownGauge.of(request.ofPistons().gauge(), unit),
                ShownCorrection.of(
                        request.ofHoles().climate(),
                        shelf.engine(),
                        finish.holes().stream().map(JudgedHole::hole).toList()),
                finish.judgement().label(),
                says(finish),
                BenchHoldAnswer.of(finish.holds(), unit),
                PistonAnswer.of(finish.pistons(), unit),
                finish.holes().stream()
                        .map(hole -> JudgedHoleAnswer.of(hole, mayBeCut, unit))
                        .toList(),
                finish.checks().stream()
                        .map(check -> ShownCheck.of(check, unit))
                        .toList(),
                fits.torques().stream()
                        .map(torque -> TorqueAnswer.of(torque, unit))
                        .toList(),
                finish.cautions().stream().map(Caution::text).toList());
    }

    private static String says(Finish finish) {
        return switch (finish.judgement()) {
            case PASS -> "Pass: every hole is proven good with its piston.";
            case TOO_CLOSE, HOLD ->
                (finish.judgement() == Judgement.HOLD ? "Hold: " : "Too close to call: ")
                        + finish.holds().get(0).says();
        };
    }
}
