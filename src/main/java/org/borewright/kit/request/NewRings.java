package org.borewright.kit.request;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.RingSet;

/**
 * The rings that go on the pistons that are in the engine.
 *
 * @param bought the ring sets that are there for it; empty as long as any may be
 * @param filed whether each ring that must be filed for its hole is; empty as long as nobody has to say
 */
public record NewRings(Set<PartNumber> bought, Optional<Boolean> filed) {

    /** Nothing bought, and nothing asked. */
    public static final NewRings ANY = new NewRings(Collections.emptySet(), Optional.empty());

    /** Copies the set. */
    public NewRings {
        bought = Collections.unmodifiableSet(new TreeSet<>(bought));
    }

    /** Rings that are bought and not in yet: they are filed once they are tried in their holes. */
    public static NewRings bought(Set<PartNumber> sets) {
        return new NewRings(sets, Optional.empty());
    }

    /** The same on the day the engine leaves with some sets: a ring that is not said to be filed is not. */
    public NewRings leavingWith(Set<PartNumber> sets) {
        return new NewRings(sets, Optional.of(filed.orElse(false)));
    }

    /** Whether it is settled which sets are there for it. */
    public boolean areBought() {
        return !bought.isEmpty();
    }

    /** Whether a ring set may go on. */
    public boolean mayBe(RingSet set) {
        return !areBought() || bought.contains(set.number());
    }
}
