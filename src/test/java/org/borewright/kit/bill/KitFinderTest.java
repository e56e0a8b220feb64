package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.BaseGasket;
import org.borewright.catalog.HeadGasket;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Piston;
import org.borewright.fit.Certainty;
import org.borewright.fit.shape.GasketShape;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A standard piston in so many grades that the two holes of the twin can be filled in more ways than kits are remembered. */
class KitFinderTest {

    private static final int GRADES = 20;

    private static final Comparator<Kit> LACKING = Comparator.comparing(
                    (Kit kit) -> kit.missing().size())
            .thenComparing(kit -> kit.gaskets().loose())
            .thenComparing(kit -> kit.leadDays() > 0);

    private final TwinShop shop = new TwinShop();
    private final Choice choice = standard();

    private Choice standard() {
        shop.pistons.remove(0);
        for (int grade = 10; grade < 10 + GRADES; grade++) {
            shop.pistons.add(TwinShop.piston("P-" + grade, "standard", "0", Optional.of("A")));
            shop.offer("P-" + grade, "40", 10);
        }
        return FitTable.of(shop.shelf()).at(shop.sizes.get(0)).get(0);
    }

    @Test
    void whatIsForgottenIsFoundAgainAndIsTheSame() {
        KitFinder kits = finder();
        List<List<HoleAtSize>> ways = ways();
        List<Optional<Kit>> first = new ArrayList<>();
        for (List<HoleAtSize> way : ways) {
            first.add(best(kits, way));
            assertThat(kits.remembered()).isBetween(1, KitFinder.mostRemembered());
        }

        assertThat(ways).hasSizeGreaterThan(KitFinder.mostRemembered());
        for (int i = 0; i < ways.size(); i++) {
            assertThat(best(kits, ways.get(i))).isEqualTo(first.get(i));
        }
    }

    @Test
    void whatIsRememberedIsNotLookedForAgain() {
        KitFinder kits = finder();
        List<Optional<Kit>> first =
                ways().stream().limit(3).map(way -> best(kits, way)).toList();

        assertThat(kits.remembered()).isEqualTo(3);
        for (int i = 0; i < first.size(); i++) {
            assertThat(best(kits, ways().get(i))).isPresent().isSameAs(first.get(i));
        }
    }

    /** The same grades the other way round go into other holes, and are bought for other holes. */
    @Test
    void eachHoleGetsItsOwnGrade() {
        KitFinder kits = finder();
        List<HoleAtSize> way = ways().get(1);
        List<HoleAtSize> turned =
                List.of(hole("1", way.get(1).piston()), hole("2", way.get(0).piston()));

        assertThat(grades(best(kits, way))).containsExactly("P-10 [1]", "P-11 [2]");
        assertThat(grades(best(kits, turned))).containsExactly("P-11 [1]", "P-10 [2]");
        assertThat(List.of(best(kits, way), best(kits, turned)))
                .allSatisfy(kit -> assertThat(kit.orElseThrow().lines().subList(0, 2))
                        .extracting(line -> line.box().number().text())
                        .containsExactly("P-10", "P-11"));
    }

    private static List<String> grades(Optional<Kit> kit) {
        return kit.orElseThrow().needs().stream()
                .filter(need -> need.part() instanceof Piston)
                .map(need -> need.number() + " " + need.holes())
                .toList();
    }

    @Test
    void manyWhoAskAtOnceAreHandedTheSame() throws InterruptedException, ExecutionException {
        KitFinder kits = finder();
        List<List<HoleAtSize>> ways = ways();
        ExecutorService desk = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<Optional<Kit>>>> asked = IntStream.range(0, 4)
                    .mapToObj(unused -> desk.submit(
                            () -> ways.stream().map(way -> best(kits, way)).toList()))
                    .toList();
            List<Optional<Kit>> alone =
                    ways.stream().map(way -> best(finder(), way)).toList();
            for (Future<List<Optional<Kit>>> answer : asked) {
                assertThat(answer.get()).isEqualTo(alone);
            }
            assertThat(kits.remembered()).isBetween(1, KitFinder.mostRemembered());
        } finally {
            desk.shutdownNow();
        }
    }

    /** Whatever is out of stock, no other set of gaskets by itself lacks less, or as much with fewer loose. */
    @ParameterizedTest
    @ValueSource(strings = {"", "GK-1", "GK-2", "HG-1", "BG-1", "GK-1 GK-2", "GK-1 HG-1", "GK-1 GK-2 BG-1", "BOLT-1"})
    void noSetOfGasketsThatIsPassedOverWouldLackLess(String gone) {
        Choice several = overSeveralGaskets();
        Stream.of(gone.split(" ", -1)).filter(number -> !number.isEmpty()).forEach(number -> shop.lastOf(number, 0));
        List<HoleAtSize> holes = ways().get(0);

        for (List<GasketFit> fitting : List.of(
                several.gaskets(),
                several.gaskets().subList(2, 8),
                several.gaskets().subList(5, 8))) {
            Kit best = finder().best(several, holes, fitting, Length.ZERO).orElseThrow();

            assertThat(fitting)
                    .map(set -> finder().best(several, holes, List.of(set), Length.ZERO)
                            .orElseThrow())
                    .allMatch(kit -> LACKING.compare(best, kit) <= 0);
        }
    }

    /** Two kits, and for each a loose head gasket, a loose base gasket, or both. */
    private Choice overSeveralGaskets() {
        shop.gaskets.add(TwinShop.gasket("GK-2", "73"));
        GasketShape own = shop.gaskets.get(0).shape();
        shop.headGaskets.add(new HeadGasket(TwinShop.no("HG-1"), own.opening(), own.headThickness(), own.margin(), 2));
        shop.baseGaskets.add(new BaseGasket(TwinShop.no("BG-1"), own.baseThickness(), 2));
        List.of("GK-2", "HG-1", "BG-1").forEach(number -> shop.offer(number, "10", 5));
        return FitTable.of(shop.shelf()).at(shop.sizes.get(0)).get(0);
    }

    /** One finder is asked for each set in turn, and each kit knows which set was checked for it. */
    @Test
    void noSetOfGasketsIsTakenForAnother() {
        Choice several = overSeveralGaskets();
        KitFinder kits = finder();

        assertThat(several.gaskets()).hasSize(8).allSatisfy(set -> {
            Kit kit =
                    kits.best(several, ways().get(0), List.of(set), Length.ZERO).orElseThrow();

            assertThat(kit.gaskets()).isEqualTo(set.gaskets());
            assertThat(kit.over(several.gaskets())).contains(set);
            assertThat(kit.over(several.gaskets().stream()
                            .filter(other -> !other.equals(set))
                            .toList()))
                    .isEmpty();
        });
    }

    private KitFinder finder() {
        return new KitFinder(shop.shelf(), new Offers(shop.offers));
    }

    private Optional<Kit> best(KitFinder kits, List<HoleAtSize> holes) {
        return kits.best(choice, holes, choice.gaskets(), Length.ZERO);
    }

    /** Every grade in the one hole beside every grade in the other. */
    private List<List<HoleAtSize>> ways() {
        List<List<HoleAtSize>> ways = new ArrayList<>();
        for (Piston first : grades(shop)) {
            grades(shop).forEach(second -> ways.add(List.of(hole("1", first), hole("2", second))));
        }
        return ways;
    }

    private static List<Piston> grades(TwinShop shop) {
        return shop.pistons.stream()
                .filter(piston -> piston.size().equals("standard"))
                .toList();
    }

    private static HoleAtSize hole(String cylinder, Piston piston) {
        return new HoleAtSize(cylinder, Work.AS_IS, Certainty.CERTAIN, piston, Optional.of(Length.ZERO));
    }
}
