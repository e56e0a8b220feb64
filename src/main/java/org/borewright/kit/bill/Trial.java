package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One box in its turn among those that are tried for some needs.
 *
 * @param packed the box
 * @param holds how many it holds of each of these needs
 * @param obtainable how many of it can be had in time
 * @param later how many parts of each need can be had in time after it
 */
record Trial(Packed packed, List<Integer> holds, int obtainable, List<Long> later) {

    static Trial of(Packed packed, List<Integer> needs, int days, List<Long> later) {
        return new Trial(packed, needs.stream().map(packed.holds()::get).toList(), packed.obtainable(days), later);
    }

    /** How many parts of each need can be had in time from it on. */
    List<Long> supply() {
        List<Long> supply = new ArrayList<>(later);
        for (int need = 0; need < supply.size(); need++) {
            supply.set(need, supply.get(need) + (long) obtainable * holds.get(need));
        }
        return supply;
    }

    /** How many must be taken, because what is open cannot be had later. */
    long least(List<Integer> open) {
        long least = 0;
        for (int need = 0; need < open.size(); need++) {
            if (holds.get(need) > 0) {
                least = Math.max(least, roundedUp(open.get(need) - later.get(need), holds.get(need)));
            }
        }
        return least;
    }

    /** How many are of any use, and can be had: more would only be left over. */
    long most(List<Integer> open) {
        long useful = 0;
        for (int need = 0; need < open.size(); need++) {
            if (holds.get(need) > 0) {
                useful = Math.max(useful, roundedUp(open.get(need), holds.get(need)));
            }
        }
        return Math.min(useful, obtainable);
    }

    private static long roundedUp(long count, int by) {
        return Math.max(0, (count + by - 1) / by);
    }

    /** What is left open after so many. */
    List<Integer> left(List<Integer> open, long quantity) {
        List<Integer> left = new ArrayList<>(open.size());
        for (int need = 0; need < open.size(); need++) {
            left.add((int) Math.max(0, open.get(need) - quantity * holds.get(need)));
        }
        return left;
    }

    /** So many of it before another way. */
    Way before(Way rest, long quantity) {
        return quantity == 0
                ? rest
                : new Way(
                        rest.parts() + quantity * packed.parts(),
                        rest.boxOrder() + quantity * packed.box().kind().order(),
                        rest.price() + quantity * packed.offer().price().minorUnits(),
                        Optional.of(new Cover.Pick(packed, (int) quantity)),
                        List.of(rest));
    }
}
