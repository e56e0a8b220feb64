package org.borewright.order.quote;

import java.util.Optional;
import org.borewright.catalog.Money;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.ShopWork;

/**
 * What a job comes to.
 *
 * @param parts all of them
 * @param work all of it; nothing where the machining is done elsewhere
 * @param net parts and work
 * @param tax on that
 * @param total with tax
 * @param deposit due with the yes; empty where none is asked
 */
public record Sum(Money parts, Money work, Money net, Money tax, Money total, Optional<Money> deposit) {

    /** The sum of a complete kit and the work on it. @throws IllegalArgumentException if the kit is not complete, or empty */
    public static Sum of(Kit kit, ShopWork work, Terms terms) {
        Money parts = Optional.of(kit)
                .filter(Kit::isComplete)
                .flatMap(Kit::total)
                .orElseThrow(() -> new IllegalArgumentException("no sum of a kit that is short"));
        Money done = work.lines().stream().map(ShopWork.Line::total).reduce(Money.zero(parts.currency()), Money::plus);
        Money net = parts.plus(done);
        Money tax = terms.tax(net);
        Money total = net.plus(tax);
        return new Sum(parts, done, net, tax, total, terms.deposit(total));
    }
}
