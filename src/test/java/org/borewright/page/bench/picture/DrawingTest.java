package org.borewright.page.bench.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.borewright.page.Form;
import org.borewright.page.bench.sheet.Sheet;
import org.junit.jupiter.api.Test;

class DrawingTest {

    private static final List<SizeLine> SIZES =
            List.of(line("standard", "70.00"), line("+0.25", "70.25"), line("+0.50", "70.50"));

    @Test
    void readingsLieBetweenTheSizesAroundThemAndDeeperOnesLower() {
        Profile hole = Drawing.of(sheet("mm", "10", "40", "70.05", "70.10", "70.02", "70.06"), SIZES)
                .get(0);

        assertThat(hole.lines()).extracting(Profile.Line::label).containsExactly("standard", "+0.25");
        // 0.25 mm and 12 % of it on either side span 224 of the picture from 8 on.
        assertThat(hole.lines()).extracting(Profile.Line::x).containsExactly("29.7", "210.3");
        assertThat(hole.traces().get(0).points()).isEqualTo("65.8,84.0 44.1,198.0");
        assertThat(hole.traces().get(1).points()).isEqualTo("101.9,84.0 73.0,198.0");
        assertThat(hole.traces().get(1).marks())
                .extracting(Profile.Mark::largest)
                .containsExactly("70.10", "");
        assertThat(hole.worn()).isEqualTo("101.9,84.0 73.0,198.0 44.1,198.0 44.1,84.0");
        assertThat(hole.says()).isEqualTo("4 readings, from 70.02 to 70.10");
    }

    @Test
    void inchesAreDrawnWhereTheirMillimetresWouldBe() {
        Profile inches = Drawing.of(sheet("in", "1", "2", "2.76", "2.762", "2.758", "2.76"), SIZES)
                .get(0);
        Profile millimetres = Drawing.of(sheet("mm", "25.4", "50.8", "70.104", "70.1548", "70.0532", "70.104"), SIZES)
                .get(0);

        assertThat(inches.traces().get(0).points())
                .isEqualTo(millimetres.traces().get(0).points());
        assertThat(inches.says()).isEqualTo("4 readings, from 2.758 to 2.762");
    }

    @Test
    void withoutADepthRowsAreSpreadEvenly() {
        Profile hole = Drawing.of(sheet("mm", "", "40", "70.05", "70.10", "70.02", "70.06"), SIZES)
                .get(0);

        assertThat(hole.traces().get(0).marks()).extracting(Profile.Mark::y).containsExactly("96.7", "147.3");
    }

    @Test
    void whatIsNoFigureIsNotDrawnAndNothingAtAllShowsTheSizes() {
        Profile hole =
                Drawing.of(sheet("mm", "10", "40", "-", "70,1", "", "x"), SIZES).get(0);

        assertThat(hole.traces()).allSatisfy(trace -> assertThat(trace.marks()).isEmpty());
        assertThat(hole.worn()).isEmpty();
        assertThat(hole.lines()).hasSize(3);
        assertThat(hole.says()).isEqualTo("nothing is read yet");
        assertThat(hole.told()).isEqualTo("standard|70.00;+0.25|70.25;+0.50|70.50");
    }

    @Test
    void aHonedHoleIsSeenAgainstTheWholeOfItsWindow() {
        Profile hole = Drawing.ofEach(sheet("mm", "10", "40", "70.05", "70.10", "70.02", "70.06"), List.of(SIZES))
                .get(0);

        assertThat(hole.lines()).extracting(Profile.Line::label).containsExactly("standard", "+0.25", "+0.50");
        assertThat(hole.lines()).extracting(Profile.Line::x).containsExactly("29.7", "120.0", "210.3");
    }

    @Test
    void oneDiameterAloneIsDrawnDownTheWholeHoleUntilTheFirstReadingOfAGrid() {
        Form one = sheet("mm", "10", "40").form().with("number:/cylinders/0/diameter", "70.05");
        Profile hole = Drawing.of(new Sheet(List.of("1"), one), SIZES).get(0);

        assertThat(hole.alone()).isEqualTo("65.8");
        assertThat(hole.traces()).allSatisfy(trace -> assertThat(trace.marks()).isEmpty());
        assertThat(hole.worn()).isEmpty();
        assertThat(hole.says()).isEqualTo("one diameter, 70.05");

        Form read = one.with("number:/cylinders/0/grid/readings/0/0", "70.02");
        assertThat(Drawing.of(new Sheet(List.of("1"), read), SIZES).get(0).alone())
                .isEmpty();
    }

    @Test
    void theLabelOfASizeAtTheEdgeIsReadWhole() {
        Profile hole = Drawing.of(sheet("mm", "10", "40"), SIZES).get(0);

        assertThat(hole.lines()).extracting(Profile.Line::x).containsExactly("29.7", "120.0", "210.3");
        assertThat(hole.lines()).extracting(Profile.Line::labelX).containsExactly("32.0", "120.0", "208.0");
    }

    @Test
    void aSlipFarFromEverySizeIsNotDrawn() {
        Profile hole = Drawing.of(sheet("mm", "10", "40", "7.005", "70.10", "700.2", "72.50"), SIZES)
                .get(0);

        assertThat(hole.says()).isEqualTo("2 readings, from 70.10 to 72.50");
    }

    private static Sheet sheet(String unit, String upper, String lower, String... readings) {
        Form form = Sheet.blank(List.of("1"))
                .with("/unit", unit)
                .with("number:/cylinders/0/grid/depths/0", upper)
                .with("number:/cylinders/0/grid/depths/1", lower);
        for (int i = 0; i < readings.length; i++) {
            form = form.with("number:/cylinders/0/grid/readings/" + i / 2 + "/" + i % 2, readings[i]);
        }
        return new Sheet(List.of("1"), form);
    }

    private static SizeLine line(String label, String at) {
        return new SizeLine(label, new BigDecimal(at));
    }
}
