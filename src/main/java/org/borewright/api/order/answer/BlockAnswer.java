package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.order.store.BlockRow;
import org.borewright.order.store.HoleLifeRow;
import org.jspecify.annotations.Nullable;

/**
 * The life of a block over all its orders.
 *
 * @param block its tag
 * @param engine its code
 * @param unit of all lengths
 * @param openOrder the order that it is in the shop for; absent where that has ended
 * @param life of its holes, in the order things happened
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BlockAnswer(
        String block, String engine, String unit, @Nullable Long openOrder, List<BlockAnswer.LifeAnswer> life) {

    /**
     * What one hole was on one day.
     *
     * @param cylinder its name
     * @param order the order it was in the shop for
     * @param at when
     * @param by who
     * @param what surveyed or finished
     * @param size of its pistons; absent where nobody knew
     * @param smallest diameter at 20 °C; absent where it was not measured
     * @param largest likewise
     * @param rebuildsLeft from here, of the engine; absent where that is not known
     * @param says with what and how warm, and what was found
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record LifeAnswer(
            String cylinder,
            long order,
            Instant at,
            String by,
            String what,
            @Nullable String size,
            @Nullable ShownLength smallest,
            @Nullable ShownLength largest,
            @Nullable RebuildsLeft rebuildsLeft,
            String says) {

        static LifeAnswer of(HoleLifeRow row, LengthUnit unit) {
            return new LifeAnswer(
                    row.cylinder,
                    row.orderNumber,
                    row.at,
                    row.by,
                    row.what.label(),
                    row.size,
                    shown(row.smallest, unit),
                    shown(row.largest, unit),
                    row.leftByMetal == null ? null : new RebuildsLeft(row.leftByMetal, row.leftByPistons),
                    row.says);
        }

        private static @Nullable ShownLength shown(@Nullable Long nanometres, LengthUnit unit) {
            return nanometres == null ? null : ShownLength.of(Length.ofNanometres(nanometres), unit);
        }
    }

    /** A block and its holes. */
    public static BlockAnswer of(BlockRow block, List<HoleLifeRow> life, LengthUnit unit) {
        return new BlockAnswer(
                block.tag,
                block.engine,
                unit.symbol(),
                block.openOrder,
                life.stream().map(row -> LifeAnswer.of(row, unit)).toList());
    }
}
