package org.borewright.api.match.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.borewright.api.shown.Days;
import org.borewright.api.shown.ShownLength;
import org.borewright.fit.Check;
import org.borewright.fit.Unchecked;
import org.borewright.kit.Match;
import org.borewright.kit.Ruling;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.choice.Block;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;

/** Says the answer in plain sentences: whether rings alone will do, the verdict, the sizes passed over, and what a larger size asked for costs. */
final class Sentence {

    /** More than these are told by their number. */
    private static final int MOST_NAMED = 3;

    private Sentence() {}

    static String of(Match match, LengthUnit unit) {
        return match.ringsOnly().map(Sentence::ringsOnly).orElse("") + ofSize(match, unit);
    }

    /** Said first, for it takes no metal; nothing where it is ruled out. */
    private static String ringsOnly(RingsOnly rings) {
        return switch (rings.certainty()) {
            case CERTAIN ->
                "Rings only will do, and no metal need be taken out: every condition is in for "
                        + rings.rings().orElseThrow().number().text() + " on the present pistons"
                        + rings.job()
                                .kit()
                                .filter(Kit::isComplete)
                                .map(kit -> "")
                                .orElse(", but its kit is short")
                        + ". With new pistons: ";
            case POSSIBLE ->
                "Rings only is possible: "
                        + (rings.open().size() > MOST_NAMED
                                ? rings.open().size() + " conditions are open. "
                                : "open are " + String.join(", ", rings.open()) + ". ");
            case NO -> "";
        };
    }

    private static String ofSize(Match match, LengthUnit unit) {
        Ruling ruling = match.ruling();
        return switch (ruling.verdict()) {
            case SERVES -> serves(match, ruling.row().orElseThrow()) + besides(match, unit);
            case HOLD ->
                ruling.row()
                        .map(row -> "Hold: the size would be " + row.size().label() + ". " + firstHold(ruling, unit)
                                + (row.isOpen() ? "" : " " + next(ruling, unit)) + besides(match, unit))
                        .orElseGet(() -> "Hold: " + firstHold(ruling, unit));
            case NO_CERTAIN_SIZE ->
                match.table().stream()
                                .filter(SizeRow::mightServe)
                                .findFirst()
                                .map(Sentence::possible)
                                .orElse("No size is certain.")
                        + " " + firstHold(ruling, unit) + withoutHardest(match) + passedOver(match);
            case NO_COMMON_SIZE, REFER -> firstHold(ruling, unit) + " " + next(ruling, unit) + withoutHardest(match);
        };
    }

    /** Which holes leave the others without a certain size, and what these could go to. */
    private static String withoutHardest(Match match) {
        return match.hardest()
                .map(hardest -> " Without " + hardest.inWords() + " the others could go to "
                        + hardest.alone().size().label() + ".")
                .orElse("");
    }

    private static String serves(Match match, SizeRow row) {
        String ready = row.kit().filter(Kit::isCompleteNow).isPresent()
                ? "the kit is complete from the shelf"
                : "the kit is complete in "
                        + Days.inWords(row.kit().map(Kit::leadDays).orElse(0));
        return "Every cylinder goes to " + row.size().label() + ": " + checked(match.notMade()) + ", and " + ready
                + ".";
    }

    /** A check that was not made is not in: how many there are, and why each kind was not. */
    private static String checked(List<Check> notMade) {
        if (notMade.isEmpty()) {
            return "every check is in";
        }
        String why = notMade.stream().map(Sentence::why).distinct().collect(Collectors.joining("; "));
        return "every check that could be made is in, " + notMade.size() + " could not (" + why + ")";
    }

    private static String why(Check notMade) {
        return notMade instanceof Unchecked unchecked
                ? unchecked.rule().title() + ": " + unchecked.reason()
                : notMade.rule().title();
    }

    private static String besides(Match match, LengthUnit unit) {
        return inPlace(match)
                + match.portsHigher().map(higher -> ports(higher, unit)).orElse("")
                + passedOver(match)
                + match.ruling()
                        .wouldServe()
                        .map(smaller -> cost(match, smaller, unit))
                        .orElse("");
    }

    /** Which loose gaskets go on, and what of the kit is left over for them. */
    private static String inPlace(Match match) {
        return match.ruling()
                .row()
                .flatMap(SizeRow::kit)
                .map(Kit::gaskets)
                .map(gaskets -> gaskets.parts()
                        .skip(1)
                        .map(loose -> " The %s %s goes on, and that of %s is left over."
                                .formatted(
                                        loose.kind().label(),
                                        loose.number().text(),
                                        gaskets.kit().number().text()))
                        .collect(Collectors.joining()))
                .orElse("");
    }

    private static String ports(Length higher, LengthUnit unit) {
        return " The ports stand %s %s %s than as made."
                .formatted(
                        ShownLength.of(higher.absolute(), unit),
                        unit.symbol(),
                        higher.isNegative() ? "lower" : "higher");
    }

    private static String passedOver(Match match) {
        return match.passedOver().stream().map(Sentence::passedOver).collect(Collectors.joining());
    }

    private static String passedOver(SizeRow row) {
        return row.blocks().stream()
                .map(Sentence::reason)
                .collect(Collectors.joining(
                        ", ", " " + row.size().label() + ", " + row.certainty().label() + ", is passed over: ", "."));
    }

    private static String reason(Block block) {
        return block.reason().sentence()
                + block.withdrawn().stream()
                        .map(gone -> " (" + gone.number().text() + ", "
                                + gone.state().label() + ")")
                        .collect(Collectors.joining());
    }

    private static String cost(Match match, SizeRow smaller, LengthUnit unit) {
        SizeRow asked = match.ruling().row().orElseThrow();
        List<String> costs = new ArrayList<>();
        costs.add(ShownLength.of(finish(asked).minus(finish(smaller)), unit) + " " + unit.symbol() + " more metal");
        int rebuilds = rebuilds(smaller) - rebuilds(asked);
        if (rebuilds > 0) {
            costs.add(rebuilds == 1 ? "1 rebuild" : rebuilds + " rebuilds");
        }
        int days = leadDays(asked) - leadDays(smaller);
        if (days > 0) {
            costs.add(Days.inWords(days));
        }
        return " " + asked.size().label() + " was asked for; " + smaller.size().label() + " would serve. That costs "
                + String.join(", ", costs) + ".";
    }

    private static Length finish(SizeRow row) {
        return row.choice().orElseThrow().finish();
    }

    /** Not known counts as none, so that no rebuild is called lost that nobody knows to be there. */
    private static int rebuilds(SizeRow row) {
        return row.left().map(RebuildsLeft::byMetal).orElse(0);
    }

    private static int leadDays(SizeRow row) {
        return row.kit().map(Kit::leadDays).orElse(0);
    }

    private static String possible(SizeRow smallest) {
        return "No size is certain; " + smallest.size().label() + " is the smallest possible.";
    }

    private static String next(Ruling ruling, LengthUnit unit) {
        return HoldAnswer.next(ruling.holds().get(0), unit);
    }

    private static String firstHold(Ruling ruling, LengthUnit unit) {
        return HoldAnswer.says(ruling.holds().get(0), unit);
    }
}
