package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.borewright.catalog.Box;
import org.borewright.catalog.Money;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Shelf;
import org.borewright.kit.TwinShop;

/** The cover that is found is the preferred one of all there are: on small shelves all are looked at. */
class CoverSearchProperties {

    private static final int MOST_NEEDED = 3;

    /** Three parts that are needed and one that is not: it is left over from whatever box it lies in. */
    private static final List<String> NUMBERS = List.of("PIN-1", "PIN-2", "PIN-3", "PIN-4");

    /** Something sold: how many of each number are in it, its price, how many are there, and in how many days more come. */
    private record Sold(
            String number, Box.Kind kind, List<Integer> counts, int price, int onHand, OptionalInt leadDays) {

        int mostOfUse() {
            return leadDays.isPresent() ? MOST_NEEDED : Math.min(onHand, MOST_NEEDED);
        }

        int leadDays(int quantity) {
            return quantity <= onHand ? 0 : leadDays.orElseThrow();
        }

        int parts() {
            return counts.stream().mapToInt(Integer::intValue).sum();
        }

        long needsServed() {
            return counts.subList(0, 3).stream().filter(count -> count > 0).count();
        }

        String contents() {
            return IntStream.range(0, counts.size())
                    .filter(i -> counts.get(i) > 0)
                    .mapToObj(i -> NUMBERS.get(i) + " " + counts.get(i))
                    .reduce((a, b) -> a + " " + b)
                    .orElseThrow();
        }
    }

    /** So many of each thing sold. */
    private record Taken(List<Sold> sold, List<Integer> quantities) {

        int sum(ToIntFunction<Sold> of) {
            return IntStream.range(0, sold.size())
                    .map(i -> quantities.get(i) * of.applyAsInt(sold.get(i)))
                    .sum();
        }

        int leadDays() {
            return IntStream.range(0, sold.size())
                    .map(i -> sold.get(i).leadDays(quantities.get(i)))
                    .max()
                    .orElse(0);
        }

        List<String> lines() {
            return IntStream.range(0, sold.size())
                    .filter(i -> quantities.get(i) > 0)
                    .mapToObj(i -> quantities.get(i) + " " + sold.get(i).number())
                    .toList();
        }
    }

    /** Complete now, the least left over, the earliest, box order, price; where all is equal, more of what stands first. */
    private static final Comparator<Taken> PREFERENCE = Comparator.comparing((Taken taken) -> taken.leadDays() > 0)
            .thenComparing(taken -> taken.sum(Sold::parts))
            .thenComparing(Taken::leadDays)
            .thenComparing(taken -> taken.sum(sold -> sold.kind().order()))
            .thenComparing(taken -> taken.sum(Sold::price))
            .thenComparing(taken -> taken.quantities().toString(), Comparator.reverseOrder());

    @Property(tries = 2000)
    void theCoverThatIsFoundIsThePreferredOfAll(
            @ForAll @Size(3) List<@IntRange(min = 1, max = MOST_NEEDED) Integer> needed,
            @ForAll("shelves") List<Sold> shelf) {
        CoverSearch search = search(needed, shelf);
        Optional<Taken> preferred = preferred(needed, shelf);

        assertThat(isPossible(search, needed)).isEqualTo(preferred.isPresent());
        preferred.ifPresent(taken -> assertThat(search.best().picks())
                .extracting(pick -> pick.quantity() + " " + pick.packed().box().number())
                .isEqualTo(taken.lines()));
    }

    /** Every choice of numbers of every box, whatever it comes to. */
    private static Optional<Taken> preferred(List<Integer> needed, List<Sold> shelf) {
        List<Sold> ordered = shelf.stream()
                .filter(sold -> sold.needsServed() > 0)
                .sorted(Comparator.comparing((Sold sold) -> sold.needsServed() < 2)
                        .thenComparing(Sold::kind)
                        .thenComparing(Sold::number))
                .toList();
        return choices(ordered, 0)
                .map(quantities -> new Taken(ordered, quantities))
                .filter(taken -> IntStream.range(0, 3)
                        .allMatch(need -> taken.sum(sold -> sold.counts().get(need)) >= needed.get(need)))
                .min(PREFERENCE);
    }

    private static Stream<List<Integer>> choices(List<Sold> shelf, int from) {
        return from == shelf.size()
                ? Stream.of(List.of())
                : IntStream.rangeClosed(0, shelf.get(from).mostOfUse())
                        .boxed()
                        .flatMap(first -> choices(shelf, from + 1).map(rest -> with(first, rest)));
    }

    private static List<Integer> with(int first, List<Integer> rest) {
        List<Integer> all = new ArrayList<>(List.of(first));
        all.addAll(rest);
        return all;
    }

    /**
     * Before a box there are no more states than ways to take of those before it, and all is gone through once and once more for each
     * halving of the lead times: here there are three.
     */
    @Property(tries = 1000)
    void theStatesAreNoMoreThanTheWaysToTakeTheBoxes(
            @ForAll @Size(3) List<@IntRange(min = 1, max = MOST_NEEDED) Integer> needed,
            @ForAll("shelves") List<Sold> shelf) {
        CoverSearch search = search(needed, shelf);
        long ways = 1;
        long alone = 0;
        for (Sold sold : shelf) {
            long ofUse = IntStream.range(0, 3)
                    .filter(need -> sold.counts().get(need) > 0)
                    .map(need -> (needed.get(need) + sold.counts().get(need) - 1)
                            / sold.counts().get(need))
                    .max()
                    .orElse(0);
            ways *= sold.needsServed() > 1 ? 1 + ofUse : 1;
            alone += sold.needsServed() == 1 ? 1 + MOST_NEEDED : 0;
        }

        if (isPossible(search, needed)) {
            search.best();
            assertThat(search.states()).isLessThanOrEqualTo((int) (3 * (2 * ways + alone)));
        }
    }

    private static boolean isPossible(CoverSearch search, List<Integer> needed) {
        return IntStream.range(0, needed.size()).allMatch(search::isPossible);
    }

    private static CoverSearch search(List<Integer> needed, List<Sold> sold) {
        TwinShop shop = new TwinShop();
        shop.offers.clear();
        for (Sold one : sold) {
            if (one.kind() != Box.Kind.LOOSE) {
                shop.box(one.number(), one.kind(), one.contents(), "1", 0);
            }
            Money price = TwinShop.money(String.valueOf(one.price()));
            PartNumber number = TwinShop.no(one.number());
            shop.offers.put(number, new Offer(number, price, one.onHand(), one.leadDays()));
        }
        Shelf shelf = shop.shelf();
        List<Need> needs = IntStream.range(0, 3)
                .mapToObj(need -> new Need(
                        new Pin(
                                TwinShop.no(NUMBERS.get(need)),
                                "DESIGN-1",
                                shop.pins.get(0).shape()),
                        Collections.nCopies(needed.get(need), "1")))
                .toList();
        return CoverSearch.of(needs, shelf, new Offers(shop.offers));
    }

    @Provide
    Arbitrary<List<Sold>> shelves() {
        Arbitrary<Box.Kind> packed = Arbitraries.of(Box.Kind.ENGINE_BOX, Box.Kind.CYLINDER_BOX, Box.Kind.PACK);
        Arbitrary<List<Integer>> contents = Arbitraries.integers()
                .between(0, 2)
                .list()
                .ofSize(4)
                .filter(counts -> counts.stream().anyMatch(count -> count > 0));
        Arbitrary<List<Sold>> boxes = Combinators.combine(packed, contents, prices(), stock(), leadDays())
                .as((kind, counts, price, onHand, lead) -> new Sold("BOX", kind, counts, price, onHand, lead))
                .list()
                .ofMaxSize(4);
        Arbitrary<List<Optional<Sold>>> loose = Combinators.combine(prices(), stock(), leadDays())
                .as((price, onHand, lead) -> new Sold("LOOSE", Box.Kind.LOOSE, List.of(), price, onHand, lead))
                .optional(0.7)
                .list()
                .ofSize(3);
        return Combinators.combine(boxes, loose).as(CoverSearchProperties::named);
    }

    private static List<Sold> named(List<Sold> boxes, List<Optional<Sold>> loose) {
        List<Sold> all = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            all.add(named(boxes.get(i), "BOX-" + i, boxes.get(i).counts()));
        }
        for (int need = 0; need < loose.size(); need++) {
            List<Integer> one = new ArrayList<>(List.of(0, 0, 0, 0));
            one.set(need, 1);
            String number = NUMBERS.get(need);
            loose.get(need).ifPresent(sold -> all.add(named(sold, number, one)));
        }
        return all;
    }

    private static Sold named(Sold sold, String number, List<Integer> counts) {
        return new Sold(number, sold.kind(), counts, sold.price(), sold.onHand(), sold.leadDays());
    }

    /** Few enough that much comes to the same. */
    private static Arbitrary<Integer> prices() {
        return Arbitraries.integers().between(1, 3);
    }

    private static Arbitrary<Integer> stock() {
        return Arbitraries.integers().between(0, 3);
    }

    /** No more at all, at once, or in some days. */
    private static Arbitrary<OptionalInt> leadDays() {
        return Arbitraries.integers().between(-2, 3).map(days -> days < 0 ? OptionalInt.empty() : OptionalInt.of(days));
    }
}
