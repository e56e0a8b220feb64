package org.borewright.page.bench.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.page.bench.sheet.HoleOnSheet;
import org.borewright.page.bench.sheet.Sheet;

/** Draws the profiles of the holes on a sheet, as {@code bench.js} does while somebody types: the two must be changed together. */
public final class Drawing {

    private static final double TOP = 46;
    private static final double HEIGHT = 152;
    private static final double FAR_MM = 2;
    private static final double MM_OF_AN_INCH = 25.4;
    private static final int NO_AXIS = -1;
    private static final Pattern FIGURE = Pattern.compile("([0-9]{1,6}|(?=\\.))(\\.[0-9]{1,9})?");

    /** A reading where it was taken: which axis, how far down the picture, as typed, and in mm. One diameter alone has no axis. */
    private record Read(int axis, double y, String typed, double mm) {}

    private final Sheet sheet;
    private final double factor;
    private final double deepest;

    private Drawing(Sheet sheet) {
        this.sheet = sheet;
        this.factor = sheet.form().typed("/unit").equals("in") ? MM_OF_AN_INCH : 1;
        this.deepest = sheet.depths().stream()
                .flatMap(name -> figure(sheet.form().typed(name)).stream())
                .max(Double::compare)
                .orElse(0.0);
    }

    /** All holes to one scale, each against the same sizes. */
    public static List<Profile> of(Sheet sheet, List<SizeLine> sizes) {
        Drawing drawing = new Drawing(sheet);
        List<Double> all = sheet.holes().stream()
                .flatMap(hole -> drawing.read(hole, sizes).stream())
                .map(Read::mm)
                .toList();
        Scale scale = Scale.of(all, sizes);
        return sheet.holes().stream()
                .map(hole -> drawing.profile(hole, sizes, scale))
                .toList();
    }

    /** Each hole to its own scale, over the whole of what it was to be honed to. */
    public static List<Profile> ofEach(Sheet sheet, List<List<SizeLine>> windows) {
        Drawing drawing = new Drawing(sheet);
        return sheet.holes().stream()
                .map(hole -> drawing.profile(
                        hole, windows.get(hole.index()), drawing.whole(hole, windows.get(hole.index()))))
                .toList();
    }

    private Scale whole(HoleOnSheet hole, List<SizeLine> window) {
        return Scale.of(
                Stream.concat(
                                read(hole, window).stream().map(Read::mm),
                                window.stream().map(line -> line.at().doubleValue()))
                        .toList(),
                window);
    }

    /** What was read of a hole; a slip that lies far from every line is not drawn, for all else would shrink to nothing beside it. */
    private List<Read> read(HoleOnSheet hole, List<SizeLine> lines) {
        return read(hole).stream()
                .filter(one -> lines.isEmpty()
                        || lines.stream().anyMatch(line -> Math.abs(line.at().doubleValue() - one.mm()) <= FAR_MM))
                .toList();
    }

    private List<Read> read(HoleOnSheet hole) {
        List<Read> read = readings(hole);
        if (read.isEmpty()) {
            String typed = sheet.form().typed(hole.number("diameter"));
            figure(typed).ifPresent(value -> read.add(new Read(NO_AXIS, TOP + HEIGHT, typed.strip(), value * factor)));
        }
        return read;
    }

    private List<Read> readings(HoleOnSheet hole) {
        boolean byDepth = hole.rows().stream()
                .filter(row -> row.cells().stream().anyMatch(cell -> typed(cell).isPresent()))
                .allMatch(row -> figure(row.depth()).isPresent());
        List<Read> read = new ArrayList<>();
        for (HoleOnSheet.Row row : hole.rows()) {
            double share = byDepth && deepest > 0
                    ? figure(row.depth()).orElse(0.0) / deepest
                    : row.number() / (double) hole.rows().size();
            for (int axis = 0; axis < row.cells().size(); axis++) {
                HoleOnSheet.Cell cell = row.cells().get(axis);
                int of = axis;
                typed(cell)
                        .ifPresent(value -> read.add(new Read(
                                of,
                                TOP + share * HEIGHT,
                                sheet.form().typed(cell.name()).strip(),
                                value * factor)));
            }
        }
        return read;
    }

    private Optional<Double> typed(HoleOnSheet.Cell cell) {
        return figure(sheet.form().typed(cell.name()));
    }

    private static Read wider(Read one, Read other) {
        return other.mm() > one.mm() ? other : one;
    }

    private static Read narrower(Read one, Read other) {
        return other.mm() < one.mm() ? other : one;
    }

    private static Optional<Double> figure(String typed) {
        return FIGURE.matcher(typed.strip()).matches() ? Optional.of(Double.valueOf(typed.strip())) : Optional.empty();
    }

    private Profile profile(HoleOnSheet hole, List<SizeLine> lines, Scale scale) {
        List<Read> read = read(hole, lines);
        Optional<Read> widest = read.stream().reduce(Drawing::wider);
        return new Profile(
                hole.index(),
                hole.cylinder(),
                lines(lines, scale),
                worn(read, scale),
                IntStream.range(0, sheet.axes().size())
                        .mapToObj(axis -> trace(axis, read, widest, scale))
                        .toList(),
                read.stream()
                        .filter(one -> one.axis() == NO_AXIS)
                        .map(one -> scale.x(one.mm()))
                        .findFirst()
                        .orElse(""),
                says(read),
                SizeLine.toldToScript(lines));
    }

    private static List<Profile.Line> lines(List<SizeLine> lines, Scale scale) {
        List<SizeLine> near = lines.stream()
                .filter(line -> scale.shows(line.at().doubleValue()))
                .toList();
        return IntStream.range(0, near.size())
                .mapToObj(i -> line(near.get(i), i % 2 == 0 ? "14" : "30", scale))
                .toList();
    }

    private static Profile.Line line(SizeLine line, String labelY, Scale scale) {
        double mm = line.at().doubleValue();
        return new Profile.Line(line.label(), scale.x(mm), scale.labelX(mm), labelY);
    }

    private Profile.Trace trace(int axis, List<Read> read, Optional<Read> widest, Scale scale) {
        List<Profile.Mark> marks = read.stream()
                .filter(one -> one.axis() == axis)
                .map(one -> new Profile.Mark(
                        scale.x(one.mm()),
                        Scale.place(one.y()),
                        widest.filter(one::equals).map(Read::typed).orElse("")))
                .toList();
        return new Profile.Trace(
                sheet.axes().get(axis),
                axis,
                marks.stream().map(mark -> mark.x() + "," + mark.y()).collect(Collectors.joining(" ")),
                marks);
    }

    /** Down the widest readings and up again at the narrowest of all. */
    private static String worn(List<Read> read, Scale scale) {
        Map<Double, Read> widest = new TreeMap<>();
        read.forEach(one -> widest.merge(one.y(), one, Drawing::wider));
        if (widest.size() < 2) {
            return "";
        }
        String narrowest =
                scale.x(read.stream().reduce(Drawing::narrower).orElseThrow().mm());
        List<String> corners = new ArrayList<>();
        widest.forEach((y, one) -> corners.add(scale.x(one.mm()) + "," + Scale.place(y)));
        corners.add(narrowest + "," + Scale.place(Collections.max(widest.keySet())));
        corners.add(narrowest + "," + Scale.place(Collections.min(widest.keySet())));
        return String.join(" ", corners);
    }

    private static String says(List<Read> read) {
        if (read.isEmpty()) {
            return "nothing is read yet";
        }
        return read.get(0).axis() == NO_AXIS
                ? "one diameter, " + read.get(0).typed()
                : String.format(
                        Locale.ROOT,
                        "%d readings, from %s to %s",
                        read.size(),
                        read.stream().reduce(Drawing::narrower).orElseThrow().typed(),
                        read.stream().reduce(Drawing::wider).orElseThrow().typed());
    }
}
