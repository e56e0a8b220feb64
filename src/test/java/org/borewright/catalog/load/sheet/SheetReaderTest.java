package org.borewright.catalog.load.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.load.Folder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a file as a whole is told once, and what may differ between writers of CSV makes no difference. */
class SheetReaderTest {

    @TempDir
    Path folder;

    @Test
    void theSmallCatalogueIsWithoutFault() {
        assertThat(Folder.in(folder).delivery().isGood()).isTrue();
    }

    @Test
    void aMissingFileIsToldOnce() {
        assertThat(Folder.in(folder).remove("stock.csv").delivery().bad())
                .containsExactly(new BadCell("stock.csv", 0, "", "", "is missing"));
    }

    @Test
    void anEmptyFileIsToldOnce() {
        assertThat(Folder.in(folder).text("stock.csv", text -> "").delivery().bad())
                .containsExactly(new BadCell("stock.csv", 0, "", "", "has no line of column names"));
    }

    @Test
    void aFileInAnotherEncodingIsToldOnce() {
        byte[] latin = "number,on_hand,lead_days\nGR\u00dcN,1,2\n".getBytes(StandardCharsets.ISO_8859_1);

        assertThat(Folder.in(folder).bytes("stock.csv", latin).delivery().bad())
                .containsExactly(new BadCell("stock.csv", 0, "", "", "is not UTF-8"));
    }

    @Test
    void aQuoteThatIsNeverClosedIsToldWithItsLine() {
        assertThat(Folder.in(folder)
                        .line("stock.csv", 3, "\"TV-HT2-025L,2,20")
                        .delivery()
                        .bad())
                .containsExactly(new BadCell(
                        "stock.csv",
                        0,
                        "",
                        "",
                        "is not a CSV file: Unclosed quoted field at end of input (record starting at line 3)"));
    }

    @Test
    void aMissingColumnIsToldOnceAndNotOnEveryLine() {
        Folder spoilt = Folder.in(folder).text("bearings.csv", text -> text.replaceAll("(?m),.*$", ""));

        assertThat(spoilt.delivery().bad())
                .containsExactly(new BadCell("bearings.csv", 1, "engine", "", "the column is missing"));
    }

    @Test
    void anUnknownColumnIsToldWithThoseThereAre() {
        Folder spoilt = Folder.in(folder)
                .line("bearings.csv", 1, "bearing,engine,colour")
                .line("bearings.csv", 2, "HVT2-SE,HALVERN-T2,blue");

        assertThat(spoilt.delivery().bad())
                .containsExactly(
                        new BadCell("bearings.csv", 1, "colour", "", "no such column; there are bearing, engine"));
    }

    @Test
    void aColumnThatStandsTwiceIsTold() {
        Folder spoilt = Folder.in(folder)
                .line("bearings.csv", 1, "bearing,engine,engine")
                .line("bearings.csv", 2, "HVT2-SE,HALVERN-T2,HALVERN-T2");

        assertThat(spoilt.delivery().bad())
                .containsExactly(new BadCell("bearings.csv", 1, "engine", "", "the column stands twice"));
    }

    @Test
    void aTornLineIsToldOnceAndDoesNotMakeOthersReferToNothing() {
        Folder spoilt = Folder.in(folder).line("pins.csv", 3, "NH-OS4-G,NORHEIM-OS4,19.996");

        assertThat(spoilt.delivery().bad())
                .containsExactly(new BadCell(
                        "pins.csv",
                        3,
                        "",
                        "NH-OS4-G,NORHEIM-OS4,19.996",
                        "has 3 cells, the first line names 6 columns"));
    }

    @Test
    void orderOfColumnsQuotesLineEndsAndByteOrderMarkMakeNoDifference() {
        Delivery plain = Folder.in(folder).delivery();
        Delivery other = new Folder(folder)
                .text(
                        "pins.csv",
                        text -> "\uFEFF"
                                + text.replaceAll("(?m)^([^,]*),([^,]*),(.*)$", "\"$2\",$1,$3")
                                        .replace("\n", "\r\n"))
                .delivery();

        assertThat(other.bad()).isEmpty();
        assertThat(other.revision()).isEqualTo(plain.revision());
    }
}
