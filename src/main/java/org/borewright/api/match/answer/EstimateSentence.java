package org.borewright.api.match.answer;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Money;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.bill.Job;
import org.borewright.kit.ladder.Branch;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.ladder.LargestHole;
import org.borewright.kit.ladder.Rung;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;

/** Says an estimate in plain sentences: what it leans on, what it may come to, and for each way when it will do. */
final class EstimateSentence {

    private EstimateSentence() {}

    static String of(EstimateAnswer.StampAnswer stamp, Estimate estimate, LocalDate on, LengthUnit unit) {
        List<Branch> priced = estimate.branches().stream()
                .filter(branch -> branch.job().flatMap(Job::kit).isPresent())
                .toList();
        return "The stamp " + stamp.text() + " is read as " + stamp.size() + " (" + stamp.readAs()
                + "). This is an estimate: what the holes read decides."
                + estimate.skim()
                        .map(skim -> " The deck is not proven flat, so a skim of " + ShownLength.of(skim, unit) + " "
                                + unit.symbol() + " is reckoned in.")
                        .orElse("")
                + (priced.isEmpty() ? "" : " " + priced(priced.get(0), on))
                + (priced.size() < 2 ? "" : " " + priced(priced.get(priced.size() - 1), on))
                + (priced.size() < 3 ? "" : " What lies between them stands in the list of ways.");
    }

    private static String priced(Branch branch, LocalDate on) {
        Job job = branch.job().orElseThrow();
        return label(branch.rung())
                + job.total()
                        .map(total -> " would come to " + shown(total) + ", out on "
                                + on.plusDays(job.days().orElseThrow()) + ".")
                        .orElse(" is short of parts that cannot be had, and has no total.");
    }

    private static String name(Rung rung) {
        return rung.way().label()
                + rung.row()
                        .map(SizeRow::size)
                        .map(Size::label)
                        .map(size -> " to " + size)
                        .orElse("");
    }

    private static String shown(Money money) {
        return money.amount().toPlainString() + " " + money.currency().getCurrencyCode();
    }

    /** When one way will do. */
    static String of(Branch branch, LengthUnit unit) {
        Rung rung = branch.rung();
        return switch (rung.way()) {
            case RINGS_ONLY -> ringsOnly(branch, unit);
            case SLEEVE -> "Where no size is left, or a cylinder is beyond machining, ask a specialist about a sleeve.";
            case HONE_ONLY, NEW_PISTONS, REBORE ->
                rung.row().filter(SizeRow::isOpen).isPresent()
                        ? toSize(branch, unit)
                        : label(rung) + " is not offered: " + String.join(", ", rung.open()) + ".";
        };
    }

    private static String ringsOnly(Branch branch, LengthUnit unit) {
        if (branch.rung().certainty() != Certainty.POSSIBLE) {
            return "Rings only is " + (branch.rung().certainty() == Certainty.CERTAIN ? "certain." : "ruled out.");
        }
        return "New rings alone will do if "
                + branch.largestHole()
                        .flatMap(LargestHole::certainUpTo)
                        .map(most -> "no hole reads more than " + upTo(most, unit) + " and ")
                        .orElse("")
                + "all conditions of rings only are met"
                + branch.job()
                        .flatMap(Job::kit)
                        .map(kit -> "; reckoned with rings for pistons of "
                                + kit.outfit().rings().design())
                        .orElse("")
                + ".";
    }

    private static String toSize(Branch branch, LengthUnit unit) {
        if (branch.rung().certainty() == Certainty.NO) {
            return label(branch.rung()) + " is ruled out.";
        }
        Optional<Length> from = branch.largestHole().flatMap(LargestHole::certainFrom);
        Optional<String> certain = branch.largestHole()
                .flatMap(LargestHole::certainUpTo)
                .map(most -> "certain if no hole reads "
                        + from.map(least -> "less than " + asRead(least, unit, Flattery.LOWER_LIMIT) + " or ")
                                .orElse("")
                        + "more than " + upTo(most, unit));
        Optional<String> possible = branch.largestHole()
                .flatMap(LargestHole::possibleUpTo)
                .map(most -> "possible up to " + upTo(most, unit));
        String when = certain.map(
                        sure -> sure + possible.map(might -> ", " + might).orElse(""))
                .or(() -> possible)
                .orElse(branch.rung().certainty().label() + " as far as is known");
        return label(branch.rung()) + " is " + when + ".";
    }

    private static String label(Rung rung) {
        String name = name(rung);
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    /** To the last step that a gauge is read to, and no nearer to the limit than it is. */
    private static String asRead(Length limit, LengthUnit unit, Flattery kind) {
        return limit.to(unit, kind.rounding())
                .setScale(unit.gaugeDecimals(), kind.rounding())
                .toPlainString();
    }

    private static String upTo(Length most, LengthUnit unit) {
        return asRead(most, unit, Flattery.UPPER_LIMIT) + " " + unit.symbol();
    }
}
