package org.borewright.catalog.load.sense;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.load.Folder;
import org.borewright.catalog.load.sheet.BadCell;
import org.borewright.fit.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The rules of a match are asked when a catalogue is loaded; each refuses a part, to the nanometre, and lets through what it must. */
class PhysicalSenseTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}: {1} line {2}, {3} {4}")
    @CsvFileSource(resources = "/catalog/load/physical-sense.csv", delimiter = '|', numLinesToSkip = 1)
    void aPartThatARuleRefusesIsToldInTheWordsOfTheRule(ArgumentsAccessor row) {
        Delivery delivery = spoilt(row).delivery();

        Rule rule = Rule.valueOf(row.getString(0));
        assertThat(delivery.bad())
                .contains(new BadCell(
                        row.getString(5),
                        row.getInteger(6),
                        row.getString(7),
                        row.getString(8),
                        rule.title() + row.getString(9) + " (" + rule.source() + ")"));
    }

    @ParameterizedTest(name = "{0}: {1} line {2}, {3} {4}")
    @CsvFileSource(resources = "/catalog/load/at-the-limit.csv", delimiter = '|', numLinesToSkip = 1)
    void aPartAtItsLimitIsLetThrough(ArgumentsAccessor row) {
        assertThat(spoilt(row).delivery().bad()).isEmpty();
    }

    @Test
    void everyRuleThatIsAskedHasACaseThatItRefuses() throws IOException {
        Set<String> refused = Files.readAllLines(Path.of("src/test/resources/catalog/load/physical-sense.csv")).stream()
                .skip(1)
                .map(line -> line.substring(0, line.indexOf('|')))
                .collect(toSet());

        assertThat(refused)
                .isEqualTo(Blame.COLUMNS.keySet().stream().map(Rule::name).collect(toSet()));
    }

    @Test
    void anEngineWithABadLineIsNotJudgedAndTheOthersAre() {
        Delivery delivery = Folder.in(folder)
                .cell("rings.csv", 11, "gap_least_mm", "wide")
                .cell("rings.csv", 12, "gap_least_mm", "0")
                .cell("rings.csv", 3, "gap_least_mm", "0")
                .delivery();

        assertThat(delivery.unjudged()).containsExactly("OSTRAVEL-4");
        assertThat(delivery.bad()).extracting(BadCell::line).containsExactly(3, 3, 11);
        assertThat(delivery.report(folder))
                .endsWith("Not yet held against each other, because a line about them is bad: the parts of OSTRAVEL-4");
    }

    @Test
    void noEngineIsJudgedWhereALineCannotBeToldWhichItIsAbout() {
        Delivery delivery = Folder.in(folder)
                .cell("grooves.csv", 5, "design", "NORHEIM-0S4")
                .delivery();

        assertThat(delivery.unjudged()).containsExactly("HALVERN-T2", "OSTRAVEL-4");
    }

    @Test
    void whatIsBadAboutPricesDoesNotKeepTheRulesFromBeingAsked() {
        Delivery delivery = Folder.in(folder)
                .cell("prices.csv", 2, "price", "much")
                .cell("clips.csv", 3, "wire_greatest_mm", "1.5")
                .delivery();

        assertThat(delivery.unjudged()).isEmpty();
        assertThat(delivery.bad()).extracting(BadCell::file).contains("clips.csv", "prices.csv");
    }

    /** Several columns of one line are separated by semicolons. */
    private Folder spoilt(ArgumentsAccessor row) {
        Folder spoilt = Folder.in(folder);
        String[] columns = row.getString(3).split(";", -1);
        String[] values = row.getString(4).split(";", -1);
        for (int i = 0; i < columns.length; i++) {
            spoilt.cell(row.getString(1), row.getInteger(2), columns[i], values[i]);
        }
        return spoilt;
    }
}
