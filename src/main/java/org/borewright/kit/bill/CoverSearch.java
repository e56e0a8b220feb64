package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.kit.choice.Supply;

/**
 * Finds the preferred way to cover needs with boxes, out of all there are: complete from the shelf before complete later; then the least left
 * over, so that an exact cover comes first; then the earliest; then box order, engine box before cylinder box before loose; then the
 * price; and where all is equal more of the box that comes first by kind and number, so that the answer never depends on chance.
 *
 * <p>Boxes that serve several needs are tried together in every number that can be of use; what they leave open of a need is filled from the
 * boxes that serve it alone, each need for itself.
 *
 * <p>The worst case is bounded, whatever is on hand. With u the number of a box that can be of use, the boxes that serve several needs come to
 * less than 2 · (1 + u₁) · (1 + u₂) · … {@linkplain Filling states}, and a catalogue is refused where that product, times the kits it is asked
 * for, is over {@link Box#mostWays()}. The boxes that serve one need alone come to no more than their number times the count of the need,
 * and a catalogue is refused where they are more than {@link Box#mostPacks()}. This is gone through once where the needs can be covered
 * from the shelf, else once for the longest lead time and once each time the others are halved.
 */
final class CoverSearch {

    private final List<Need> needs;
    private final List<Packed> boxes;
    private final List<Filling> goneThrough = new ArrayList<>();

    private CoverSearch(List<Need> needs, List<Packed> boxes) {
        this.needs = needs;
        this.boxes = boxes;
    }

    /** A search for needs among what is on a shelf and sold. */
    static CoverSearch of(List<Need> needs, Shelf shelf, Offers offers) {
        Set<PartNumber> needed = needs.stream().map(Need::number).collect(Collectors.toSet());
        return new CoverSearch(
                needs,
                Stream.concat(shelf.boxes().stream(), needs.stream().map(need -> Box.loose(need.number())))
                        .filter(box -> Supply.isSupplied(shelf, box.number()))
                        .filter(box -> holdsNoOtherSize(box, needed, shelf))
                        .flatMap(box -> offers.of(box.number()).stream().map(offer -> Packed.of(box, offer, needs)))
                        .filter(Packed::isOfUse)
                        .sorted(Packed.ORDER)
                        .toList());
    }

    /** Whether every piston and ring set in a box is needed: nobody opens a box of another size for its pins. */
    private static boolean holdsNoOtherSize(Box box, Set<PartNumber> needed, Shelf shelf) {
        return Stream.concat(
                        shelf.parts().pistons().stream().map(Piston::number),
                        shelf.parts().ringSets().stream().map(RingSet::number))
                .filter(number -> box.contents().containsKey(number))
                .allMatch(needed::contains);
    }

    /** Whether one of the needs can be covered at all, by its place among them. */
    boolean isPossible(int need) {
        return isPossible(need, Integer.MAX_VALUE);
    }

    /** More of a box never takes anything away: all needs can be covered together where each can. */
    private boolean isPossibleWithin(int days) {
        return IntStream.range(0, needs.size()).allMatch(need -> isPossible(need, days));
    }

    private boolean isPossible(int need, int days) {
        return obtainable(need, days) >= needs.get(need).count();
    }

    /** A search for some of the needs alone: a box is opened for them, whatever else of the size in it is wanting. */
    CoverSearch only(List<Need> some) {
        return new CoverSearch(
                some,
                boxes.stream()
                        .map(packed -> Packed.of(packed.box(), packed.offer(), some))
                        .filter(Packed::isOfUse)
                        .sorted(Packed.ORDER)
                        .toList());
    }

    /** How many parts of a need can be had within so many days; on the 0th what lies on the shelf. */
    long obtainable(int need, int days) {
        return boxes.stream()
                .mapToLong(packed ->
                        (long) packed.obtainable(days) * packed.holds().get(need))
                .sum();
    }

    /** The preferred cover of needs that can be covered. */
    Cover best() {
        List<Integer> days = Stream.concat(
                        Stream.of(0),
                        boxes.stream()
                                .flatMap(packed ->
                                        packed.offer().leadDays().stream().boxed()))
                .distinct()
                .sorted()
                .filter(this::isPossibleWithin)
                .toList();
        Way way = days.get(0) == 0 ? within(0) : leastLeftOver(days);
        return new Cover(way.picks());
    }

    /** The longer it may take the less is left over: the soonest of the days with the least left over is looked for by halves. */
    private Way leastLeftOver(List<Integer> days) {
        int soonest = 0;
        int found = days.size() - 1;
        Way best = within(days.get(found));
        while (soonest < found) {
            int between = (soonest + found) / 2;
            Way sooner = within(days.get(between));
            if (sooner.parts() == best.parts()) {
                found = between;
                best = sooner;
            } else {
                soonest = between + 1;
            }
        }
        return best;
    }

    /** The best way with what can be had within so many days. */
    private Way within(int days) {
        List<Packed> several = boxes.stream().filter(Packed::servesSeveral).toList();
        Map<Boolean, List<Integer>> bound = IntStream.range(0, needs.size())
                .boxed()
                .collect(Collectors.partitioningBy(need ->
                        several.stream().anyMatch(packed -> packed.holds().get(need) > 0)));
        List<Integer> shared = bound.getOrDefault(true, List.of());
        List<Integer> apart = bound.getOrDefault(false, List.of());
        List<Filling> alone = fillings(shared, days);
        Filling together = new Filling(
                several,
                shared,
                days,
                alone.stream().map(filling -> filling.supply().get(0)).toList(),
                open -> each(alone, open));
        List<Filling> free = fillings(apart, days);
        Stream.of(List.of(together), alone, free).forEach(goneThrough::addAll);
        return Way.together(List.of(together.best(counts(shared)), each(free, counts(apart))));
    }

    /** For each need the boxes that serve it alone. */
    private List<Filling> fillings(List<Integer> of, int days) {
        return of.stream()
                .map(need -> new Filling(
                        boxes.stream()
                                .filter(packed -> !packed.servesSeveral()
                                        && packed.holds().get(need) > 0)
                                .toList(),
                        List.of(need),
                        days,
                        List.of(0L),
                        open -> Way.NOTHING))
                .toList();
    }

    private static Way each(List<Filling> fillings, List<Integer> open) {
        List<Way> ways = new ArrayList<>(fillings.size());
        for (int i = 0; i < fillings.size(); i++) {
            ways.add(fillings.get(i).best(List.of(open.get(i))));
        }
        return Way.together(ways);
    }

    private List<Integer> counts(List<Integer> of) {
        return of.stream().map(need -> needs.get(need).count()).toList();
    }

    /** How many states were worked out so far: what the bound is of. */
    int states() {
        return goneThrough.stream().mapToInt(Filling::states).sum();
    }
}
