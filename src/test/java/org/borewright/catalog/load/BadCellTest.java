package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.borewright.catalog.load.sheet.BadCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of cell that cannot stand is told with its file, line, column, value and reason. */
class BadCellTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0} line {1}, {2} \"{3}\"")
    @CsvFileSource(resources = "/catalog/load/bad-cells.csv", delimiter = '|', numLinesToSkip = 1)
    void aBadCellIsToldAloneWithItsReason(String file, int line, String column, String value, String reason) {
        Delivery delivery = Folder.in(folder).cell(file, line, column, value).delivery();

        assertThat(delivery.bad()).containsExactly(new BadCell(file, line, column, value, reason));
    }

    @ParameterizedTest(name = "{0} line {1}, {2} \"{3}\": {4} line {5}, {6}")
    @CsvFileSource(resources = "/catalog/load/what-lines-owe.csv", delimiter = '|', numLinesToSkip = 1)
    void whatAnotherLineReliesOnIsToldThere(ArgumentsAccessor row) {
        Delivery delivery = Folder.in(folder)
                .spoilt(row.getString(0), row.getString(1), row.getString(2), row.getString(3))
                .delivery();

        assertThat(delivery.bad())
                .contains(new BadCell(
                        row.getString(4), row.getInteger(5), row.getString(6), row.getString(7), row.getString(8)));
    }

    @Test
    void allBadCellsOfAllFilesAreToldAtOnceInTheOrderOfFilesAndLines() {
        Delivery delivery = Folder.in(folder)
                .cell("stock.csv", 3, "on_hand", "two")
                .cell("pistons.csv", 9, "mass_greatest_g", "400")
                .cell("engines.csv", 2, "bore_mm", "NaN")
                .cell("engines.csv", 2, "layout", "twin")
                .cell("boxes.csv", 26, "part", "OVS4-HC")
                .delivery();

        assertThat(delivery.bad())
                .extracting(BadCell::toString)
                .containsExactly(
                        "boxes.csv line 26, part \"OVS4-HC\": no file of parts has this number",
                        "engines.csv line 2, layout \"twin\": is none of single, parallel twin, V-twin, flat twin, inline"
                                + " three, inline four, inline six",
                        "engines.csv line 2, bore_mm \"NaN\": is not a number; a number is digits, with a point before"
                                + " decimals",
                        "pistons.csv line 9, mass_greatest_g \"400\": spread of the piston masses: 82.8 g, must be at most"
                                + " 6 g (limit: engines.csv)",
                        "stock.csv line 3, on_hand \"two\": is not a number; a number is digits, with a point before"
                                + " decimals");
    }

    @Test
    void replacementsThatLeadInACircleAreToldOnEveryLineOfIt() {
        Delivery delivery = Folder.in(folder)
                .with("withdrawn.csv", "HVT2-GKB,replaced,OVS4-GK,")
                .with("withdrawn.csv", "OVS4-GK,replaced,HVT2-GKB,x")
                .cell("withdrawn.csv", 3, "note", "x")
                .delivery();

        assertThat(delivery.bad())
                .containsExactly(
                        new BadCell(
                                "withdrawn.csv",
                                3,
                                "replaced_by",
                                "OVS4-GK",
                                "leads back to itself: HVT2-GKB, OVS4-GK, HVT2-GKB"),
                        new BadCell(
                                "withdrawn.csv",
                                4,
                                "replaced_by",
                                "HVT2-GKB",
                                "leads back to itself: OVS4-GK, HVT2-GKB, OVS4-GK"));
    }

    @Test
    void aPackHoldsOneNumberAlone() {
        Delivery delivery =
                Folder.in(folder).with("boxes.csv", "OVS4-HBS,pack,NH-OS4-C,2").delivery();

        assertThat(delivery.bad())
                .containsExactly(new BadCell(
                        "boxes.csv", 27, "part", "NH-OS4-C", "a pack holds several of one part, and OVS4-HB is in it"));
    }

    /** As many as are allowed, and one more. */
    @ParameterizedTest(name = "{0}: {7}")
    @CsvSource(delimiter = '|', textBlock = """
            gaskets.csv | OVS4-H12-%s,OSTRAVEL-4,head,4,79.000,79.150,1.150,1.200, | 1 | 4 | 7 | place | head | at most 4 lines for each engine, place
            gasket_kits.csv | OVS4-GK-%s,OSTRAVEL-4,4,79.000,79.150,1.150,1.250,0.000,0.000, | 2 | 6 | 10 | engine | OSTRAVEL-4 | at most 6 lines for each engine
            ring_sets.csv | NH-OS4-R000-%s,NORHEIM-OS4,standard,77.200 | 1 | 3 | 10 | size | standard | at most 3 lines for each design, size
            pins.csv | NH-OS4-G-%s,NORHEIM-OS4,19.996,20.000,61.800,62.000 | 1 | 2 | 5 | design | NORHEIM-OS4 | at most 2 lines for each design
            clips.csv | NH-OS4-C-%s,NORHEIM-OS4,1.380,1.400 | 1 | 2 | 5 | design | NORHEIM-OS4 | at most 2 lines for each design
            bearings.csv | HVT2-SE-%s,HALVERN-T2 | 1 | 2 | 4 | engine | HALVERN-T2 | at most 2 lines for each engine
            """)
    void moreOfAKindThanCanBeLookedThroughIsTold(
            String file, String line, int made, int most, int at, String column, String value, String words) {
        Folder many = Folder.in(folder);
        for (int next = made + 1; next <= most; next++) {
            many.with(file, line.formatted(next));
        }
        assertThat(many.delivery().bad()).extracting(BadCell::reason).noneMatch(reason -> reason.contains(words));

        many.with(file, line.formatted(most + 1));

        assertThat(many.delivery().bad()).contains(new BadCell(file, at, column, value, "is one too many; " + words));
    }

    @Test
    void everyFastenerHasAStage() {
        assertThat(Folder.in(folder).without("torque_stages.csv", 4).delivery().bad())
                .containsExactly(new BadCell(
                        "fasteners.csv",
                        3,
                        "fastener",
                        "cylinder head bolts",
                        "torque_stages.csv has no stage for it"));
    }

    @Test
    void theFirstStageIsATorque() {
        Delivery delivery = Folder.in(folder)
                .cell("torque_stages.csv", 4, "torque_Nm", "")
                .cell("torque_stages.csv", 4, "angle_deg", "90")
                .delivery();

        assertThat(delivery.bad())
                .containsExactly(new BadCell(
                        "torque_stages.csv",
                        4,
                        "angle_deg",
                        "90",
                        "an angle is turned on after a stage before, and this is the first"));
    }

    @Test
    void aPinThatIsNotPressedNeedsClipGrooves() {
        Delivery delivery = Folder.in(folder)
                .line(
                        "piston_designs.csv",
                        3,
                        "NORHEIM-OS4,OSTRAVEL-4,Norheim,19.5,12.000,none,0.030,0.040,0.070,0.120,33.500,0.000,-4.2,"
                                + "20.003,20.009,0.002,0.015,,,,,,,")
                .delivery();

        assertThat(delivery.bad())
                .containsExactly(
                        new BadCell(
                                "clips.csv", 3, "design", "NORHEIM-OS4", "has no clip grooves in piston_designs.csv"),
                        new BadCell(
                                "piston_designs.csv",
                                3,
                                "clip_span_least_mm",
                                "",
                                "is empty, and the pin of the engine is not pressed in the rod"));
    }
}
