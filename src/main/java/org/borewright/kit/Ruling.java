package org.borewright.kit;

import java.util.List;
import java.util.Optional;
import org.borewright.kit.table.SizeRow;

/**
 * The verdict, the size it names, and what holds.
 *
 * @param verdict what may be done
 * @param row the size for the whole engine; empty when none is named
 * @param wouldServe the smallest size that serves, where a larger one was asked for and is named
 * @param holds what stands in the way; empty exactly when the verdict is {@link Verdict#SERVES}
 */
public record Ruling(Verdict verdict, Optional<SizeRow> row, Optional<SizeRow> wouldServe, List<Hold> holds) {

    /** Copies the holds. */
    public Ruling {
        holds = List.copyOf(holds);
    }

    /** On a size, with what holds so far. */
    static Ruling on(SizeRow row, List<Hold> holds) {
        return new Ruling(verdict(holds), Optional.of(row), Optional.empty(), holds);
    }

    static Ruling without(Verdict verdict, List<Hold> holds) {
        return new Ruling(verdict, Optional.empty(), Optional.empty(), holds);
    }

    /** Whether it holds for this reason. */
    boolean isOn(Hold.Reason reason) {
        return holds.stream().anyMatch(hold -> hold.reason() == reason);
    }

    /** The same on this size with these holds: without one it serves. */
    Ruling with(SizeRow named, List<Hold> all) {
        return new Ruling(verdict(all), Optional.of(named), wouldServe, all);
    }

    private static Verdict verdict(List<Hold> holds) {
        return holds.isEmpty() ? Verdict.SERVES : Verdict.HOLD;
    }

    /** The same ruling on a size that was asked for, where a smaller one would serve. */
    Ruling where(SizeRow smaller) {
        return new Ruling(verdict, row, Optional.of(smaller), holds);
    }
}
