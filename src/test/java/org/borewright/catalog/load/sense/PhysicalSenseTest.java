package org.borewright.catalog.load.sense;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
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
import org.junit.jupiter.params.provider.CsvSource;

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
    void everyRuleThatIsAskedHasACaseThatItRefusesInEachFileItLooksAt() throws IOException {
        Set<String> refused = Files.readAllLines(Path.of("src/test/resources/catalog/load/physical-sense.csv")).stream()
                .skip(1)
                .map(line -> line.split("\\|"))
                .map(cells -> "%s %s %s".formatted(cells[0], cells[5], cells[7]))
                .collect(toSet());

        assertThat(refused)
                .isEqualTo(Blame.CELLS.stream()
                        .map(cell -> "%s %s %s".formatted(cell.rule(), cell.file(), cell.column()))
                        .collect(toSet()));
    }

    @Test
    void everyRuleIsAskedThatNeedsNoReading() {
        assertThat(EnumSet.complementOf(
                        Blame.CELLS.stream().map(Blame::rule).collect(toCollection(() -> EnumSet.noneOf(Rule.class)))))
                .containsExactly(
                        Rule.CLEAN_UP,
                        Rule.PROBED_WALL,
                        Rule.PISTON_PART,
                        Rule.PISTON_READING,
                        Rule.PISTON_LEAST,
                        Rule.PISTON_GREATEST,
                        Rule.TARGET_LEAST,
                        Rule.TARGET_GREATEST,
                        Rule.NOTHING_TO_CUT,
                        Rule.SERVICE_WEAR,
                        Rule.SERVICE_TAPER,
                        Rule.SERVICE_OUT_OF_ROUND,
                        Rule.PRESENT_PISTON,
                        Rule.SERVICE_CLEARANCE,
                        Rule.GROOVES,
                        Rule.RIDGE,
                        Rule.GLAZE,
                        Rule.CLEARANCE_LEAST,
                        Rule.CLEARANCE_GREATEST,
                        Rule.FINISHED_TAPER,
                        Rule.CHOKE_LEAST,
                        Rule.CHOKE_GREATEST,
                        Rule.CHOKE_EVEN,
                        Rule.FINISHED_OUT_OF_ROUND,
                        Rule.RING_FILED,
                        Rule.SERVICE_RING_GAP,
                        Rule.DECK_FLATNESS,
                        Rule.SKIM_TO_FLAT,
                        Rule.DECK_SKIM,
                        Rule.ENGINE_SKIM,
                        Rule.PISTON_MASS);
    }

    @Test
    void aPinAndAClipNeedNotGoTogetherWhileEachGoesWithAnother() {
        Delivery delivery = Folder.in(folder)
                .with("pins.csv", "NH-OS4-GL,NORHEIM-OS4,19.996,20.000,62.050,62.140")
                .with("clips.csv", "NH-OS4-CT,NORHEIM-OS4,1.370,1.380")
                .delivery();

        assertThat(delivery.bad()).isEmpty();
    }

    /** A grade beside NH-OS4-000 of 316.5 to 319.5 g, in an engine that bears 6 g: it may stand beside that, or beside itself alone. */
    @ParameterizedTest(name = "{0} to {1} g: {2}")
    @CsvSource({
        "323, 329, ",
        "400, 406, ",
        "310, 316, ",
        "323, 329.001, 329.001",
        "316.5, 322.5, ",
        // too wide for a second of its kind, and 322.5 − 316.5 beside the other
        "316.499, 322.5, ",
        "316.499, 322.501, 322.501",
        "309, 315.001, 315.001",
        "309, 320, 320",
    })
    void gradesThatMayNotStandTogetherAreLetThroughWhileEachMayStandBesideAnother(
            String least, String greatest, String refused) {
        Delivery delivery = Folder.in(folder)
                .with("pistons.csv", "NH-OS4-000B,NORHEIM-OS4,standard,any,B,77.165,77.175," + least + "," + greatest)
                .delivery();

        assertThat(delivery.bad())
                .extracting(BadCell::column, BadCell::value)
                .isEqualTo(refused == null ? List.of() : List.of(tuple("mass_greatest_g", refused)));
    }

    @Test
    void aSizeOfFurtherWorkMayLeaveTooLittleWall() {
        Folder thin = Folder.in(folder).cell("engines.csv", 2, "sleeve_outside_mm", "69.6");
        assertThat(thin.delivery().bad()).isEmpty();

        thin.cell("sizes.csv", 2, "further_work", "yes");

        assertThat(thin.delivery().bad())
                .extracting(BadCell::toString)
                .singleElement()
                .asString()
                .startsWith("engines.csv line 2, sleeve_outside_mm \"69.6\": wall left, with TESSVIK-HT2 at +0.25:");
    }

    @Test
    void aDesignOfFurtherWorkAloneIsNotHeldAgainstTheMetal() {
        Folder thin = Folder.in(folder).cell("engines.csv", 2, "sleeve_outside_mm", "62");
        for (int line = 2; line <= 4; line++) {
            thin.cell("sizes.csv", line, "further_work", "yes");
        }

        assertThat(thin.delivery().bad()).isEmpty();
    }

    @Test
    void aKitTooSmallForOneMakerServesAnother() {
        Folder twoMakers = Folder.in(folder)
                .with(
                        "piston_designs.csv",
                        "KELVARN-OS4,OSTRAVEL-4,Kelvarn,21.0,12.000,none,0.080,0.100,0.140,,33.500,0.000,-4.2,"
                                + "20.003,20.009,0.002,0.015,65.050,65.350,1.430,1.490,0.150,0.900,0.120")
                .with("grooves.csv", "KELVARN-OS4,1,top,rectangular,1.530,1.545,70.1,70.2,0.2,0.6,0.035,0.075,0.3")
                .with("pistons.csv", "KV-OS4-000,KELVARN-OS4,standard,any,,77.125,77.130,316.5,319.5");
        assertThat(twoMakers.delivery().bad()).isEmpty();

        twoMakers.cell("gasket_kits.csv", 4, "opening_least_mm", "78.245");
        assertThat(twoMakers.delivery().bad()).isEmpty();

        twoMakers.cell("gasket_kits.csv", 4, "opening_least_mm", "78.244999");
        assertThat(twoMakers.delivery().bad()).hasSize(2);
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

    private Folder spoilt(ArgumentsAccessor row) {
        return Folder.in(folder).spoilt(row.getString(1), row.getString(2), row.getString(3), row.getString(4));
    }
}
