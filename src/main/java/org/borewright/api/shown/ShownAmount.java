package org.borewright.api.shown;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;
import org.borewright.fit.Amount;
import org.borewright.fit.Quantity;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;

/**
 * An amount on the wire: {@code {"value": 0.075, "unit": "mm", "nm": 75000}}. It writes itself, for every check holds several.
 *
 * @param millionths the figure in millionths of its unit
 * @param leastDecimals the decimals it is shown with at the least
 * @param unit mm, in, g, %, or 1 for a ratio
 * @param nm the exact length in nanometres; of no meaning for other amounts
 * @param isLength whether it is a length, and so {@code nm} is shown
 */
public record ShownAmount(long millionths, int leastDecimals, String unit, long nm, boolean isLength)
        implements WritesItself {

    static ShownAmount of(Amount amount, LengthUnit unit, Flattery kind) {
        return of(amount.units(), amount.quantity(), unit, kind);
    }

    static ShownAmount of(long units, Quantity quantity, LengthUnit unit, Flattery kind) {
        return switch (quantity) {
            case LENGTH ->
                new ShownAmount(
                        Length.ofNanometres(units).toMillionths(unit, kind.rounding()), 3, unit.symbol(), units, true);
            case RATIO -> other(units, 6, "1");
            case MASS -> other(Math.multiplyExact(units, 1_000L), 3, "g");
            case PER_CENT -> other(Math.multiplyExact(units, 100L), 4, "%");
        };
    }

    private static ShownAmount other(long millionths, int leastDecimals, String unit) {
        return new ShownAmount(millionths, leastDecimals, unit, 0, false);
    }

    @Override
    public void serialize(JsonGenerator json, SerializerProvider provider) throws IOException {
        Figure figure = Figure.ofValue(millionths, leastDecimals);
        figure.text(",\"unit\":\"");
        figure.text(unit);
        figure.text("\"");
        if (isLength) {
            figure.exact(nm);
        }
        figure.closeTo(json);
    }
}
