package org.borewright.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Shelf;
import org.borewright.kit.Match;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;

/**
 * The same files and the same request give the same answer, byte for byte, in every process. Java shuffles its unmodifiable sets and
 * maps anew in each, so that an order left to them shows only between two.
 */
class TwoProcessesTest {

    @Test
    void twoProcessesSayTheSame() throws IOException, InterruptedException {
        List<String> first = saidByAProcess();

        assertThat(first).hasSizeGreaterThan(3 * 12);
        assertThat(saidByAProcess()).isEqualTo(first);
    }

    private static List<String> saidByAProcess() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        TwoProcessesTest.class.getName())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return said.lines().toList();
    }

    /** Says all that the demo catalogue holds, what fits, and an answer for every engine. */
    public static void main(String... none) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Catalogue catalogue = Demo.CATALOGUE;
        out.println(catalogue.offers());
        out.println(catalogue.listings());
        for (Shelf shelf : catalogue.shelves().values()) {
            FitTable fits = FitTable.of(shelf);
            out.println(shelf);
            out.println(fits);
            out.println(Match.of(fits, new KitFinder(shelf, catalogue.offers()), request(shelf)));
        }
    }

    /** Every hole worn by a twentieth of a millimetre. */
    private static MatchRequest request(Shelf shelf) {
        Length worn = shelf.engine().bore().asNew().greatest().plus(Length.ofMicrometres(50));
        return new MatchRequest(
                Condition.WORN,
                new PresentSize(Optional.of(shelf.sizes().get(0)), PresentSize.KnownFrom.RECORD),
                shelf.engine().cylinders().stream()
                        .map(hole -> new CylinderSurvey(hole.name(), new SingleDiameter(worn), Wall.UNKNOWN, List.of()))
                        .toList(),
                Gauge.Kind.BORE_GAUGE.usual(),
                Climate.at(Temperature.REFERENCE),
                new Deck(Optional.empty(), Length.ZERO, Optional.empty()),
                Optional.empty(),
                LocalDate.EPOCH);
    }
}
