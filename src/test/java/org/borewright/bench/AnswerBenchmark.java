package org.borewright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.borewright.api.FitTables;
import org.borewright.api.asked.Openings;
import org.borewright.api.match.MatchResource;
import org.borewright.api.match.Workbenches;
import org.borewright.api.match.request.EstimateReader;
import org.borewright.api.match.request.MatchReader;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Shelves;
import org.borewright.catalog.store.Stocktaking;
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

/** Where the time of an answer goes before HTTP takes it: reading the body, and all of it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class AnswerBenchmark {

    private final byte[][] bodies = Arrays.stream(Requests.surveys())
            .map(body -> body.getBytes(StandardCharsets.UTF_8))
            .toArray(byte[][]::new);
    private final ObjectMapper json = new ObjectMapper()
            .registerModules(new Jdk8Module(), new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);
    private final Openings openings = new Openings(new DemoShelves(), new FitTables(), Clock.systemUTC());
    private final MatchReader reader = new MatchReader(openings);
    private final MatchResource resource =
            new MatchResource(reader, new EstimateReader(openings), new Workbenches(json), json);
    private int next;

    private static final class DemoShelves extends Shelves {
        private final Catalogue catalogue = catalogueOfDemo();

        @Override
        public Catalogue catalogue() {
            return catalogue;
        }
    }

    private static Catalogue catalogueOfDemo() {
        Delivery delivery = Delivery.from(Path.of("catalog-data"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    private byte[] body() {
        next = (next + 1) % bodies.length;
        return bodies[next];
    }

    /** The body read. */
    @Benchmark
    public Object read() {
        return reader.read(body());
    }

    /** The body read, matched, shown and written. */
    @Benchmark
    public byte[] written() throws IOException {
        return resource.match(body());
    }

    @Test
    void timeAndBytesOfAnAnswer() throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(AnswerBenchmark.class.getName() + ".*")
                        .addProfiler(GCProfiler.class)
                        .build())
                .run();

        assertThat(results).hasSize(2);
        results.forEach(result -> System.out.printf(
                Locale.ROOT,
                "%nanswer, %s: %.1f µs and %.0f bytes%n",
                result.getPrimaryResult().getLabel(),
                result.getPrimaryResult().getScore(),
                result.getSecondaryResults().get("gc.alloc.rate.norm").getScore()));
    }
}
