package org.borewright.page.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The table of sizes as a picture: diameters rise to the right, every size is a line where its holes finish, and every hole is a bar from
 * the clean-up with the wear shared evenly to that with all wear on one wall. What is certain is told by the answer, not by the picture.
 *
 * @param width of the whole in units of the picture
 * @param height likewise
 * @param stations the sizes
 * @param bars the holes
 */
public record SizePicture(int width, int height, List<Station> stations, List<Bar> bars) {

    private static final int WIDTH = 760;
    private static final int LEFT = 90;
    private static final int RIGHT = WIDTH - 60;
    private static final int FIRST_BAR = 84;
    private static final int BETWEEN_BARS = 36;
    private static final int BELOW = 24;

    /**
     * A size.
     *
     * @param x where its line stands
     * @param label as on crown and box
     * @param finish the diameter its holes finish at
     * @param kind certain, possible, no or blocked
     * @param chosen whether it is the size named
     */
    public record Station(String x, String label, String finish, String kind, boolean chosen) {}

    /**
     * A hole.
     *
     * @param y where its bar lies
     * @param cylinder its name
     * @param from the left end: the clean-up at best
     * @param to the right end: at worst, or the edge of the picture
     * @param width from end to end
     * @param open whether the worst is not known, so that nothing ends there
     * @param says what the bar is, in words
     */
    public record Bar(int y, String cylinder, String from, String to, String width, boolean open, String says) {}

    /** What lies between two diameters, laid over the width. */
    private record Scale(long least, long greatest) {

        double x(long nanometres) {
            return LEFT + (double) (nanometres - least) / (greatest - least) * (RIGHT - LEFT);
        }
    }

    /** The picture of a match; empty where no hole was measured or no size has a finish. */
    static Optional<SizePicture> of(Map<String, Object> match) {
        List<Map<String, Object>> sizes = sizes(match);
        List<Map<String, Object>> holes = list(match, "cylinders").stream()
                .filter(hole -> nm(hole, "cleanUp", "best").isPresent())
                .toList();
        if (sizes.isEmpty() || holes.isEmpty()) {
            return Optional.empty();
        }
        long[] all = Stream.concat(
                        sizes.stream().map(size -> nm(size, "finish")),
                        holes.stream().flatMap(hole -> Stream.of(nm(hole, "smallest"), nm(hole, "cleanUp", "worst"))))
                .flatMapToLong(OptionalLong::stream)
                .toArray();
        Scale scale = new Scale(
                LongStream.of(all).min().orElseThrow(), LongStream.of(all).max().orElseThrow() + 1);
        List<Bar> bars = new ArrayList<>();
        for (Map<String, Object> hole : holes) {
            bars.add(bar(hole, FIRST_BAR + bars.size() * BETWEEN_BARS, scale));
        }
        return Optional.of(new SizePicture(
                WIDTH,
                FIRST_BAR + holes.size() * BETWEEN_BARS + BELOW,
                sizes.stream().map(size -> station(size, match, scale)).toList(),
                bars));
    }

    /** Each size once: as the maker of the size named makes it, else as the first. */
    private static List<Map<String, Object>> sizes(Map<String, Object> match) {
        Map<Object, Map<String, Object>> byLabel = new LinkedHashMap<>();
        Object design = at(match, "size", "design");
        for (Map<String, Object> size : list(match, "sizes")) {
            if (nm(size, "finish").isPresent()) {
                Object label = at(size, "size", "size");
                if (!byLabel.containsKey(label) || (design != null && design.equals(at(size, "size", "design")))) {
                    byLabel.put(String.valueOf(label), size);
                }
            }
        }
        return List.copyOf(byLabel.values());
    }

    private static Station station(Map<String, Object> size, Map<String, Object> match, Scale scale) {
        String label = String.valueOf(at(size, "size", "size"));
        return new Station(
                coordinate(scale.x(nm(size, "finish").orElseThrow())),
                label,
                String.valueOf(at(size, "finish", "value")),
                list(size, "blocks").isEmpty() ? String.valueOf(size.get("certainty")) : "blocked",
                label.equals(at(match, "size", "size")));
    }

    private static Bar bar(Map<String, Object> hole, int y, Scale scale) {
        double from = scale.x(nm(hole, "cleanUp", "best").orElseThrow());
        OptionalLong worst = nm(hole, "cleanUp", "worst");
        double to = worst.isPresent() ? scale.x(worst.getAsLong()) : WIDTH;
        String says = String.format(
                Locale.ROOT,
                "Hole %s cleans up at %s with the wear shared evenly, %s",
                hole.get("cylinder"),
                at(hole, "cleanUp", "best", "value"),
                worst.isPresent()
                        ? "at " + at(hole, "cleanUp", "worst", "value") + " with all wear on one wall"
                        : "and nobody knows at what with all wear on one wall");
        return new Bar(
                y,
                String.valueOf(hole.get("cylinder")),
                coordinate(from),
                coordinate(to),
                coordinate(Math.max(to - from, 1)),
                worst.isEmpty(),
                says);
    }

    /** Whether it is not known of some hole what it takes at worst. */
    public boolean open() {
        return bars.stream().anyMatch(Bar::open);
    }

    private static String coordinate(double x) {
        return String.format(Locale.ROOT, "%.1f", x);
    }

    private static OptionalLong nm(Map<String, Object> of, String... steps) {
        Object length = at(of, steps);
        return length instanceof Map<?, ?> told && told.get("nm") instanceof String nm
                ? OptionalLong.of(Long.parseLong(nm))
                : OptionalLong.empty();
    }

    private static @Nullable Object at(Map<String, Object> of, String... steps) {
        Object found = of;
        for (String step : steps) {
            found = found instanceof Map<?, ?> told ? told.get(step) : null;
        }
        return found;
    }

    @SuppressWarnings("unchecked") // an answer's lists of objects are read so by Told
    private static List<Map<String, Object>> list(Map<String, Object> of, String name) {
        return (List<Map<String, Object>>) of.getOrDefault(name, List.of());
    }
}
