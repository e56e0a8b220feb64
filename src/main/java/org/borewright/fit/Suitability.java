package org.borewright.fit;

/**
 * Whether something is of the kind asked for, where nothing can be measured.
 *
 * @param rule the rule that asked
 * @param place where
 * @param found what it is
 * @param asked what it must be
 * @param suits whether it will do
 */
public record Suitability(Rule rule, String place, String found, String asked, boolean suits) implements Check {

    @Override
    public Suitability at(String elsewhere) {
        return new Suitability(rule, elsewhere, found, asked, suits);
    }

    @Override
    public Outcome outcome() {
        return suits ? Outcome.IN : Outcome.OUT;
    }
}
