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
import org.borewright.catalog.Shelf;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.HolePlan;
import org.borewright.kit.bench.NextSize;
import org.borewright.kit.bench.PistonInHand;
import org.borewright.kit.bench.Readiness;
import org.borewright.kit.bench.Step;
import org.borewright.kit.bill.ShopWork;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The plan of the bench on the wire.
 *
 * @param engine its code
 * @param revision the catalogue revision it stands on
 * @param unit of all lengths
 * @param date of the question
 * @param size the size the engine goes to, and whose pistons
 * @param gauge the holes are measured with
 * @param pistonGauge the pistons were measured with; absent without pistons
 * @param correctedFrom how warm the holes were, and how their wall grows; absent when none was measured
 * @param readiness whether the hone may go in
 * @param says that in one plain sentence
 * @param holds what stands in the way
 * @param nextSize the size that would save holes too large for their pistons; absent when none is, or none would
 * @param pistons in hand
 * @param spare the tags of the pistons that go into no hole
 * @param holes what to do to each
 * @param checks the spread of the masses
 * @param operations what the shop does, in order
 * @param steps what to mind, in order
 * @param torques what is tightened: reminders
 * @param cautions what must be said
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BenchAnswer(
        String engine,
        Revision revision,
        String unit,
        LocalDate date,
        SizeAnswer size,
        ShownGauge gauge,
        @Nullable ShownGauge pistonGauge,
        @Nullable ShownCorrection correctedFrom,
        String readiness,
        String says,
        List<BenchHoldAnswer> holds,
        @Nullable NextSizeAnswer nextSize,
        List<PistonAnswer> pistons,
        List<String> spare,
        List<HolePlanAnswer> holes,
        List<ShownCheck> checks,
        List<OperationAnswer> operations,
        List<String> steps,
        List<TorqueAnswer> torques,
        List<String> cautions) {

    /**
     * The size that would save holes too large for their pistons.
     *
     * @param size the size and whose pistons
     * @param certainty whether the readings prove it
     */
    public record NextSizeAnswer(SizeAnswer size, String certainty) {

        static NextSizeAnswer of(NextSize next) {
            SizeAnswer size = new SizeAnswer(
                    next.size().label(), next.design().code(), next.design().maker());
            return new NextSizeAnswer(size, next.certainty().label());
        }
    }

    /**
     * One operation of the shop.
     *
     * @param operation its code
     * @param name in words
     * @param quantity on how many holes, or 1 for the engine
     */
    public record OperationAnswer(String operation, String name, int quantity) {}

    /** The answer to a question, in its unit. */
    public static BenchAnswer of(FitTable fits, BenchRequest request, BenchPlan plan, LengthUnit unit) {
        Shelf shelf = fits.shelf();
        boolean mayBeCut = shelf.engine().build().construction().mayBeBored();
        return new BenchAnswer(
                shelf.engine().code(),
                shelf.revision(),
                unit.symbol(),
                request.on(),
                SizeAnswer.of(request.choice()),
                ShownGauge.of(request.ofHoles().gauge(), unit),
                request.pistons().isEmpty()
                        ? null
                        : ShownGauge.of(request.ofPistons().gauge(), unit),
                ShownCorrection.of(
                        request.ofHoles().climate(),
                        shelf.engine(),
                        plan.holes().stream().map(HolePlan::hole).toList()),
                plan.readiness().label(),
                says(plan),
                BenchHoldAnswer.of(plan.holds(), unit),
                plan.next().map(NextSizeAnswer::of).orElse(null),
                PistonAnswer.of(plan.pistons(), unit),
                plan.spare().stream().map(PistonInHand::tag).toList(),
                plan.holes().stream()
                        .map(hole -> HolePlanAnswer.of(hole, mayBeCut, unit))
                        .toList(),
                plan.checks().stream().map(check -> ShownCheck.of(check, unit)).toList(),
                operations(shelf, request, plan),
                Step.of(shelf.engine()).stream().map(Step::text).toList(),
                fits.torques().stream()
                        .map(torque -> TorqueAnswer.of(torque, unit))
                        .toList(),
                plan.cautions().stream().map(Caution::text).toList());
    }

    private static List<OperationAnswer> operations(Shelf shelf, BenchRequest request, BenchPlan plan) {
        return ShopWork.of(
                        shelf,
                        plan.holes().stream().map(HolePlan::fate).toList(),
                        request.deck().skim())
                .lines()
                .stream()
                .map(line -> new OperationAnswer(
                        line.operation().code(), line.operation().name(), line.quantity()))
                .toList();
    }

    private static String says(BenchPlan plan) {
        if (plan.readiness() == Readiness.HOLD) {
            return "Hold: " + plan.holds().get(0).says()
                    + plan.next()
                            .map(next -> " The next size that would save it is "
                                    + next.size().label() + ", "
                                    + next.certainty().label() + ".")
                            .orElse("");
        }
        List<String> without = plan.holes().stream()
                .filter(hole -> hole.piston().isEmpty())
                .map(hole -> hole.hole().name())
                .toList();
        if (plan.readiness() == Readiness.TOO_CLOSE) {
            return "Too close to call: " + plan.holds().get(0).says()
                    + (without.isEmpty() ? aside(plan) : " No " + pistonYet(without));
        }
        return without.isEmpty()
                ? "Ready: every hole has its measured piston, and its size and window stand with it." + aside(plan)
                : "Provisional: no " + pistonYet(without);
    }

    private static String pistonYet(List<String> without) {
        return "measured piston yet for cylinder" + (without.size() == 1 ? " " : "s ") + String.join(", ", without)
                + ". Bore, and hone only once the piston is measured.";
    }

    private static String aside(BenchPlan plan) {
        List<String> tags = plan.setAside().stream().map(PistonInHand::tag).toList();
        return tags.isEmpty()
                ? ""
                : " Set aside, for it is proven wrong: piston " + String.join(", piston ", tags) + ".";
    }
}
