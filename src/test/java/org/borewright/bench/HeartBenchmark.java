package org.borewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Stocktaking;
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
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Time and memory of one match of the demo's four-cylinder engine in the heart alone, each with other readings: of holes that are worn, and
 * of the same with a score each whose height nobody noted, for which every height is asked that would settle a size.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class HeartBenchmark {

    private static final int DIFFERENT = 256;
    private static final int NEW_BORE = 77_205_000;
    private static final int MOST_WEAR = 160_000;
    private static final int SCORE = 60_000;

    private final Catalogue catalogue = catalogue();
    private final FitTable fits = FitTable.of(catalogue.shelf("OSTRAVEL-4").orElseThrow());
    private final KitFinder kits = new KitFinder(fits.shelf(), catalogue.offers());
    private final List<MatchRequest> worn = requests(List.of());
    private final List<MatchRequest> scored = requests(
            List.of(new Finding(Finding.Kind.SCORED, Optional.of(Length.ofNanometres(SCORE)), Optional.empty())));
    private int next;

    private static Catalogue catalogue() {
        Delivery delivery = Delivery.from(Path.of("catalog-data"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    private List<MatchRequest> requests(List<Finding> findings) {
        Random random = new Random(20260302);
        List<MatchRequest> made = new ArrayList<>();
        for (int i = 0; i < DIFFERENT; i++) {
            made.add(new MatchRequest(
                    Condition.WORN,
                    new PresentSize(fits.shelf().size("standard"), PresentSize.KnownFrom.RECORD),
                    fits.shelf().engine().cylinders().stream()
                            .map(hole -> survey(hole.name(), random.nextInt(MOST_WEAR), findings))
                            .toList(),
                    Gauge.Kind.BORE_GAUGE.usual(),
                    Climate.at(Temperature.REFERENCE),
                    new Deck(Optional.empty(), Length.ZERO, Optional.empty()),
                    Optional.empty(),
                    LocalDate.EPOCH));
        }
        return made;
    }

    private static CylinderSurvey survey(String cylinder, int wear, List<Finding> findings) {
        List<List<Optional<Length>>> rows = List.of(row(wear), row(wear * 2 / 3), row(wear / 3));
        List<Length> depths =
                List.of(Length.ofMicrometres(12_000), Length.ofMicrometres(60_000), Length.ofMicrometres(115_000));
        return new CylinderSurvey(
                cylinder, new Grid(depths, List.of(Axis.THRUST, Axis.PIN), rows), Wall.UNKNOWN, findings);
    }

    private static List<Optional<Length>> row(int wear) {
        return List.of(
                Optional.of(Length.ofNanometres(NEW_BORE + wear)),
                Optional.of(Length.ofNanometres(NEW_BORE + wear * 4L / 5)));
    }

    /** One match of worn holes. */
    @Benchmark
    public Match matchOfWornHoles() {
        return Match.of(fits, kits, next(worn));
    }

    /** One of scored holes. */
    @Benchmark
    public Match matchOfScoredHoles() {
        return Match.of(fits, kits, next(scored));
    }

    private MatchRequest next(List<MatchRequest> requests) {
        next = (next + 1) % DIFFERENT;
        return requests.get(next);
    }

    @Test
    void timeAndBytesOfAFourCylinderMatch() throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(HeartBenchmark.class.getName() + ".match.*")
                        .addProfiler(GCProfiler.class)
                        .build())
                .run();

        assertThat(results).hasSize(2);
        results.forEach(result -> System.out.printf(
                Locale.ROOT,
                "%nheart, %s: %.1f µs and %.0f bytes for one four-cylinder engine%n",
                result.getPrimaryResult().getLabel(),
                result.getPrimaryResult().getScore(),
                result.getSecondaryResults().get("gc.alloc.rate.norm").getScore()));
    }
}
