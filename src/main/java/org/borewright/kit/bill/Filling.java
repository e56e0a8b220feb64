package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The best way to fill what is open of some needs: boxes are tried one after the other, and what these leave open is filled otherwise.
 *
 * <p>What is open when the turn of a box comes is a state, and the best way on from there does not depend on how it was come to: it is
 * worked out once. So when the turn of a box comes there are no more states than ways to take of the boxes before it, and no more
 * than there are numbers that can be open: 1 + count, multiplied over the needs.
 */
final class Filling {

    private final List<Trial> trials = new ArrayList<>();
    private final List<Long> supply;
    private final Function<List<Integer>, Way> otherwise;
    private final Map<State, Way> known = new HashMap<>();

    /** What is open when the turn of a box comes. */
    private record State(int turn, List<Integer> open) {}

    /**
     * Tries boxes in their order.
     *
     * @param needs the places of the needs
     * @param days within which all must be there
     * @param elsewhere how many parts of each of these needs can be had otherwise
     * @param otherwise the best way to have them so
     */
    Filling(
            List<Packed> boxes,
            List<Integer> needs,
            int days,
            List<Long> elsewhere,
            Function<List<Integer>, Way> otherwise) {
        List<Long> later = elsewhere;
        for (int turn = boxes.size() - 1; turn >= 0; turn--) {
            trials.add(Trial.of(boxes.get(turn), needs, days, later));
            later = trials.get(trials.size() - 1).supply();
        }
        Collections.reverse(trials);
        this.supply = later;
        this.otherwise = otherwise;
    }

    /** How many parts of each need can be had. */
    List<Long> supply() {
        return supply;
    }

    /** How many states were worked out. */
    int states() {
        return known.size();
    }

    /**
     * The best way to fill what is open, which must be in supply; of ways that come to the same the one that takes more of the box whose
     * turn comes first.
     */
    Way best(List<Integer> open) {
        return best(0, open);
    }

    private Way best(int turn, List<Integer> open) {
        if (sum(open) == 0) {
            return Way.NOTHING;
        }
        if (turn == trials.size()) {
            return otherwise.apply(open);
        }
        State state = new State(turn, open);
        Way before = known.get(state);
        if (before == null) {
            before = tried(turn, open);
            known.put(state, before);
        }
        return before;
    }

    private Way tried(int turn, List<Integer> open) {
        Trial trial = trials.get(turn);
        long quantity = trial.least(open);
        Way best = trial.before(best(turn + 1, trial.left(open, quantity)), quantity);
        long most = trial.most(open);
        for (quantity++; quantity <= most; quantity++) {
            List<Integer> left = trial.left(open, quantity);
            // Whatever is left open takes as many parts at the least, and the more of this box the more in all.
            if (quantity * trial.packed().parts() + sum(left) > best.parts()) {
                break;
            }
            Way way = trial.before(best(turn + 1, left), quantity);
            best = Way.PREFERENCE.compare(way, best) <= 0 ? way : best;
        }
        return best;
    }

    private static long sum(List<Integer> open) {
        long sum = 0;
        for (int count : open) {
            sum += count;
        }
        return sum;
    }
}
