package org.borewright.kit.bench;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.borewright.measure.Length;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * Which piston goes into which hole: as many as may go, then with the fewest holes cut, then with the least worst deviation, then with the
 * least total, then the first piston to the first hole, and so on. The last rule leaves no tie, so that the same pistons and holes are
 * always paired alike.
 *
 * <p>The least total is found by the method of Kuhn and Munkres on weights that are whole numbers of nanometres. All sums stay below 2⁵³,
 * up to which a {@code double} holds every whole number exactly.
 */
final class Pairing {

    /** The most holes, and the most pistons. */
    static final int MOST = 24;

    /** A hole that is cut weighs more than all deviations of {@link #MOST} holes together, each below 2³⁰ nm = 1.07 m. */
    private static final long CUT = 1L << 35;

    /** A hole left without a piston weighs more than {@link #MOST} holes that are cut, with all their deviations. */
    private static final long UNPAIRED = 1L << 40;

    /** A piston that may not go in weighs more than all holes left without one. With twice {@link #MOST} of them the sum is below 2⁵². */
    private static final long FORBIDDEN = 1L << 46;

    private static final Length LARGEST = Length.ofNanometres((1L << 30) - 1);

    /**
     * What a piston asks of a hole.
     *
     * @param off how far its clearance will be from target, less than 1.07 m
     * @param cut whether the hole is bored or honed for it
     */
    record Deviation(Length off, boolean cut) {

        /** @throws IllegalArgumentException for a distance that is none */
        Deviation {
            if (off.isNegative() || off.isMoreThan(LARGEST)) {
                throw new IllegalArgumentException(String.format(Locale.ROOT, "a deviation of %s", off));
            }
        }
    }

    private final long[][] deviations;
    private final int pistons;

    private Pairing(long[][] deviations, int pistons) {
        this.deviations = deviations;
        this.pistons = pistons;
    }

    /**
     * The piston of each hole, counted from 0; empty for a hole that is left without one.
     *
     * @param deviations for each hole, in order, of each piston, in order; empty where it may not go in
     * @throws IllegalArgumentException beyond 24 holes or pistons
     */
    static List<Optional<Integer>> of(List<List<Optional<Deviation>>> deviations) {
        int pistons = deviations.isEmpty() ? 0 : deviations.get(0).size();
        if (deviations.size() > MOST || pistons > MOST) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%d holes and %d pistons", deviations.size(), pistons));
        }
        long[][] weights = deviations.stream()
                .map(hole -> hole.stream().mapToLong(Pairing::weight).toArray())
                .toArray(long[][]::new);
        return new Pairing(weights, pistons).paired();
    }

    private static long weight(Optional<Deviation> deviation) {
        return deviation
                .map(found -> found.off().nanometres() + (found.cut() ? CUT : 0))
                .orElse(FORBIDDEN);
    }

    private List<Optional<Integer>> paired() {
        long worst = leastWorst();
        long[][] weights = weights(off -> off <= worst);
        int[] partners = firstToFirst(weights, solve(weights));
        return IntStream.range(0, deviations.length)
                .mapToObj(hole -> partners[hole] < pistons ? Optional.of(partners[hole]) : Optional.<Integer>empty())
                .toList();
    }

    /** The least worst deviation with which as many holes as ever find a piston, and as few as ever are cut; 0 where none finds any. */
    private long leastWorst() {
        long[] rising = LongStream.concat(
                        LongStream.of(0), Arrays.stream(deviations).flatMapToLong(Arrays::stream))
                .map(weight -> weight % CUT)
                .sorted()
                .distinct()
                .toArray();
        int low = 0;
        int high = rising.length - 1;
        long left = leftAndCut(rising[high]);
        while (low < high) {
            int middle = (low + high) / 2;
            if (leftAndCut(rising[middle]) == left) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return rising[low];
    }

    /** How many holes are left alone and how many are cut, in one figure in which the former come first. */
    private long leftAndCut(long worst) {
        long[][] weights = weights(off -> off <= worst);
        return total(weights, solve(weights)) / CUT;
    }

    /**
     * A square: holes, and one stand-in for each piston; pistons, and one stand-in for each hole. A stand-in for a piston leaves the hole
     * alone; whatever goes to the stand-in of a hole is left over.
     */
    private long[][] weights(LongPredicate allowed) {
        int side = deviations.length + pistons;
        long[][] weights = new long[side][side];
        for (int hole = 0; hole < deviations.length; hole++) {
            Arrays.fill(weights[hole], UNPAIRED);
            for (int piston = 0; piston < pistons; piston++) {
                long weight = deviations[hole][piston];
                weights[hole][piston] = allowed.test(weight % CUT) ? weight : FORBIDDEN;
            }
        }
        return weights;
    }

    /** Of all that are as good, the one that gives the first hole the first piston it can have, then the second hole, and so on. */
    private int[] firstToFirst(long[][] weights, int[] found) {
        int[] best = found;
        for (int hole = 0; hole < deviations.length; hole++) {
            for (int piston = 0; piston < Math.min(best[hole], pistons); piston++) {
                best = earlier(weights, best, hole, piston);
            }
        }
        return best;
    }

    /** One that is as good and gives a hole that piston; the same where none does. */
    private int[] earlier(long[][] weights, int[] best, int hole, int piston) {
        long total = total(weights, best);
        if (atLeast(weights, best, hole, piston) > total) {
            return best;
        }
        long[][] fixed = fixed(weights, best, hole, piston);
        int[] other = solve(fixed);
        return total(fixed, other) == total ? other : best;
    }

    /** What the total cannot fall below so: each hole after that one with whatever weighs least there. It spares most of the solving. */
    private long atLeast(long[][] weights, int[] kept, int hole, int piston) {
        long least = weights[hole][piston];
        for (int before = 0; before < hole; before++) {
            least += kept[before] == piston ? FORBIDDEN : weights[before][kept[before]];
        }
        for (int after = hole + 1; after < deviations.length; after++) {
            least += Arrays.stream(weights[after]).min().orElseThrow();
        }
        return least;
    }

    /** The same weights, with all holes before one kept to their pistons, and that one bound to a piston of its own. */
    private static long[][] fixed(long[][] weights, int[] kept, int hole, int piston) {
        long[][] fixed = Arrays.stream(weights).map(long[]::clone).toArray(long[][]::new);
        for (int before = 0; before < hole; before++) {
            bind(fixed[before], kept[before]);
        }
        bind(fixed[hole], piston);
        return fixed;
    }

    private static void bind(long[] row, int to) {
        long weight = row[to];
        Arrays.fill(row, FORBIDDEN);
        row[to] = weight;
    }

    private static long total(long[][] weights, int[] partners) {
        return IntStream.range(0, partners.length)
                .mapToLong(row -> weights[row][partners[row]])
                .sum();
    }

    /** For each row its column, so that the total is least. */
    private static int[] solve(long[][] weights) {
        int side = weights.length;
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        Set<Integer> rows = new LinkedHashSet<>();
        Set<Integer> columns = new LinkedHashSet<>();
        for (int i = 0; i < side; i++) {
            rows.add(i);
            columns.add(side + i);
            graph.addVertex(i);
            graph.addVertex(side + i);
        }
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                graph.setEdgeWeight(graph.addEdge(row, side + column), (double) weights[row][column]);
            }
        }
        int[] partners = new int[side];
        new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, rows, columns)
                .getMatching()
                .forEach(edge -> partners[Math.min(graph.getEdgeSource(edge), graph.getEdgeTarget(edge))] =
                        Math.max(graph.getEdgeSource(edge), graph.getEdgeTarget(edge)) - side);
        return partners;
    }
}
