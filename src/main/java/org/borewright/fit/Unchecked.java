package org.borewright.fit;

import java.util.Locale;

/**
 * A rule that could not be asked, and why.
 *
 * @param rule the rule
 * @param place where
 * @param outcome {@link Outcome#UNKNOWN} for a hold, {@link Outcome#NOT_CHECKED} where the rule does not apply
 * @param reason why, in one sentence
 */
public record Unchecked(Rule rule, String place, Outcome outcome, String reason) implements Check {

    /** @throws IllegalArgumentException if the outcome claims a result */
    public Unchecked {
        if (outcome != Outcome.UNKNOWN && outcome != Outcome.NOT_CHECKED) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s has no result, not %s", rule, outcome));
        }
    }

    @Override
    public Unchecked at(String elsewhere) {
        return new Unchecked(rule, elsewhere, outcome, reason);
    }
}
