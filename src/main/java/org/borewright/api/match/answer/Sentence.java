package org.borewright.api.match.answer;

import org.borewright.api.shown.Days;
import org.borewright.kit.Match;
import org.borewright.kit.Ruling;
import org.borewright.kit.SizeRow;
import org.borewright.kit.bill.Kit;

/** Says the answer in one plain sentence. */
final class Sentence {

    private Sentence() {}

    static String of(Match match) {
        Ruling ruling = match.ruling();
        return switch (ruling.verdict()) {
            case SERVES -> serves(ruling.row().orElseThrow());
            case HOLD ->
                ruling.row()
                        .map(row -> "Hold: the size would be " + row.size().label() + ". " + firstHold(ruling))
                        .orElseGet(() -> "Hold: " + firstHold(ruling));
            case NO_CERTAIN_SIZE ->
                match.table().stream()
                                .filter(SizeRow::mightServe)
                                .findFirst()
                                .map(Sentence::possible)
                                .orElse("No size is certain.")
                        + " " + firstHold(ruling);
            case NO_COMMON_SIZE, REFER ->
                firstHold(ruling) + " " + ruling.holds().get(0).reason().wayOut();
        };
    }

    private static String serves(SizeRow row) {
        String ready = row.kit().filter(Kit::isCompleteNow).isPresent()
                ? "the kit is complete from the shelf"
                : "the kit is complete in "
                        + Days.inWords(row.kit().map(Kit::leadDays).orElse(0));
        return "Every cylinder goes to " + row.size().label() + ": every check is in, and " + ready + ".";
    }

    private static String possible(SizeRow smallest) {
        return "No size is certain; " + smallest.size().label() + " is the smallest possible.";
    }

    private static String firstHold(Ruling ruling) {
        return ruling.holds().get(0).reason().sentence();
    }
}
