package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.PistonShape;

/**
 * Asks rules of every piston that may go into an engine, left and right, each grade. A rule is told once at a place: as it ends with the
 * piston it ends worst with, who is named where not all end alike.
 */
final class EveryPiston {

    private static final Comparator<Told> WORST_FIRST =
            Comparator.comparingInt(Told::severity).reversed().thenComparingLong(Told::margin);

    private EveryPiston() {}

    /** The rules asked of each piston, at least one, in the order in which they are asked of the first. */
    static List<Check> asked(List<Piston> pistons, Function<PistonShape, List<Check>> rules) {
        Map<Asked, List<Told>> told = new LinkedHashMap<>();
        for (Piston piston : pistons) {
            for (Check check : rules.apply(piston.shape())) {
                told.computeIfAbsent(new Asked(check.rule(), check.place()), unused -> new ArrayList<>())
                        .add(new Told(piston, check));
            }
        }
        return told.values().stream().map(each -> worst(each, pistons.size())).toList();
    }

    private static Check worst(List<Told> told, int pistons) {
        Told worst = Collections.min(told, WORST_FIRST);
        boolean alike = told.size() == pistons
                && told.stream().allMatch(each -> each.check().equals(worst.check()));
        return alike ? worst.check() : worst.named();
    }

    private record Asked(Rule rule, String place) {}

    private record Told(Piston piston, Check check) {

        /** What was not checked is no pass, and is not hidden behind the pass of another piston. */
        int severity() {
            return switch (check.outcome()) {
                case IN -> 0;
                case NOT_CHECKED -> 1;
                case TOO_CLOSE -> 2;
                case UNKNOWN -> 3;
                case OUT -> 4;
            };
        }

        long margin() {
            return check instanceof Comparison comparison ? comparison.margin() : 0;
        }

        Check named() {
            String number = piston.number().text();
            return check.at(check.place().isEmpty() ? number : check.place() + ", " + number);
        }
    }
}
