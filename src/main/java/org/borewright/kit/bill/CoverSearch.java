package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.kit.choice.Supply;

/**
 * Searches all ways to cover needs with boxes and keeps the preferred one. Boxes of several parts are tried in every useful number; a
 * part sold alone then only fills what is left, so the search stays small.
 */
final class CoverSearch {

    private final List<Packed> boxes;
    private final List<Offer> offers;
    private final int[] taken;

    private CoverSearch(List<Packed> boxes, Offers offers) {
        this.boxes = boxes;
        this.offers = boxes.stream()
                .map(packed -> offers.of(packed.box().number()).orElseThrow())
                .toList();
        this.taken = new int[boxes.size()];
    }

    /** The preferred cover; empty when the needs cannot be covered. */
    static Optional<Cover> find(List<Need> needs, Shelf shelf, Offers offers) {
        List<Packed> boxes = Stream.concat(
                        shelf.boxes().stream(), needs.stream().map(need -> Box.loose(need.number())))
                .filter(box -> offers.of(box.number()).isPresent() && Supply.isSupplied(shelf, box.number()))
                .filter(box -> holdsNoOtherSize(box, needs, shelf))
                .map(box -> packed(box, needs))
                .filter(Packed::isOfUse)
                .sorted(Comparator.comparing((Packed packed) -> packed.box().kind())
                        .thenComparing(packed -> packed.box().number()))
                .toList();
        CoverSearch search = new CoverSearch(boxes, offers);
        return search.best(0, needs.stream().mapToInt(Need::count).toArray());
    }

    /** Whether every piston and ring set in a box is needed: nobody opens a box of another size for its pins. */
    private static boolean holdsNoOtherSize(Box box, List<Need> needs, Shelf shelf) {
        Set<PartNumber> needed = needs.stream().map(Need::number).collect(Collectors.toSet());
        return Stream.concat(
                        shelf.parts().pistons().stream().map(Piston::number),
                        shelf.parts().ringSets().stream().map(RingSet::number))
                .filter(number -> box.contents().containsKey(number))
                .allMatch(needed::contains);
    }

    private static Packed packed(Box box, List<Need> needs) {
        return new Packed(
                box,
                needs.stream()
                        .map(need -> box.contents().getOrDefault(need.number(), 0))
                        .toList());
    }

    /** The preferred way to cover what is open with the boxes from an index on, given what was taken of those before. */
    private Optional<Cover> best(int index, int[] open) {
        if (index == boxes.size()) {
            return Arrays.stream(open).allMatch(count -> count <= 0) ? Optional.of(taken(open)) : Optional.empty();
        }
        Optional<Cover> best = Optional.empty();
        int most = Math.min(useful(index, open), obtainable(index));
        for (int quantity = least(index, open); quantity <= most; quantity++) {
            taken[index] = quantity;
            Optional<Cover> found = best(index + 1, less(open, index, quantity));
            best = Stream.concat(best.stream(), found.stream()).min(Cover.PREFERENCE);
        }
        taken[index] = 0;
        return best;
    }

    /** How many are needed at the least, because no later box holds a part that is still open. */
    private int least(int index, int[] open) {
        int least = 0;
        for (int need = 0; need < open.length; need++) {
            int held = boxes.get(index).holds().get(need);
            if (held > 0 && open[need] > 0 && isLastWith(index, need)) {
                least = Math.max(least, roundedUp(open[need], held));
            }
        }
        return least;
    }

    private boolean isLastWith(int index, int need) {
        return boxes.subList(index + 1, boxes.size()).stream()
                .noneMatch(later -> later.holds().get(need) > 0);
    }

    /** How many are of any use: more would only be left over. */
    private int useful(int index, int[] open) {
        int useful = 0;
        for (int need = 0; need < open.length; need++) {
            int held = boxes.get(index).holds().get(need);
            if (held > 0 && open[need] > 0) {
                useful = Math.max(useful, roundedUp(open[need], held));
            }
        }
        return useful;
    }

    private int obtainable(int index) {
        Offer offer = offers.get(index);
        return offer.leadDays().isPresent() ? Integer.MAX_VALUE : offer.onHand();
    }

    private int[] less(int[] open, int index, int quantity) {
        int[] left = open.clone();
        for (int need = 0; need < left.length; need++) {
            left[need] -= quantity * boxes.get(index).holds().get(need);
        }
        return left;
    }

    private static int roundedUp(int count, int by) {
        return (count + by - 1) / by;
    }

    private Cover taken(int[] open) {
        List<Cover.Pick> picks = new ArrayList<>();
        int surplus = -Arrays.stream(open).sum();
        for (int i = 0; i < taken.length; i++) {
            if (taken[i] > 0) {
                picks.add(new Cover.Pick(boxes.get(i), offers.get(i), taken[i]));
                surplus += taken[i] * boxes.get(i).strangers();
            }
        }
        return new Cover(picks, surplus);
    }

    /** What is left over of a cover, strangers included, by number. */
    static List<Kit.Surplus> surplus(Cover cover, List<Need> needs) {
        TreeMap<PartNumber, Integer> over = new TreeMap<>();
        cover.picks()
                .forEach(pick -> pick.packed()
                        .box()
                        .contents()
                        .forEach((number, count) -> over.merge(number, count * pick.quantity(), Integer::sum)));
        needs.forEach(need -> over.merge(need.number(), -need.count(), Integer::sum));
        return over.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> new Kit.Surplus(entry.getKey(), entry.getValue()))
                .toList();
    }
}
