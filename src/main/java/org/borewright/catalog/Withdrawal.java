package org.borewright.catalog;

import java.util.Locale;
import java.util.Optional;

/**
 * Why a number is not, or no longer, supplied.
 *
 * @param number which
 * @param state what became of it
 * @param replacedBy the number to order instead; present exactly when replaced
 * @param note in words
 */
public record Withdrawal(PartNumber number, State state, Optional<PartNumber> replacedBy, String note) {

    /** What became of a number: three different answers, and out of stock is a fourth. */
    public enum State {
        /** Another number took its place. */
        REPLACED("replaced"),
        /** No longer made; what is on the shelf is the last. */
        DISCONTINUED("discontinued"),
        /** Listed, never made. */
        NEVER_MADE("never made");

        private final String label;

        State(String label) {
            this.label = label;
        }

        /** The words as typed and shown. */
        public String label() {
            return label;
        }
    }

    /** @throws IllegalArgumentException if replaced without a number, or a number without being replaced */
    public Withdrawal {
        if ((state == State.REPLACED) != replacedBy.isPresent()) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s, replaced by %s", number, state.label(), replacedBy));
        }
    }
}
