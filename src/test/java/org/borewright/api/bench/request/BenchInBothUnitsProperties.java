package org.borewright.api.bench.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.borewright.api.FitTables;
import org.borewright.api.asked.Openings;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Shelves;
import org.borewright.catalog.store.Stocktaking;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.finish.Finish;
import org.borewright.kit.bench.finish.FinishRequest;
import org.borewright.kit.request.Condition;
import org.borewright.measure.LengthUnit;

/** The same pistons and holes read in inches and degrees Fahrenheit and in millimetres and degrees Celsius are answered alike. */
class BenchInBothUnitsProperties {

    private static final Catalogue CATALOGUE = catalogue();

    private final Openings openings = new Openings(
            new Shelves() {
                @Override
                public Catalogue catalogue() {
                    return CATALOGUE;
                }
            },
            new FitTables(),
            Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC));

    private static Catalogue catalogue() {
        Delivery delivery = Delivery.from(Path.of("catalog-data"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    /** Lengths in ten-thousandths of an inch, which are whole nanometres; degrees in steps of 5 °C, which are whole in both scales. */
    @Property(tries = 60)
    void thePlanIsTheSame(
            @ForAll @IntRange(min = 30_560, max = 30_600) int first,
            @ForAll @IntRange(min = 30_560, max = 30_600) int second,
            @ForAll @IntRange(min = 30_400, max = 30_640) int hole,
            @ForAll @IntRange(min = 3, max = 5) int fiveDegrees) {
        Question<BenchRequest> inMillimetres = plan(false, first, second, hole, fiveDegrees);
        Question<BenchRequest> inInches = plan(true, first, second, hole, fiveDegrees);

        assertThat(inInches.request()).isEqualTo(inMillimetres.request());
        assertThat(BenchPlan.of(inInches.fits(), inInches.request()))
                .isEqualTo(BenchPlan.of(inMillimetres.fits(), inMillimetres.request()));
    }

    /** Whatever order pistons and holes are sent in, they are paired alike; all four holes are past their targets, which tells the pairs. */
    @Property(tries = 60)
    void theOrderOfPistonsAndHolesDoesNotMatter(
            @ForAll Condition condition,
            @ForAll("fourPistons") List<String> pistons,
            @ForAll("fourHoles") List<String> holes) {
        BenchPlan sorted = plan(
                condition,
                pistons.stream().sorted().toList(),
                holes.stream().sorted().toList());

        assertThat(plan(condition, pistons, holes)).isEqualTo(sorted);
        assertThat(sorted.holes())
                .extracting(hole -> hole.piston().orElseThrow().tag())
                .containsExactly("C", "A", "D", "B");
    }

    @Provide
    Arbitrary<List<String>> fourPistons() {
        return Arbitraries.shuffle(
                "{\"tag\": \"A\", \"number\": \"NH-OS4-050\", \"diameter\": 77.670}",
                "{\"tag\": \"B\", \"number\": \"NH-OS4-050\", \"diameter\": 77.668}",
                "{\"tag\": \"C\", \"number\": \"NH-OS4-050\", \"diameter\": 77.672}",
                "{\"tag\": \"D\", \"number\": \"NH-OS4-050\", \"diameter\": 77.670}");
    }

    @Provide
    Arbitrary<List<String>> fourHoles() {
        return Arbitraries.shuffle(
                "{\"cylinder\": \"1\", \"diameter\": 77.716}",
                "{\"cylinder\": \"2\", \"diameter\": 77.712}",
                "{\"cylinder\": \"3\", \"diameter\": 77.714}",
                "{\"cylinder\": \"4\", \"diameter\": 77.712}");
    }

    private BenchPlan plan(Condition condition, List<String> pistons, List<String> holes) {
        String body = """
                {"engine": "OSTRAVEL-4", "unit": "mm", "size": "+0.50", "condition": "%s", "date": "2026-12-01",
                 "pistons": %s, "cylinders": %s}
                """.formatted(condition.label(), pistons, holes);
        Question<BenchRequest> asked = new BenchReader(openings).read(body.getBytes(StandardCharsets.UTF_8));
        return BenchPlan.of(asked.fits(), asked.request());
    }

    @Property(tries = 60)
    void theJudgementIsTheSame(
            @ForAll @IntRange(min = 30_576, max = 30_582) int piston,
            @ForAll @IntRange(min = 30_585, max = 30_615) int hole,
            @ForAll @IntRange(min = 3, max = 5) int fiveDegrees) {
        Question<FinishRequest> inMillimetres = finish(false, piston, hole, fiveDegrees);
        Question<FinishRequest> inInches = finish(true, piston, hole, fiveDegrees);

        assertThat(inInches.request()).isEqualTo(inMillimetres.request());
        assertThat(Finish.of(inInches.fits(), inInches.request()))
                .isEqualTo(Finish.of(inMillimetres.fits(), inMillimetres.request()));
    }

    /** Whatever order finished holes and their pistons are sent in, they are judged alike. */
    @Property(tries = 60)
    void theOrderOfFinishedHolesAndTheirPistonsDoesNotMatter(
            @ForAll("fourPistons") List<String> pistons, @ForAll("fourFitted") List<String> holes) {
        Finish sorted = finish(
                pistons.stream().sorted().toList(), holes.stream().sorted().toList());

        assertThat(finish(pistons, holes)).isEqualTo(sorted);
        assertThat(sorted.holes())
                .extracting(hole -> hole.piston().orElseThrow().tag())
                .containsExactly("C", "A", "D", "B");
    }

    @Provide
    Arbitrary<List<String>> fourFitted() {
        return Arbitraries.shuffle(
                "{\"cylinder\": \"1\", \"tag\": \"C\", \"diameter\": 77.716}",
                "{\"cylinder\": \"2\", \"tag\": \"A\", \"diameter\": 77.712}",
                "{\"cylinder\": \"3\", \"tag\": \"D\", \"diameter\": 77.714}",
                "{\"cylinder\": \"4\", \"tag\": \"B\", \"diameter\": 77.740}");
    }

    private Finish finish(List<String> pistons, List<String> holes) {
        String body = """
                {"engine": "OSTRAVEL-4", "unit": "mm", "size": "+0.50", "date": "2026-12-01", "roomTemperature": true,
                 "pistons": %s, "cylinders": %s}
                """.formatted(pistons, holes);
        Question<FinishRequest> asked = new FinishReader(openings).read(body.getBytes(StandardCharsets.UTF_8));
        return Finish.of(asked.fits(), asked.request());
    }

    private Question<BenchRequest> plan(boolean inches, int first, int second, int hole, int fiveDegrees) {
        String body = """
                {%s,
                 "pistons": [{"tag": "A", "number": "NH-OS4-050", "diameter": %s}, {"tag": "B", "number": "NH-OS4-050", "diameter": %s}],
                 "cylinders": [{"cylinder": "1", "diameter": %s}, {"cylinder": "2"}, {"cylinder": "3"}, {"cylinder": "4"}]}
                """.formatted(
                        head(inches, fiveDegrees), figure(first, inches), figure(second, inches), figure(hole, inches));
        return new BenchReader(openings).read(body.getBytes(StandardCharsets.UTF_8));
    }

    private Question<FinishRequest> finish(boolean inches, int piston, int hole, int fiveDegrees) {
        String row = "[" + figure(hole, inches) + ", " + figure(hole + 1, inches) + "]";
        String body = """
                {%s, "roomTemperature": true,
                 "pistons": [{"tag": "A", "number": "NH-OS4-050", "diameter": %s}],
                 "cylinders": [{"cylinder": "1", "tag": "A",
                                "grid": {"depths": [%s, %s, %s], "axes": ["thrust", "pin"], "readings": [%s, %s, %s]}},
                               {"cylinder": "2", "piston": "NH-OS4-050", "diameter": %s},
                               {"cylinder": "3", "piston": "NH-OS4-050"}, {"cylinder": "4", "piston": "NH-OS4-050"}]}
                """.formatted(
                        head(inches, fiveDegrees),
                        figure(piston, inches),
                        figure(5_000, inches),
                        figure(15_000, inches),
                        figure(25_000, inches),
                        row,
                        row,
                        row,
                        figure(hole, inches));
        return new FinishReader(openings).read(body.getBytes(StandardCharsets.UTF_8));
    }

    private static String head(boolean inches, int fiveDegrees) {
        LengthUnit unit = inches ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        int degrees = inches ? 9 * fiveDegrees + 32 : 5 * fiveDegrees;
        return """
                "engine": "OSTRAVEL-4", "unit": "%s", "size": "+0.50", "date": "2026-12-01", "temperatureUnit": "%s",
                "temperature": %d, "pistonTemperature": %d, "gauge": {"resolution": %s}, "pistonGauge": {"uncertainty": %s}
                """.formatted(unit.symbol(), inches ? "F" : "C", degrees, degrees, figure(1, inches), figure(1, inches));
    }

    /** So many ten-thousandths of an inch, typed in a unit. */
    private static String figure(int tenThousandths, boolean inches) {
        BigDecimal inch = BigDecimal.valueOf(tenThousandths, 4);
        return (inches ? inch : inch.multiply(new BigDecimal("25.4"))).toPlainString();
    }
}
