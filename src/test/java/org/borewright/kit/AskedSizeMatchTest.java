package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A size that the owner asks for: the twin comes clean at +0.25, and there is no piston of +1.00. */
class AskedSizeMatchTest {

    private final TwinShop shop = new TwinShop();

    AskedSizeMatchTest() {
        shop.pistons.removeIf(piston -> piston.size().equals("+1.00"));
    }

    private Match asked(Condition condition, String size, String... diameters) {
        return shop.ask(
                Requests.asking(shop.request(condition, "standard", TwinShop.surveys(diameters)), shop.size(size)));
    }

    private static String holds(Match match) {
        return match.ruling().holds().stream().map(hold -> hold.reason().name()).collect(Collectors.joining(" "));
    }

    @ParameterizedTest(name = "{0} asked: {1}, {2} would serve, {3}")
    @CsvSource({
        "standard, +0.25, , ASKED_SIZE_DOES_NOT_SERVE",
        "+0.25, +0.25, , ''",
        "+0.50, +0.50, +0.25, ''",
        "+0.75, +0.75, +0.25, ''",
        "+1.00, +0.25, , ASKED_SIZE_DOES_NOT_SERVE",
    })
    void aLargerSizeIsTakenWhereItServesAndTheSmallestIsNamedBesideIt(
            String asked, String named, String smaller, String holds) {
        Match match = asked(Condition.WORN, asked, "70.060", "70.060");

        assertThat(TwinShop.named(match)).isEqualTo(named);
        assertThat(match.ruling().wouldServe().map(row -> row.size().label())).isEqualTo(Optional.ofNullable(smaller));
        assertThat(holds(match)).isEqualTo(holds);
    }

    /** Holes that are finished already are cut to a larger size where that is asked for, and to no smaller one. */
    @ParameterizedTest(name = "{1} asked of {0}: {2}, where {3} would serve, {4}")
    @CsvSource({
        "70.000, standard, standard, , ''",
        "70.000, +0.50, +0.50, standard, ''",
        "70.250, +0.75, +0.75, +0.25, ''",
        "70.250, standard, +0.25, , ASKED_SIZE_DOES_NOT_SERVE",
    })
    void finishedHolesGrowNoSmaller(String diameter, String asked, String named, String smaller, String holds) {
        Match match = asked(Condition.FINISHED, asked, diameter, diameter);

        assertThat(TwinShop.named(match)).isEqualTo(named);
        assertThat(match.ruling().wouldServe().map(row -> row.size().label())).isEqualTo(Optional.ofNullable(smaller));
        assertThat(holds(match)).isEqualTo(holds);
    }

    /** What was not checked is told of the engine, of its holes and of its fasteners together. */
    @Test
    void whatWasNotCheckedIsToldTogether() {
        shop.headBoltsOfInchThread();
        Match match = shop.ask(shop.request(Condition.FINISHED, "standard", TwinShop.surveys("70.000", "70.000"))
                .with(new Deck(Optional.empty(), Length.ZERO, Optional.empty())));
        List<Long> each = List.of(
                notChecked(match.checks()),
                match.holes().stream()
                        .mapToLong(hole -> notChecked(hole.checks()))
                        .sum(),
                match.torques().stream()
                        .mapToLong(reminder -> notChecked(reminder.checks()))
                        .sum());

        assertThat(each).allMatch(count -> count > 0);
        assertThat(match.notMade())
                .hasSize(each.stream().mapToInt(Long::intValue).sum())
                .allMatch(check -> check.outcome() == Outcome.NOT_CHECKED);
    }

    private static long notChecked(List<? extends Check> checks) {
        return checks.stream()
                .filter(check -> check.outcome() == Outcome.NOT_CHECKED)
                .count();
    }

    /** Below the size that is named: one that something else than the wear stands against is passed over, one that is named is not. */
    @ParameterizedTest(name = "{0} without pistons: named {1}, passed over {2}")
    @CsvSource({"+0.25, +0.50, +0.25", "+0.50, +0.25, ''"})
    void aSizeBelowTheOneNamedIsPassedOver(String without, String named, String passed) {
        shop.pistons.removeIf(piston -> piston.size().equals(without));

        Match match = shop.worn("standard", "70.060", "70.060");

        assertThat(TwinShop.named(match)).isEqualTo(named);
        assertThat(match.passedOver().stream()
                        .map(SizeRow::size)
                        .map(size -> size.label())
                        .collect(Collectors.joining(" ")))
                .isEqualTo(passed);
    }
}
