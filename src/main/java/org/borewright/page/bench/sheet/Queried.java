package org.borewright.page.bench.sheet;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.page.bench.paper.Answer;

/** What an answer asks back about readings that may be slips, by the place on the sheet that it asks about. */
public final class Queried {

    private final Sheet sheet;
    private final Map<String, String> asked = new HashMap<>();

    private Queried(Sheet sheet) {
        this.sheet = sheet;
    }

    /** By the name of a field what is asked about the reading in it; by the name of {@code readingsChecked} what is asked about a hole. */
    public static Map<String, String> in(Answer answer, Sheet sheet) {
        Queried queried = new Queried(sheet);
        for (Answer hold : answer.at("holds").items()) {
            for (Answer query : hold.at("queries").items()) {
                hold.at("cylinders").items().forEach(cylinder -> queried.note(query, cylinder));
            }
        }
        return queried.asked;
    }

    private void note(Answer query, Answer cylinder) {
        Optional<HoleOnSheet> hole = sheet.holes().stream()
                .filter(known ->
                        cylinder.text().filter(known.cylinder()::equals).isPresent())
                .findFirst();
        String says = query.at("says").text().orElseThrow();
        hole.ifPresent(known -> {
            List<String> same = query.at("sameAs").items().stream()
                    .flatMap(other -> other.text().stream())
                    .toList();
            asked.merge(
                    known.truth("readingsChecked"),
                    same.isEmpty() ? says : says + ": " + String.join(", ", same),
                    (one, other) -> one.equals(other) ? one : one + "; " + other);
            query.at("readings")
                    .items()
                    .forEach(reading -> place(known, reading).ifPresent(name -> asked.put(name, says)));
        });
    }

    private Optional<String> place(HoleOnSheet hole, Answer reading) {
        String depth = reading.at("depth").at("value").text().orElseThrow();
        String axis = reading.at("axis").text().orElseThrow().replace("°", "");
        return IntStream.range(0, hole.rows().size())
                .filter(row -> isSame(hole.rows().get(row).depth(), depth))
                .boxed()
                .flatMap(row -> hole.rows().get(row).cells().stream())
                .filter(cell -> cell.axis().equals(axis))
                .map(HoleOnSheet.Cell::name)
                .findFirst();
    }

    /** Whether a figure as typed is one that was told, which may have more zeros. */
    private static boolean isSame(String typed, String told) {
        try {
            return new BigDecimal(typed.strip()).compareTo(new BigDecimal(told)) == 0;
        } catch (NumberFormatException notTyped) {
            return false;
        }
    }
}
