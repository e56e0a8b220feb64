package org.borewright.api.match.answer;

import org.borewright.api.shown.Days;
import org.borewright.kit.Match;
import org.borewright.kit.Ruling;
import org.borewright.kit.Settling;
import org.borewright.kit.SizeRow;
import org.borewright.kit.bill.Kit;
import org.borewright.measure.LengthUnit;

/** Says the answer in one plain sentence. */
final class Sentence {

    private Sentence() {}

    static String of(Match match, LengthUnit unit) {
        Ruling ruling = match.ruling();
        return switch (ruling.verdict()) {
            case SERVES -> serves(ruling.row().orElseThrow());
            case HOLD ->
                ruling.row()
                        .map(row -> "Hold: the size would be " + row.size().label() + ". " + firstHold(ruling)
                                + (row.isOpen() ? "" : " " + next(ruling, unit)))
                        .orElseGet(() -> "Hold: " + firstHold(ruling));
            case NO_CERTAIN_SIZE ->
                match.settling().map(Sentence::possible).orElse("No size is certain.") + " " + firstHold(ruling);
            case NO_COMMON_SIZE, REFER -> firstHold(ruling) + " " + next(ruling, unit);
        };
    }

    private static String serves(SizeRow row) {
        String ready = row.kit().filter(Kit::isCompleteNow).isPresent()
                ? "the kit is complete from the shelf"
                : "the kit is complete in "
                        + Days.inWords(row.kit().map(Kit::leadDays).orElse(0));
        return "Every cylinder goes to " + row.size().label() + ": every check is in, and " + ready + ".";
    }

    private static String possible(Settling settling) {
        return "No size is certain; " + settling.row().size().label() + " is the smallest possible.";
    }

    private static String next(Ruling ruling, LengthUnit unit) {
        return HoldAnswer.next(ruling.holds().get(0), unit);
    }

    private static String firstHold(Ruling ruling) {
        return ruling.holds().get(0).reason().sentence();
    }
}
