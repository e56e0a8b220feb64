package org.borewright.api.shown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import org.borewright.fit.Amount;
import org.borewright.fit.Quantity;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * An amount on the wire.
 *
 * @param value the figure
 * @param unit mm, in, g, %, or 1 for a ratio
 * @param nm the exact length in nanometres; absent for other amounts
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ShownAmount(
        BigDecimal value, String unit, @Nullable Long nm) {

    static ShownAmount of(Amount amount, LengthUnit unit, Flattery kind) {
        return of(amount.units(), amount.quantity(), unit, kind);
    }

    static ShownAmount of(long units, Quantity quantity, LengthUnit unit, Flattery kind) {
        return switch (quantity) {
            case LENGTH -> {
                ShownLength length = ShownLength.of(Length.ofNanometres(units), unit, kind);
                yield new ShownAmount(length.value(), unit.symbol(), length.nm());
            }
            case RATIO -> new ShownAmount(BigDecimal.valueOf(units, 6), "1", null);
            case MASS -> new ShownAmount(BigDecimal.valueOf(units, 3), "g", null);
            case PER_CENT -> new ShownAmount(BigDecimal.valueOf(units, 4), "%", null);
        };
    }
}
