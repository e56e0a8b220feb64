package org.borewright.fit;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.borewright.measure.Conformance;
import org.borewright.measure.Decision;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/**
 * A value compared with one limit.
 *
 * @param rule the rule that asked
 * @param place where
 * @param value what was found, in the limit's quantity
 * @param sense the side it must lie on
 * @param limit the limit
 * @param uncertainty the expanded uncertainty of the value in the same units; 0 for part against part
 * @param readings what that is made of
 */
public record Comparison(
        Rule rule, String place, Amount value, Sense sense, Amount limit, long uncertainty, Readings readings)
        implements Check {

    /** @throws IllegalArgumentException if value and limit are of different quantities or the uncertainty is negative */
    public Comparison {
        if (value.quantity() != limit.quantity() || uncertainty < 0) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s: %s against %s ± %d", rule, value, limit, uncertainty));
        }
    }

    /** An exact value compared with its limit: part against part. */
    static Comparison exact(Rule rule, String place, Amount value, Sense sense, Amount limit) {
        return new Comparison(rule, place, value, sense, limit, 0, Readings.NONE);
    }

    /** The same comparison for a value of which only the expanded uncertainty is known, and nothing of a gauge. */
    public Comparison within(Length expandedUncertainty) {
        return new Comparison(rule, place, value, sense, limit, expandedUncertainty.nanometres(), Readings.NONE);
    }

    /** The same comparison for a measured value that is a reading, or a reading less something exact. */
    public Comparison within(Uncertainty ofReading) {
        return within(ofReading, Carried.ONCE);
    }

    /** The same comparison for a value reckoned from a reading. */
    public Comparison within(Uncertainty ofReading, Carried times) {
        return within(new Readings(ofReading, times, Uncertainty.NONE));
    }

    /** The same comparison for a difference of two lengths measured apart, of the one that may be measured again and of the other. */
    public Comparison within(Uncertainty ofReading, Uncertainty ofOther) {
        return within(new Readings(ofReading, Carried.ONCE, ofOther));
    }

    private Comparison within(Readings known) {
        return new Comparison(rule, place, value, sense, limit, known.expanded().nanometres(), known);
    }

    /** How far inside the limit the value lies; negative when beyond it. */
    public long margin() {
        return sense.margin(value.units(), limit.units());
    }

    @Override
    public Comparison at(String elsewhere) {
        return new Comparison(rule, elsewhere, value, sense, limit, uncertainty, readings);
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

    /** What would settle it; empty when it is settled. */
    public Optional<CloserReading> closer() {
        return outcome() == Outcome.TOO_CLOSE ? Optional.of(CloserReading.of(this)) : Optional.empty();
    }
}
