package org.borewright.api.match.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.borewright.api.FitTables;
import org.borewright.api.asked.Openings;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Shelves;
import org.borewright.catalog.store.Stocktaking;
import org.borewright.kit.Match;
import org.borewright.kit.bill.KitFinder;
import org.borewright.measure.LengthUnit;

/** The same engine read in inches and degrees Fahrenheit and in millimetres and degrees Celsius is answered alike. */
class SameInBothUnitsProperties {

    private static final Catalogue CATALOGUE = catalogue();

    private final MatchReader reader = new MatchReader(new Openings(
            new Shelves() {
                @Override
                public Catalogue catalogue() {
                    return CATALOGUE;
                }
            },
            new FitTables(),
            Clock.fixed(Instant.parse("2026-03-02T12:00:00Z"), ZoneOffset.UTC)));

    private static Catalogue catalogue() {
        Delivery delivery = Delivery.from(Path.of("catalog-data"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    /** Lengths in ten-thousandths of an inch, which are whole nanometres; degrees in steps of 5 °C, which are whole in both scales. */
    @Property(tries = 100)
    void verdictSizeBillHoldsAndGapsAreTheSame(
            @ForAll @Size(4) List<@IntRange(min = 30_390, max = 30_700) Integer> diameters,
            @ForAll @IntRange(min = 0, max = 40) int skim,
            @ForAll @IntRange(min = 1, max = 6) int gauge,
            @ForAll @IntRange(min = 3, max = 5) int fiveDegrees) {
        Asked inMillimetres = ask(LengthUnit.MILLIMETRE, diameters, skim, gauge, fiveDegrees);
        Asked inInches = ask(LengthUnit.INCH, diameters, skim, gauge, fiveDegrees);

        assertThat(inInches.request()).isEqualTo(inMillimetres.request());
        assertThat(answer(inInches)).isEqualTo(answer(inMillimetres));
    }

    private static Match answer(Asked asked) {
        return Match.of(
                asked.fits(),
                new KitFinder(asked.fits().shelf(), asked.catalogue().offers()),
                asked.request());
    }

    private Asked ask(LengthUnit unit, List<Integer> diameters, int skim, int gauge, int fiveDegrees) {
        boolean inches = unit == LengthUnit.INCH;
        List<String> read = diameters.stream().map(each -> figure(each, inches)).toList();
        String body = """
                {"engine": "OSTRAVEL-4", "unit": "%s", "condition": "worn", "date": "2026-12-01",
                 "presentSize": {"size": "standard", "knownFrom": "record"},
                 "temperature": %d, "temperatureUnit": "%s", "deckSkim": %s,
                 "gauge": {"uncertainty": %s, "resolution": %s},
                 "cylinders": [
                   {"cylinder": "1", "grid": {"depths": [%s, %s], "axes": ["thrust", "pin"],
                                              "readings": [[%s, %s], [%s, %s]]},
                    "findings": [{"kind": "scored", "depth": %s, "height": %s}]},
                   {"cylinder": "2", "diameter": %s},
                   {"cylinder": "3", "diameter": %s},
                   {"cylinder": "4", "diameter": %s, "lastFinish": %s}]}
                """.formatted(
                        unit.symbol(),
                        inches ? 9 * fiveDegrees + 32 : 5 * fiveDegrees,
                        inches ? "F" : "C",
                        figure(skim, inches),
                        figure(gauge, inches),
                        figure(1, inches),
                        figure(5_000, inches),
                        figure(25_000, inches),
                        read.get(0),
                        read.get(1),
                        read.get(1),
                        read.get(0),
                        figure(skim + 1, inches),
                        figure(9_000, inches),
                        read.get(1),
                        read.get(2),
                        read.get(3),
                        figure(30_400, inches));
        return reader.read(body.getBytes(StandardCharsets.UTF_8));
    }

    /** So many ten-thousandths of an inch, typed in a unit. */
    private static String figure(int tenThousandths, boolean inches) {
        BigDecimal inch = BigDecimal.valueOf(tenThousandths, 4);
        return (inches ? inch : inch.multiply(new BigDecimal("25.4"))).toPlainString();
    }
}
