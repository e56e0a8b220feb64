package org.borewright.kit.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.borewright.kit.bench.Pairing.Deviation;
import org.borewright.measure.Length;

/** The pairing is the one that trying every possibility finds. */
class PairingProperties {

    private static final int NONE = Integer.MAX_VALUE;

    /**
     * A way to pair: the piston of each hole, {@link #NONE} for none.
     *
     * @param cut how many holes are cut
     * @param worst deviation of all
     * @param total of all
     */
    private record Way(List<Integer> pistons, long left, long cut, long worst, long total) {

        static final Comparator<Way> BEST = Comparator.comparing(Way::left)
                .thenComparing(Way::cut)
                .thenComparing(Way::worst)
                .thenComparing(Way::total)
                .thenComparing(way -> way.pistons, PairingProperties::inOrder);
    }

    private static int inOrder(List<Integer> one, List<Integer> other) {
        return Arrays.compare(one.toArray(new Integer[0]), other.toArray(new Integer[0]));
    }

    @Property(tries = 300)
    void noOtherWayIsBetter(@ForAll("deviations") List<List<Optional<Deviation>>> deviations) {
        List<Way> ways = new ArrayList<>();
        tryAll(deviations, new ArrayList<>(), ways);
        Way best = ways.stream().min(Way.BEST).orElseThrow();

        assertThat(Pairing.of(deviations))
                .isEqualTo(best.pistons().stream()
                        .map(piston -> piston == NONE ? Optional.<Integer>empty() : Optional.of(piston))
                        .toList());
    }

    private static void tryAll(List<List<Optional<Deviation>>> deviations, List<Integer> pistons, List<Way> ways) {
        int hole = pistons.size();
        if (hole == deviations.size()) {
            ways.add(way(deviations, pistons));
            return;
        }
        for (int piston = 0; piston <= deviations.get(0).size(); piston++) {
            boolean none = piston == deviations.get(0).size();
            if (none
                    || (!pistons.contains(piston)
                            && deviations.get(hole).get(piston).isPresent())) {
                List<Integer> more = new ArrayList<>(pistons);
                more.add(none ? NONE : piston);
                tryAll(deviations, more, ways);
            }
        }
    }

    private static Way way(List<List<Optional<Deviation>>> deviations, List<Integer> pistons) {
        long left = 0;
        long cut = 0;
        long worst = 0;
        long total = 0;
        for (int hole = 0; hole < pistons.size(); hole++) {
            int piston = pistons.get(hole);
            Deviation found = piston == NONE
                    ? new Deviation(Length.ZERO, false)
                    : deviations.get(hole).get(piston).orElseThrow();
            long off = found.off().nanometres();
            cut += found.cut() ? 1 : 0;
            left += piston == NONE ? 1 : 0;
            worst = Math.max(worst, off);
            total += off;
        }
        return new Way(pistons, left, cut, worst, total);
    }

    /** Up to six holes and pistons; few different figures, so that ties are frequent. */
    @Provide
    Arbitrary<List<List<Optional<Deviation>>>> deviations() {
        Arbitrary<Integer> size = Arbitraries.integers().between(1, 6);
        Arbitrary<Integer> figures = Arbitraries.of(2, 5, 50_000);
        return size.flatMap(holes -> size.flatMap(pistons -> figures.flatMap(
                figure -> Combinators.combine(Arbitraries.longs().between(0, figure), Arbitraries.of(true, false))
                        .as((off, cut) -> new Deviation(Length.ofNanometres(off), cut))
                        .optional(0.85)
                        .list()
                        .ofSize(pistons)
                        .list()
                        .ofSize(holes))));
    }
}
