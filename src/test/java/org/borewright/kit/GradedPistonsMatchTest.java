package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.MassRange;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Finished holes of the twin and standard pistons in grades: A 69.940 to 69.945 mm for holes about 70.002, B 69.946 to 69.951 for 70.008, C 69.952
 * to 69.957 for 70.014. A and B weigh 200 to 201 g; the engine bears 2 g between its pistons.
 */
class GradedPistonsMatchTest {

    private final TwinShop shop = new TwinShop();

    @BeforeEach
    void grades() {
        shop.pistons.remove(0);
        grade("A", "69.940", "69.945", 200_000, 201_000);
        grade("B", "69.946", "69.951", 200_000, 201_000);
    }

    /** Grade C weighs what the row says: it counts where it goes in, beside another grade or beside itself. */
    @ParameterizedTest(name = "C {0} to {1} mg, holes {2} and {3}: {4} {5}")
    @CsvSource({
        "202000, 203000, 70.002, 70.002, serves, 1000",
        "202000, 203000, 70.002, 70.008, serves, 1000",
        "202000, 203000, 70.014, 70.014, serves, 1000",
        "201000, 202000, 70.002, 70.014, serves, 2000",
        "201000, 202001, 70.002, 70.014, hold, 2001",
        "201000, 202001, 70.014, 70.008, hold, 2001",
        "201000, 202001, 70.014, 70.014, serves, 1001",
        "199000, 200000, 70.002, 70.014, serves, 2000",
        "198999, 200000, 70.002, 70.014, hold, 2001",
        // beside nothing but itself it is no match either
        "200000, 202000, 70.014, 70.014, serves, 2000",
        "200000, 202001, 70.014, 70.014, hold, 2001",
        "200000, 202001, 70.002, 70.008, serves, 1000",
    })
    void massesAreJudgedOfTheGradesThatWereChosen(
            long least, long greatest, String first, String second, String verdict, long spread) {
        grade("C", "69.952", "69.957", least, greatest);

        Match match = shop.finished(first, second);

        assertThat(TwinShop.named(match)).isEqualTo("standard");
        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(massSpread(match.checks())).satisfies(check -> {
            assertThat(check.place()).isEmpty();
            assertThat(check.value().units()).isEqualTo(spread);
        });
        assertThat(match.ruling().holds().stream().flatMap(hold -> hold.checks().stream()))
                .extracting(Check::rule)
                .isEqualTo(verdict.equals("serves") ? List.of() : List.of(Rule.MASS_SPREAD));
    }

    /** Before a hole is measured any grade may go into either: A of 200.000 g beside C. */
    @ParameterizedTest(name = "C up to {0} mg: {1}")
    @CsvSource({"202000, IN", "202001, OUT"})
    void beforeTheHolesAreKnownTheWorstGradesAreJudgedAndNothingIsBlocked(long greatest, Outcome outcome) {
        grade("C", "69.952", "69.957", 201_500, greatest);

        FitTable fits = FitTable.of(shop.shelf());

        assertThat(fits.at(shop.sizes.get(0))).singleElement().satisfies(choice -> {
            assertThat(choice.blocksAsMade(fits.shelf().engine())).isEmpty();
            assertThat(massSpread(choice.metalChecks()))
                    .extracting(Check::place, Check::outcome)
                    .containsExactly("worst grades together", outcome);
        });
    }

    /** What is chosen of a kit is bought: one of each grade, and neither of the one that is not chosen. */
    @Test
    void theKitHoldsTheGradesThatWereChosen() {
        grade("C", "69.952", "69.957", 202_000, 203_000);

        assertThat(shop.finished("70.008", "70.002")
                        .ruling()
                        .row()
                        .orElseThrow()
                        .kit()
                        .orElseThrow()
                        .needs())
                .extracting(need -> need.number().text(), need -> need.holes())
                .contains(tuple("P-B", List.of("1")), tuple("P-A", List.of("2")))
                .doesNotContain(tuple("P-C", List.of("1")));
    }

    /** A size without grades leaves nothing to choose: its spread is reckoned once for all. */
    @Test
    void withoutGradesTheSpreadNeedsNoHoles() {
        FitTable fits = FitTable.of(shop.shelf());
        MatchRequest request = shop.request(Condition.FINISHED, "", TwinShop.surveys("70.260", "70.260"));

        Match match = Match.of(fits, new KitFinder(fits.shelf(), new Offers(shop.offers)), request);

        assertThat(massSpread(match.checks()))
                .isSameAs(massSpread(fits.at(shop.sizes.get(1)).get(0).metalChecks()));
    }

    private static Comparison massSpread(List<Check> checks) {
        return (Comparison) checks.stream()
                .filter(check -> check.rule() == Rule.MASS_SPREAD)
                .findFirst()
                .orElseThrow();
    }

    private void grade(String grade, String least, String greatest, long lightest, long heaviest) {
        PistonShape usual =
                TwinShop.piston("P-1", "standard", "0", Optional.empty()).shape();
        PistonShape shape = new PistonShape(
                new Limits(mm(least), mm(greatest)),
                usual.nominalBore(),
                usual.clearance(),
                usual.crown(),
                usual.grooves(),
                usual.pinSeat(),
                usual.clipSeat(),
                new MassRange(lightest, heaviest));
        shop.pistons.add(new Piston(no("P-" + grade), "DESIGN-1", "standard", Hand.ANY, Optional.of(grade), shape));
        shop.offer("P-" + grade, "40", 10);
    }
}
