package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.gasket;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Hand;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Size;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.CommonPractice;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What fits the twin, looked up by size and maker. */
class FitTableTest {

    private final TwinShop shop = new TwinShop();

    private FitTable fits() {
        return FitTable.of(shop.shelf());
    }

    private Choice choice(String size) {
        return fits().at(shop.size(size).orElseThrow()).get(0);
    }

    @ParameterizedTest
    @CsvSource({"+0.50, DESIGN-1, true", "+0.50, DESIGN-2, false", "+0.60, DESIGN-1, false"})
    void aChoiceIsOfASizeAndADesign(String size, String design, boolean there) {
        PistonDesign ours = shop.shelf().parts().designs().get(0);
        PistonDesign asked = new PistonDesign(
                design, ours.maker(), ours.expansion(), ours.gaugeHeight(), ours.coating(), ours.wearLimit());

        Optional<Choice> found = fits().at(new Size(size, mm(size.substring(1)), false), asked);

        assertThat(found.map(choice -> choice.size().label())).isEqualTo(there ? Optional.of(size) : Optional.empty());
    }

    /** The second maker's holes are finished a little smaller, as large, or a little larger. */
    @ParameterizedTest
    @CsvSource({
        "0.249, DESIGN-2 DESIGN-1",
        "0.250, DESIGN-1 DESIGN-2",
        "0.251, DESIGN-1 DESIGN-2",
    })
    void makersRiseByTheFinishOfTheirHolesAndThenByName(String oversize, String order) {
        FitTable fits = FitTable.of(new TwoMakers(shop, oversize, "40").shelf());

        assertThat(fits.at(shop.size("+0.25").orElseThrow()))
                .extracting(choice -> choice.design().code())
                .containsExactly(order.split(" "));
    }

    /** A number that was never made goes into no engine; the last of a discontinued one do. */
    @ParameterizedTest
    @CsvSource({"NEVER_MADE, false", "DISCONTINUED, true"})
    void aSizeNeedsPistonsAndGasketsThatAreSupplied(Withdrawal.State state, boolean supplied) {
        shop.gaskets.add(gasket("GK-2", "73"));
        shop.withdraw("P-050", state);
        shop.withdraw("GK-2", state);

        assertThat(fits().at(shop.size("+0.50").orElseThrow())).hasSize(supplied ? 1 : 0);
        assertThat(choice("+0.25").gaskets()).hasSize(supplied ? 2 : 1);
    }

    /** The customer's yes came before the catalogue learned of it: the parts lie on the bench. */
    @ParameterizedTest(name = "no more {0}, in the shop: {1}")
    @CsvSource({
        "P-050, P-050, 1, R-050",
        "R-050, P-050 R-050, 1, R-050",
        "R-050, P-050, 1, ''",
        "P-050, R-050, 0, ''",
        "PIN-1, PIN-1, 1, R-050",
    })
    void whoHasANumberAlreadyLosesNothingByWhatBecomesOfIt(String number, String had, int choices, String rings) {
        shop.withdraw(number, Withdrawal.State.NEVER_MADE);
        Size size = shop.size("+0.50").orElseThrow();

        List<Choice> theirs = fits().having(numbers(had)).at(size);

        assertThat(theirs).hasSize(choices);
        assertThat(theirs.stream()
                        .flatMap(choice -> choice.ringSets().stream())
                        .map(set -> set.number().text()))
                .isEqualTo(rings.isEmpty() ? List.of() : List.of(rings));
    }

    /** The piston of now has a pin of its own: neither it nor its rings are asked of whoever was sold the former. */
    @Test
    void whatTookThePlaceOfWhatWasSoldIsNotAskedOfIt() {
        Piston former = shop.pistons.stream()
                .filter(piston -> piston.number().equals(TwinShop.no("P-050")))
                .findFirst()
                .orElseThrow();
        shop.pistons.add(new Piston(
                TwinShop.no("P-050B"), former.design(), former.size(), former.hand(), former.grade(), former.shape()));
        shop.replace("P-050", "P-050B");
        Size size = shop.size("+0.50").orElseThrow();

        assertThat(fits().at(size).get(0).everyPiston())
                .extracting(piston -> piston.number().text())
                .containsExactly("P-050B");
        assertThat(fits().having(numbers("P-050 R-050")).at(size).get(0).everyPiston())
                .extracting(piston -> piston.number().text())
                .containsExactly("P-050");
        assertThat(fits().having(numbers("P-050 P-050B")).at(size).get(0).everyPiston())
                .hasSize(2);
    }

    /** 70.210 was bored for a piston of before that no shop has any more, and 70.230 for that of now: a hole of either may be there. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"REPLACED, 70.210", "DISCONTINUED, 70.210", "NEVER_MADE, 70.230", "-, 70.210"})
    void aHoleMayHaveBeenBoredForAnyPistonThatWasEverMade(String state, Length smallest) {
        Piston now = shop.pistons.stream()
                .filter(piston -> piston.size().equals("+0.25"))
                .findFirst()
                .orElseThrow();
        shop.pistons.add(TwinShop.piston("P-025A", "+0.25", "0.23", Optional.empty()));
        if (state.equals("REPLACED")) {
            shop.replace("P-025A", now.number().text());
        } else if (!state.equals("-")) {
            shop.withdraw("P-025A", Withdrawal.State.valueOf(state));
        }
        Size size = shop.size("+0.25").orElseThrow();

        assertThat(fits().smallestHole(size)).isEqualTo(smallest);
        assertThat(fits().having(numbers("P-025A")).smallestHole(size)).isEqualTo(mm("70.210"));
    }

    @Test
    void whereAllOfItIsSuppliedTheTableStays() {
        shop.withdraw("P-025", Withdrawal.State.NEVER_MADE);
        FitTable fits = fits();

        assertThat(fits.having(numbers("P-050 R-050"))).isSameAs(fits);
    }

    private static Set<PartNumber> numbers(String all) {
        return Stream.of(all.split(" ")).map(TwinShop::no).collect(Collectors.toSet());
    }

    @ParameterizedTest
    @CsvSource({"+0.60, NEVER_MADE", "+1.10, BEYOND_LARGEST NEVER_MADE"})
    void aSizeWithoutPistonsIsBlockedByThatAtLeast(String size, String reasons) {
        assertThat(fits().neverMade(new Size(size, mm(size.substring(1)), false)))
                .extracting(block -> block.reason().name())
                .containsExactly(reasons.split(" "));
    }

    /** The piston stands 0.35 to 0.55 mm below the deck, the gasket is 1 mm thick: 2 mm off the deck leave it no room. */
    @ParameterizedTest
    @CsvSource({"0, ''", "2, SKIM"})
    void theDeckAsItWillBeStandsAgainstASize(String skims, String reason) {
        assertThat(fits().blocks(choice("+0.25"), mm(skims)))
                .extracting(block -> block.reason().name())
                .isEqualTo(reason.isEmpty() ? List.of() : List.of(reason));
    }

    /** +0.50 is finished to 70.550 mm at the most; what is larger than any finish allowed and a little more was misread. */
    @Test
    void noReadingIsBelievedBeyondTheLargestFinishAllowed() {
        shop.largestOversize = mm("0.5");

        assertThat(fits().plausible().greatest()).isEqualTo(mm("70.550").plus(CommonPractice.believedAbove()));
    }

    /** What goes into the left hole only does not stand among those of the right. */
    @Test
    void eachHoleHasThePistonsThatGoIntoIt() {
        shop.hands = List.of(Hand.LEFT, Hand.RIGHT);
        shop.pistons.remove(0);
        for (Hand hand : shop.hands) {
            Piston any = TwinShop.piston("P-" + hand, "standard", "0", Optional.empty());
            shop.pistons.add(new Piston(any.number(), any.design(), any.size(), hand, any.grade(), any.shape()));
        }

        assertThat(choice("standard").pistons())
                .extracting(pistons ->
                        pistons.stream().map(piston -> piston.number().text()).toList())
                .containsExactly(List.of("P-LEFT"), List.of("P-RIGHT"));
    }

    /** A wall that is never bored comes to no other size. */
    @ParameterizedTest
    @CsvSource({"PLATED, standard, ''", "PLATED, +0.25, NEVER_BORED", "IRON_BARREL, +0.25, ''"})
    void theSizeOfAWallThatIsNeverBoredStays(Construction construction, String size, String reasons) {
        shop.construction = construction;

        assertThat(choice(size).blocksAsMade(fits().shelf().engine()))
                .extracting(block -> block.reason().name())
                .isEqualTo(reasons.isEmpty() ? List.of() : List.of(reasons));
    }

    @Test
    void gasketsAlikeAreRankedByTheirNumbers() {
        shop.gaskets.add(0, gasket("GK-2", "73"));

        assertThat(choice("+0.25").gaskets())
                .extracting(fit -> fit.gaskets().kit().number())
                .containsExactly(no("GK-1"), no("GK-2"));
    }
}
