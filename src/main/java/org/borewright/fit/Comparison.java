package org.borewright.fit;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.borewright.measure.Conformance;
import org.borewright.measure.Decision;
import org.borewright.measure.Length;

/**
 * A value compared with one limit.
 *
 * @param rule the rule that asked
 * @param place where
 * @param value what was found, in the limit's quantity
 * @param sense the side it must lie on
 * @param limit the limit
 * @param uncertainty the expanded uncertainty of the value in the same units; 0 for part against part
 */
public record Comparison(Rule rule, String place, Amount value, Sense sense, Amount limit, long uncertainty)
        implements Check {

    /** @throws IllegalArgumentException if value and limit are of different quantities or the uncertainty is negative */
    public Comparison {
        if (value.quantity() != limit.quantity() || uncertainty < 0) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s: %s against %s ± %d", rule, value, limit, uncertainty));
        }
    }

    /** The same comparison for a measured value. */
    public Comparison within(Length expandedUncertainty) {
        return new Comparison(rule, place, value, sense, limit, expandedUncertainty.nanometres());
    }

    /** How far inside the limit the value lies; negative when beyond it. */
    public long margin() {
        return sense.margin(value.units(), limit.units());
    }

    @Override
    public Outcome outcome() {
        return Outcome.of(Decision.of(margin(), uncertainty));
    }

    /** The probability that the true value is within the limit; empty for part against part. */
    public OptionalDouble conformance() {
        return uncertainty == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Conformance.probability(margin(), uncertainty));
    }

    /** The expanded uncertainty a gauge may have to settle a close call; empty when settled, or when at the limit itself. */
    public Optional<Length> settledWithin() {
        boolean open = outcome() == Outcome.TOO_CLOSE && margin() != 0;
        return open ? Optional.of(Length.ofNanometres(Math.abs(margin()))) : Optional.empty();
    }
}
