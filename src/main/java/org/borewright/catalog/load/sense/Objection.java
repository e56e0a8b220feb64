package org.borewright.catalog.load.sense;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Part;
import org.borewright.fit.Amount;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Suitability;
import org.borewright.fit.Unchecked;
import org.borewright.measure.Length;

/**
 * What a rule of fit holds against a line.
 *
 * @param place the line
 * @param column the cell to look at first
 * @param reason in the words of the rule
 */
public record Objection(Place place, String column, String reason) {

    /**
     * Where a line is found.
     *
     * @param file its file
     * @param columns that tell it from the others
     * @param values that stand in them
     */
    public record Place(String file, List<String> columns, List<String> values) {

        static Place of(String file, String column, Part part) {
            return new Place(file, List.of(column), List.of(part.number().text()));
        }
    }

    /** Those of the checks that hold, each against the same line; {@code with} names the other part. */
    static Stream<Objection> against(Place place, String with, List<? extends Check> checks) {
        return checks.stream()
                .filter(check -> check.outcome().holds())
                .map(check -> new Objection(place, Blame.column(check.rule(), place.file()), words(check, with)));
    }

    private static String words(Check check, String with) {
        return check.rule().title()
                + (check.place().isEmpty() ? "" : ", " + check.place())
                + (with.isEmpty() ? "" : ", with " + with)
                + ": "
                + outcome(check)
                + " ("
                + check.rule().source()
                + ")";
    }

    private static String outcome(Check check) {
        if (check instanceof Comparison found) {
            return "%s, must be %s %s"
                    .formatted(shown(found.value()), found.sense().label(), shown(found.limit()));
        }
        if (check instanceof Suitability found) {
            return "%s, must be %s".formatted(found.found(), found.asked());
        }
        return ((Unchecked) check).reason();
    }

    private static String shown(Amount amount) {
        return switch (amount.quantity()) {
            case LENGTH -> Length.ofNanometres(amount.units()).toString();
            case RATIO -> amount.isEndless() ? "without end" : decimal(amount.units(), 6);
            case MASS -> decimal(amount.units(), 3) + " g";
            case PER_CENT -> decimal(amount.units(), 4) + " %";
        };
    }

    private static String decimal(long units, int scale) {
        return BigDecimal.valueOf(units, scale).stripTrailingZeros().toPlainString();
    }
}
