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
 * @param carried how much of the uncertainty of one reading that is
 * @param beside the expanded uncertainty of a second length measured apart, which is in it too; zero without one
 */
public record Comparison(
        Rule rule,
        String place,
        Amount value,
        Sense sense,
        Amount limit,
        long uncertainty,
        Carried carried,
        Length beside)
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
        return new Comparison(rule, place, value, sense, limit, 0, Carried.ONCE, Length.ZERO);
    }

    /** The same comparison for a measured value that is a reading, or a reading less something exact. */
    public Comparison within(Length expandedUncertainty) {
        return within(expandedUncertainty, Carried.ONCE);
    }

    /** The same comparison for a value reckoned from a reading of an expanded uncertainty. */
    public Comparison within(Length ofReading, Carried times) {
        return new Comparison(
                rule, place, value, sense, limit, times.from(ofReading).nanometres(), times, Length.ZERO);
    }

    /** The same comparison for a difference of two lengths measured apart, of the one that may be measured again and of the other. */
    public Comparison within(Length ofReading, Length ofOther) {
        long both = Uncertainty.ofApart(ofReading, ofOther).nanometres();
        return new Comparison(rule, place, value, sense, limit, both, Carried.ONCE, ofOther);
    }

    /** How far inside the limit the value lies; negative when beyond it. */
    public long margin() {
        return sense.margin(value.units(), limit.units());
    }

    @Override
    public Comparison at(String elsewhere) {
        return new Comparison(rule, elsewhere, value, sense, limit, uncertainty, carried, beside);
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

    /**
     * The expanded uncertainty a reading may have to settle a close call; empty when settled, or when no gauge is that good: at the
     * limit itself, or less than a nanometre from it, or where the other length alone is too uncertain.
     */
    public Optional<Length> settledWithin() {
        return settledTogether()
                .map(together -> carried.readingWithin(Uncertainty.leftOf(together, beside)))
                .filter(uncertainty -> uncertainty.isMoreThan(Length.ZERO));
    }

    /** The expanded uncertainty the value itself may have to settle a close call; empty when settled, or at the limit itself. */
    public Optional<Length> settledTogether() {
        return outcome() == Outcome.TOO_CLOSE
                ? Optional.of(Length.ofNanometres(Math.abs(margin())))
                        .filter(uncertainty -> uncertainty.isMoreThan(Length.ZERO))
                : Optional.empty();
    }
}
