package org.borewright.page.block;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.order.answer.BlockAnswer.LifeAnswer;
import org.borewright.api.shown.ShownLength;
import org.borewright.order.store.HoleLifeRow;
import org.jspecify.annotations.Nullable;

/**
 * Where the lines of a picture go: the diameter of a hole upward, its visits from left to right, and a line at each size that the engine
 * may go to. The metal that is left stands in the table below.
 *
 * @param sizes a line for each, from the left edge to the right
 * @param visits a bar for each, from the smallest reading to the largest
 * @param path through the largest readings
 */
record LifePicture(List<SizeLine> sizes, List<Bar> visits, String path) {

    static final int LEFT = 14;
    static final int RIGHT = 232;
    private static final int TOP = 14;
    private static final int BOTTOM = 186;
    private static final int LEAST_BAR = 3;
    private static final String SIGNED = HoleLifeRow.What.FINISHED.label();

    /**
     * A size.
     *
     * @param y of its line
     * @param label of the size
     */
    record SizeLine(long y, String label) {}

    /**
     * A visit.
     *
     * @param no its number among the visits of the hole, from 1
     * @param x of the bar
     * @param y of its upper end, the largest reading
     * @param height of the bar
     * @param isSigned whether the hole was finished then, and not only looked at
     */
    record Bar(int no, int x, long y, long height, boolean isSigned) {}

    /**
     * What the pictures of all holes of a block have in common, so that they can be compared.
     *
     * @param low the smallest diameter shown, in nm
     * @param high the largest
     * @param sizes lines to draw
     */
    record Scale(long low, long high, List<EngineAnswer.SizeAnswer> sizes) {

        /** That of all these readings, and of the sizes that the engine is offered in. */
        static Scale of(List<LifeAnswer> life, List<EngineAnswer.SizeAnswer> sizes) {
            List<EngineAnswer.SizeAnswer> offered =
                    sizes.stream().filter(size -> !size.furtherWork()).toList();
            long[] all = LongStream.concat(
                            life.stream().flatMapToLong(visit -> diameters(visit)),
                            offered.stream()
                                    .mapToLong(size -> size.newBore().least().nm()))
                    .sorted()
                    .toArray();
            return new Scale(all.length == 0 ? 0 : all[0], all.length == 0 ? 0 : all[all.length - 1], offered);
        }

        private static LongStream diameters(LifeAnswer visit) {
            return visit.smallest() == null || visit.largest() == null
                    ? LongStream.empty()
                    : LongStream.of(visit.smallest().nm(), visit.largest().nm());
        }

        private long y(ShownLength diameter) {
            return high == low ? (TOP + BOTTOM) / 2 : TOP + (high - diameter.nm()) * (BOTTOM - TOP) / (high - low);
        }
    }

    /** The picture of a hole; absent where it was never measured. */
    static @Nullable LifePicture of(List<LifeAnswer> visits, Scale scale) {
        List<Bar> bars = IntStream.range(0, visits.size())
                .filter(i -> visits.get(i).largest() != null && visits.get(i).smallest() != null)
                .mapToObj(i -> bar(i, visits, scale))
                .toList();
        return bars.isEmpty()
                ? null
                : new LifePicture(
                        scale.sizes().stream()
                                .map(size -> new SizeLine(scale.y(size.newBore().least()), size.size()))
                                .toList(),
                        bars,
                        bars.stream().map(bar -> bar.x() + "," + bar.y()).collect(Collectors.joining(" ")));
    }

    private static Bar bar(int i, List<LifeAnswer> visits, Scale scale) {
        LifeAnswer visit = visits.get(i);
        int inset = (RIGHT - LEFT) / (2 * visits.size());
        int x = LEFT + inset + i * (RIGHT - LEFT) / visits.size();
        long y = scale.y(Objects.requireNonNull(visit.largest()));
        long lower = scale.y(Objects.requireNonNull(visit.smallest()));
        return new Bar(i + 1, x, y, Math.max(lower - y, LEAST_BAR), SIGNED.equals(visit.what()));
    }
}
