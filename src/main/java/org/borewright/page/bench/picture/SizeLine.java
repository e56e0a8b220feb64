package org.borewright.page.bench.picture;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.page.bench.paper.Answer;

/**
 * A diameter that the profile of a hole is seen against.
 *
 * @param label of a size, or what else it is
 * @param at the diameter in mm
 */
public record SizeLine(String label, BigDecimal at) {

    private static final int NANOMETRES_OF_A_MM = 6;

    /** What a match says that a hole of each size is finished at. */
    public static List<SizeLine> ofSizes(Answer match) {
        return match.at("sizes").items().stream()
                .flatMap(row -> of(row.at("size").at("size").text().orElseThrow(), row.at("finish")).stream())
                .distinct()
                .toList();
    }

    /** The window of a hole, as the bench planned it, and what it was to be honed to. */
    public static List<SizeLine> ofWindow(Answer hole) {
        return Stream.of(
                        of("least", hole.at("window").at("least")),
                        of("target", hole.at("honeTo")),
                        of("most", hole.at("window").at("greatest")))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<SizeLine> of(String label, Answer length) {
        return length.at("nm")
                .text()
                .map(nm -> new SizeLine(label, new BigDecimal(nm).movePointLeft(NANOMETRES_OF_A_MM)));
    }

    /** The same for the script that draws while somebody types. */
    static String toldToScript(List<SizeLine> lines) {
        return lines.stream()
                .map(line -> line.label() + "|" + line.at().toPlainString())
                .collect(Collectors.joining(";"));
    }
}
