package org.borewright.kit.bill;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.borewright.catalog.Money;

/**
 * A kit and the work that goes with it.
 *
 * @param kit the parts; empty when there is nothing to assemble
 * @param work of the shop
 */
public record Job(Optional<Kit> kit, ShopWork work) {

    /** Parts and work together; empty where no kit is complete, for a sum that leaves out what is short misleads. */
    public Optional<Money> total() {
        return kit.filter(Kit::isComplete)
                .flatMap(complete -> Stream.concat(
                                complete.total().stream(), work.lines().stream().map(ShopWork.Line::total))
                        .reduce(Money::plus));
    }

    /** The days until it can go out: the kit complete, then the work, in calendar days; empty where no kit is complete. */
    public OptionalInt days() {
        return kit.filter(Kit::isComplete)
                .map(complete -> OptionalInt.of(complete.leadDays() + work.days()))
                .orElse(OptionalInt.empty());
    }
}
