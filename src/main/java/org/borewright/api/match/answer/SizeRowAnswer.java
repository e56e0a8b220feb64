package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.api.match.answer.size.SizeAnswer;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownBlock;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownMoney;
import org.borewright.api.shown.Stencil;
import org.borewright.catalog.Engine;
import org.borewright.fit.Amount;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One row of the table of sizes.
 *
 * @param size label, design and maker
 * @param oversize over standard
 * @param certainty certain, possible or no, in its least certain hole
 * @param blocks why it is not offered for another reason than the wear
 * @param finish the hole at target clearance of the smallest piston; absent where no piston was made
 * @param largestFinish the hole at greatest clearance of the largest piston
 * @param cylinders what becomes of each hole
 * @param leastWall the least wall left around any hole; absent where the engine states none or it is not known
 * @param leastBridge the least bridge left between any two holes; absent where the engine states none
 * @param rebuildsLeft the rebuilds left after it; absent where it is not known whether the wall bears them
 * @param displacement of the engine in cm³ at the finish
 * @param compressionRatio the highest at the finish, with the gaskets that go with it; absent where there are none, or they leave no room
 *     above the piston
 * @param kit whether a kit can be had, from when and for how much
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SizeRowAnswer(
        SizeAnswer size,
        ShownLength oversize,
        String certainty,
        List<ShownBlock> blocks,
        @Nullable ShownLength finish,
        @Nullable ShownLength largestFinish,
        List<FateAnswer> cylinders,
        @Nullable ShownLength leastWall,
        @Nullable ShownLength leastBridge,
        @Nullable RebuildsLeft rebuildsLeft,
        @Nullable BigDecimal displacement,
        @Nullable BigDecimal compressionRatio,
        @Nullable Stencil<SizeRowAnswer.KitSummary> kit) {

    /**
     * What becomes of one hole.
     *
     * @param cylinder the hole
     * @param work rebore, hone only, or as it is
     * @param certainty whether it comes out right
     * @param piston the piston that goes in
     * @param metalRemoved finish less the smallest reading; absent when nothing was measured
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record FateAnswer(
            String cylinder,
            String work,
            String certainty,
            String piston,
            @Nullable ShownLength metalRemoved) {

        static FateAnswer of(HoleAtSize hole, LengthUnit unit) {
            return new FateAnswer(
                    hole.cylinder(),
                    hole.work().label(),
                    hole.certainty().label(),
                    hole.piston().number().text(),
                    ShownLength.of(hole.metal(), unit));
        }
    }

    /**
     * A kit in short.
     *
     * @param complete whether every need can be covered
     * @param missing the numbers that cannot be had
     * @param date when it is complete; absent when it never is
     * @param price of the lines that can be had
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record KitSummary(
            boolean complete,
            List<String> missing,
            @Nullable LocalDate date,
            @Nullable ShownMoney price) {

        static KitSummary of(Kit kit, LocalDate on) {
            return new KitSummary(
                    kit.isComplete(),
                    kit.missing().stream()
                            .map(lack -> lack.part().number().text())
                            .toList(),
                    kit.isComplete() ? on.plusDays(kit.leadDays()) : null,
                    kit.total().map(ShownMoney::of).orElse(null));
        }
    }

    static SizeRowAnswer of(Engine engine, SizeRow row, LocalDate on, Stencils stencils) {
        LengthUnit unit = stencils.unit();
        Choice choice = row.choice().orElse(null);
        return new SizeRowAnswer(
                SizeAnswer.of(row),
                ShownLength.of(row.size().oversize(), unit),
                row.certainty().label(),
                row.blocks().stream().map(block -> ShownBlock.of(block, unit)).toList(),
                choice == null ? null : ShownLength.of(choice.finish(), unit),
                choice == null ? null : ShownLength.of(choice.largest().shape().largestFinish(), unit),
                row.holes().stream().map(hole -> FateAnswer.of(hole, unit)).toList(),
                least(row.walls(), unit),
                least(bridges(row), unit),
                row.left().orElse(null),
                choice == null ? null : displacement(engine, choice.finish()),
                ratio(row),
                row.kit().map(kit -> stencils.brief(kit, on)).orElse(null));
    }

    private static BigDecimal displacement(Engine engine, Length finish) {
        return BigDecimal.valueOf(engine.displacement(finish)).setScale(1, RoundingMode.HALF_EVEN);
    }

    private static @Nullable BigDecimal ratio(SizeRow row) {
        return row.gasket().stream()
                .flatMap(fit -> fit.checks().stream())
                .filter(check -> check.rule() == Rule.COMPRESSION_RATIO)
                .flatMap(SizeRowAnswer::value)
                .filter(ratio -> !ratio.isEndless())
                .map(ratio -> BigDecimal.valueOf(ratio.units(), 6).setScale(2, RoundingMode.CEILING))
                .findFirst()
                .orElse(null);
    }

    private static List<Check> bridges(SizeRow row) {
        return row.choice().stream()
                .flatMap(choice -> choice.metalChecks().stream())
                .filter(check -> check.rule() == Rule.BRIDGE)
                .toList();
    }

    /** The least of several distances; absent where one of them is not known, for it may be the least. */
    private static @Nullable ShownLength least(List<Check> checks, LengthUnit unit) {
        return checks.stream().anyMatch(check -> !(check instanceof Comparison))
                ? null
                : checks.stream()
                        .flatMap(SizeRowAnswer::value)
                        .map(left -> Length.ofNanometres(left.units()))
                        .min(Length::compareTo)
                        .map(left -> ShownLength.of(left, unit, Flattery.UPPER_LIMIT))
                        .orElse(null);
    }

    private static Stream<Amount> value(Check check) {
        return check instanceof Comparison comparison ? Stream.of(comparison.value()) : Stream.empty();
    }
}
