package org.borewright.kit.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;
import static org.borewright.kit.TwinShop.surveys;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Money;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Certainty;
import org.borewright.fit.DeckFlatness;
import org.borewright.fit.Outcome;
import org.borewright.fit.ServiceWear;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.Match;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.kit.bill.Job;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The twin of which a crown is stamped, and nothing is measured. */
class EstimateTest {

    private final TwinShop shop = new TwinShop();

    private Estimate estimate(String... diameters) {
        Shelf shelf = shop.shelf();
        return Estimate.of(
                FitTable.of(shelf),
                new KitFinder(shelf, new Offers(shop.offers)),
                shop.request(Condition.WORN, "standard", surveys(diameters)));
    }

    /** 0.06 mm out of flat against 0.05, known to 0.010: 0.07 mm comes off, a skim at 40, and the day it takes. */
    @Test
    void aDeckOutOfFlatIsReckonedAsSkimmed() {
        Shelf shelf = shop.shelf();
        MatchRequest flat = shop.request(Condition.WORN, "standard", surveys("-", "-"));
        Deck warped = new Deck(
                Optional.of(new DeckFlatness(mm("0.06"), Optional.empty())), Length.ZERO, Optional.of(Length.ZERO));

        Estimate estimate =
                Estimate.of(FitTable.of(shelf), new KitFinder(shelf, new Offers(shop.offers)), flat.with(warped));

        assertThat(estimate.skim()).contains(mm("0.07"));
        assertThat(totals(estimate)).isEqualTo("174.00 296.00 366.00 366.00");
        assertThat(totals(estimate("-", "-"))).isEqualTo("134.00 256.00 326.00 326.00");
        assertThat(estimate("-", "-").skim()).isEmpty();
    }

    private static String totals(Estimate estimate) {
        return estimate.branches().stream()
                .flatMap(branch -> branch.job().flatMap(Job::total).stream())
                .map(total -> total.amount().toPlainString())
                .collect(Collectors.joining(" "));
    }

    private static String name(Branch branch) {
        return branch.rung().way().label()
                + branch.rung()
                        .row()
                        .map(SizeRow::size)
                        .map(size -> " " + size.label())
                        .orElse("");
    }

    /** Work: a day of stripping at 50, boring at 35 and honing at 15 a hole, a day each; parts as in the bill of the twin. */
    @Test
    void eachWayComesToItsPartsAndItsWork() {
        assertThat(estimate("-", "-").branches().stream()
                        .map(branch -> name(branch)
                                + branch.job()
                                        .flatMap(Job::total)
                                        .map(Money::amount)
                                        .map(amount -> " " + amount)
                                        .orElse("")
                                + branch.job()
                                        .map(Job::days)
                                        .filter(OptionalInt::isPresent)
                                        .map(days -> " in " + days.getAsInt())
                                        .orElse("")
                                + branch.left()
                                        .map(RebuildsLeft::byMetal)
                                        .map(left -> ", left " + left)
                                        .orElse(""))
                        .collect(Collectors.joining("; ")))
                .isEqualTo("rings only 134.00 in 1, left 4; hone only standard 256.00 in 2, left 4;"
                        + " rebore +0.25 326.00 in 3, left 3; rebore +0.50 326.00 in 3, left 2; sleeve");
    }

    /** The limit is that of the rules themselves: a match of just that reading passes, and of one nanometre more it does not. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void theReadingThatDecidesIsThatOfAMatch(int place) {
        Branch branch = estimate("-", "-").branches().get(place);
        LargestHole largest = branch.largestHole().orElseThrow();
        Length certain = largest.certainUpTo().orElseThrow();
        Length possible = largest.possibleUpTo().orElseThrow();

        assertThat(certainty(branch, certain)).isEqualTo(Certainty.CERTAIN);
        assertThat(certainty(branch, more(certain))).isEqualTo(Certainty.POSSIBLE);
        assertThat(certainty(branch, possible)).isEqualTo(Certainty.POSSIBLE);
        assertThat(certainty(branch, more(possible))).isEqualTo(Certainty.NO);
    }

    private static Length more(Length length) {
        return length.plus(Length.ofNanometres(1));
    }

    private Certainty certainty(Branch branch, Length diameter) {
        return certainty(branch, diameter, mm("70.000"));
    }

    private Certainty certainty(Branch branch, Length first, Length second) {
        Match match = shop.worn(
                "standard",
                first.toString().replace(" mm", ""),
                second.toString().replace(" mm", ""));
        return match.table().stream()
                .filter(row ->
                        row.size().equals(branch.rung().row().orElseThrow().size()))
                .findFirst()
                .orElseThrow()
                .certainty();
    }

    /** 2·D ≤ 70.250 − 0.05 + 70.000 − 0.04 − 2U and D ≤ 70.250 − 0.05 + U; a hone at standard needs 70.005 + U of 70.000 mm. */
    @Test
    void theLimitsAreThoseWorkedOutByHand() {
        List<Branch> branches = estimate("-", "-").branches();

        assertThat(branches.get(2).largestHole())
                .contains(
                        new LargestHole(Optional.empty(), Optional.of(mm("70.074719")), Optional.of(mm("70.205282"))));
        assertThat(branches.get(1).largestHole())
                .contains(new LargestHole(Optional.empty(), Optional.empty(), Optional.of(mm("70.000281"))));
    }

    /**
     * In a wall that is never cut a piston from p to q is proven in holes from q + 0.040 + U to p + 0.100 − U, and possible below p + 0.100 + U;
     * U 0.005 281 mm. Grades whose windows join are one; where a nanometre lies between, only the larger grade counts.
     */
    @ParameterizedTest(name = "{0}, {1}: from {2} to {3}, possible to {4}")
    @CsvSource({
        "A 69.952 69.962, , 70.007281, 70.046719, 70.057280",
        "A 69.940 69.950, , , 70.034719, 70.045280",
        "A 69.950 69.956, B 69.960 69.966, 70.001281, 70.054719, 70.065280",
        "A 69.950 69.956, B 69.994 69.999439, 70.001281, 70.088719, 70.099280",
        "A 69.950 69.956, B 69.994 69.999440, 70.044721, 70.088719, 70.099280",
        "A 69.950 70.010, , , , 70.055280",
    })
    void aWallThatIsNeverCutHasAWindow(String first, String second, Length from, Length upTo, Length possible) {
        shop.construction = Construction.PLATED;
        shop.pistons.remove(0);
        grade(first);
        Optional.ofNullable(second).ifPresent(this::grade);

        Branch branch = estimate("-", "-").branches().get(1);

        assertThat(branch.rung().way()).isEqualTo(Way.NEW_PISTONS);
        assertThat(branch.largestHole())
                .contains(new LargestHole(Optional.ofNullable(from), Optional.ofNullable(upTo), Optional.of(possible)));
        if (from != null) {
            assertThat(both(branch, from.minus(Length.ofNanometres(1)))).isEqualTo(Certainty.POSSIBLE);
            assertThat(both(branch, from)).isEqualTo(Certainty.CERTAIN);
        }
        if (upTo != null) {
            assertThat(both(branch, upTo)).isEqualTo(Certainty.CERTAIN);
            assertThat(both(branch, more(upTo))).isEqualTo(Certainty.POSSIBLE);
        }
        assertThat(both(branch, possible)).isEqualTo(Certainty.POSSIBLE);
        assertThat(both(branch, more(possible))).isEqualTo(Certainty.NO);
    }

    private Certainty both(Branch branch, Length diameter) {
        return certainty(branch, diameter, diameter);
    }

    private void grade(String told) {
        String[] words = told.split(" ", -1);
        PistonShape shape =
                TwinShop.piston("P-STD", "standard", "0", Optional.empty()).shape();
        shop.pistons.add(
                0,
                new Piston(
                        no("P-" + words[0]),
                        "DESIGN-1",
                        "standard",
                        Hand.ANY,
                        Optional.of(words[0]),
                        new PistonShape(
                                new Limits(mm(words[1]), mm(words[2])),
                                shape.nominalBore(),
                                shape.clearance(),
                                shape.crown(),
                                shape.grooves(),
                                shape.pinSeat(),
                                shape.clipSeat(),
                                shape.mass())));
        shop.offer("P-" + words[0], "40", 10);
    }

    /** 70.100 mm less U; the gap of the twin's ring, 0.45 mm at 70.000 and 0.80 allowed, is reached at 70.106 only. */
    @Test
    void newRingsWillDoUpToTheWearTheEngineBears() {
        Length most = estimate("-", "-")
                .branches()
                .get(0)
                .largestHole()
                .orElseThrow()
                .certainUpTo()
                .orElseThrow();

        assertThat(most).isEqualTo(TwinShop.mm("70.094719"));
        assertThat(ServiceWear.check(
                                most,
                                Uncertainty.ofCalibration(TwinShop.mm("0.005281")),
                                TwinShop.mm("70.000"),
                                TwinShop.mm("0.100"))
                        .outcome())
                .isEqualTo(Outcome.IN);
    }

    /** Of +0.25 three larger sizes are left while new rings alone go in. */
    @Test
    void newRingsLeaveWhatThePresentSizeLeaves() {
        Shelf shelf = shop.shelf();
        Estimate estimate = Estimate.of(
                FitTable.of(shelf),
                new KitFinder(shelf, new Offers(shop.offers)),
                shop.request(Condition.WORN, "+0.25", surveys("-", "-")));

        assertThat(estimate.branches().get(0).left().map(RebuildsLeft::byMetal)).contains(3);
    }

    /** Rings for the pistons that are in it, though those of another maker would cost less. */
    @Test
    void newRingsAreThoseOfTheMakerThatIsKnown() {
        TwoMakers makers = new TwoMakers(shop, "0.25", "40");
        shop.offer("R2-025", "5", 10);
        AsFound first =
                Requests.pistonOf(shop.shelf().parts().designs().stream().findFirst());
        MatchRequest stamped = shop.request(Condition.WORN, "+0.25", surveys("-", "-"));

        assertThat(rings(makers, Requests.seen(stamped, List.of(first, first)))).containsExactly("R-025");
        assertThat(rings(makers, stamped)).containsExactly("R2-025");
    }

    /** Where nothing is made any more for the pistons that are in it, the rings of another maker do not go on them. */
    @Test
    void ringsThatAreRuledOutArePricedForNobody() {
        TwoMakers makers = new TwoMakers(shop, "0.25", "40");
        shop.withdraw("P-025", Withdrawal.State.NEVER_MADE);
        AsFound first =
                Requests.pistonOf(shop.shelf().parts().designs().stream().findFirst());
        MatchRequest stamped = shop.request(Condition.WORN, "+0.25", surveys("-", "-"));

        Shelf shelf = makers.shelf();
        Estimate estimate = Estimate.of(
                FitTable.of(shelf),
                new KitFinder(shelf, new Offers(shop.offers)),
                Requests.seen(stamped, List.of(first, first)));

        assertThat(estimate.branches().get(0).job()).isEmpty();
    }

    private List<String> rings(TwoMakers makers, MatchRequest request) {
        Shelf shelf = makers.shelf();
        return Estimate.of(FitTable.of(shelf), new KitFinder(shelf, new Offers(shop.offers)), request)
                .branches()
                .get(0)
                .job()
                .flatMap(Job::kit)
                .orElseThrow()
                .lines()
                .stream()
                .map(line -> line.box().number().text())
                .filter(number -> number.startsWith("R"))
                .toList();
    }

    @Test
    void whatIsMeasuredAlreadyNeedsNoLimit() {
        Estimate estimate = estimate("70.110", "70.020");

        assertThat(estimate.branches())
                .allSatisfy(branch -> assertThat(branch.largestHole()).isEmpty());
        assertThat(estimate.branches())
                .extracting(EstimateTest::name)
                .containsExactly("rings only", "hone only standard", "rebore +0.25", "rebore +0.50", "sleeve");
    }

    @Test
    void aWayThatIsRuledOutHasNoPrice() {
        List<Branch> branches = estimate("70.110", "-").branches();

        assertThat(branches)
                .filteredOn(branch -> branch.job().isEmpty())
                .extracting(EstimateTest::name)
                .containsExactly("rings only", "hone only standard", "sleeve");
    }

    @Test
    void aSizeThatIsNotOfferedHasNoPrice() {
        shop.withdraw("R-025", Withdrawal.State.NEVER_MADE);

        List<Branch> branches = estimate("-", "-").branches();

        assertThat(branches)
                .extracting(EstimateTest::name)
                .containsExactly(
                        "rings only", "hone only standard", "rebore +0.25", "rebore +0.50", "rebore +0.75", "sleeve");
        assertThat(branches.get(2).job()).isEmpty();
        assertThat(branches.get(2).largestHole()).isEmpty();
        assertThat(branches.get(2).rung().open()).containsExactly("a part that goes with this piston is not supplied");
    }

    @Test
    void ringsThatNobodySuppliesHaveNoPrice() {
        shop.withdraw("R-STD", Withdrawal.State.NEVER_MADE);

        Branch rings = estimate("-", "-").branches().get(0);

        assertThat(rings.job()).isEmpty();
        assertThat(rings.largestHole()).isEmpty();
    }
}
