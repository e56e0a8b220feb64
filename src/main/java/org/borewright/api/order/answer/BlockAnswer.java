package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Shelf;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.order.store.BlockRow;
import org.borewright.order.store.HoleLifeRow;
import org.jspecify.annotations.Nullable;

/**
 * The life of a block over all its orders, or of one barrel over all blocks it sat in.
 *
 * @param block its tag
 * @param kind block or barrel
 * @param engine its code
 * @param unit of all lengths
 * @param openOrder the order that it is in the shop for; absent where that has ended
 * @param life of its holes, in the order things happened
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BlockAnswer(
        String block,
        String kind,
        String engine,
        String unit,
        @Nullable Long openOrder,
        List<BlockAnswer.LifeAnswer> life) {

    /**
     * What one hole was on one day.
     *
     * @param block the tag of the block it was in
     * @param cylinder its name
     * @param barrel the tag of the barrel it is in; absent where barrels were not told apart
     * @param order the order it was in the shop for
     * @param at when
     * @param by who
     * @param what surveyed, did not clean up or finished
     * @param size of its pistons; absent where nobody knew
     * @param smallest diameter at 20 °C; absent where it was not measured
     * @param largest likewise
     * @param rebuildsLeft from here, of the engine; absent where that is not known
     * @param metalLeft from a hole that was finished to the last of those rebuilds; absent where there is none, or that is not known
     * @param says with what and how warm, and what was found
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record LifeAnswer(
            String block,
            String cylinder,
            @Nullable String barrel,
            long order,
            Instant at,
            String by,
            String what,
            @Nullable String size,
            @Nullable ShownLength smallest,
            @Nullable ShownLength largest,
            @Nullable RebuildsLeft rebuildsLeft,
            @Nullable MetalLeftAnswer metalLeft,
            String says) {

        static LifeAnswer of(HoleLifeRow row, Optional<Shelf> shelf, LengthUnit unit) {
            return new LifeAnswer(
                    row.block,
                    row.cylinder,
                    row.barrel,
                    row.orderNumber,
                    row.at,
                    row.by,
                    row.what.label(),
                    row.size,
                    shown(row.smallest, unit),
                    shown(row.largest, unit),
                    row.leftByMetal == null ? null : new RebuildsLeft(row.leftByMetal, row.leftByPistons),
                    shelf.flatMap(of -> MetalLeftAnswer.after(row, of, unit)).orElse(null),
                    row.says);
        }

        private static @Nullable ShownLength shown(@Nullable Long nanometres, LengthUnit unit) {
            return nanometres == null ? null : ShownLength.of(Length.ofNanometres(nanometres), unit);
        }
    }

    /**
     * The metal that a finished hole has left, on the diameter: as much as its largest reading lies below the least new hole of the last
     * size that the metal bears. Of a worn hole it is not told, for the bar takes it before it comes to a size.
     *
     * @param size that size
     * @param onDiameter how much, shown toward zero; negative where the hole was finished beyond it
     */
    public record MetalLeftAnswer(String size, ShownLength onDiameter) {

        static Optional<MetalLeftAnswer> after(HoleLifeRow row, Shelf shelf, LengthUnit unit) {
            Integer rebuilds = row.leftByMetal;
            Long largest = row.largest;
            if (row.what != HoleLifeRow.What.FINISHED || rebuilds == null || rebuilds == 0 || largest == null) {
                return Optional.empty();
            }
            return shelf.sizes().stream()
                    .dropWhile(size -> !size.label().equals(row.size))
                    .skip(1)
                    .filter(size -> !size.furtherWork())
                    .skip(rebuilds - 1)
                    .findFirst()
                    .map(last -> new MetalLeftAnswer(
                            last.label(),
                            ShownLength.of(
                                    shelf.engine().newBore(last).least().minus(Length.ofNanometres(largest)),
                                    unit,
                                    Flattery.MARGIN)));
        }
    }

    /** A block or barrel and its holes, of an engine that the catalogue may have no longer. */
    public static BlockAnswer of(BlockRow block, List<HoleLifeRow> life, Optional<Shelf> shelf, LengthUnit unit) {
        return new BlockAnswer(
                block.tag,
                block.kind.label(),
                block.engine,
                unit.symbol(),
                block.openOrder,
                life.stream().map(row -> LifeAnswer.of(row, shelf, unit)).toList());
    }
}
