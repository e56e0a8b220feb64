package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import org.borewright.api.shown.ShownCheck;
import org.borewright.fit.Check;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.Crown;
import org.borewright.kit.Pistons;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row of the table of sizes, of the twin at standard: 42 cm³ of chamber, 0.9 mm of deck and 1.0 mm of gasket at the least, 80 mm of stroke. */
class SizeRowAnswerTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "a dome of {0} cm³: {1}")
    @CsvSource({
        "0, 7.21, , ",
        "45, 67.23, , ",
        // 42 + π/4 · (70² · 0.9 + 73² · 1.0) mm³ = 49.649 cm³
        "49.65, , 'without end: no room is left above the piston', at most 9.5",
        "60, , 'without end: no room is left above the piston', at most 9.5"
    })
    void aRatioWithoutEndIsNoFigureAndItsCheckSaysWhy(double dome, BigDecimal ratio, String found, String asked) {
        shop.pistons.set(0, Pistons.crowned(shop.pistons.get(0), new Crown(mm("34"), mm("0"), dome)));
        SizeRow row = shop.worn("standard", "69.989", "69.989").table().get(0);
        Stencils stencils = new Stencils(StencilsTest.JSON, FitTable.of(shop.shelf()), LengthUnit.MILLIMETRE);

        SizeRowAnswer answer = SizeRowAnswer.of(shop.shelf().engine(), row, TwinShop.DAY, stencils);

        assertThat(answer.compressionRatio()).isEqualTo(ratio);
        assertThat(shown(row).found()).isEqualTo(found);
        assertThat(shown(row).asked()).isEqualTo(asked);
        assertThat(shown(row).figures() == null).isEqualTo(found != null);
    }

    private static ShownCheck shown(SizeRow row) {
        Check ratio = row.gasket().orElseThrow().checks().stream()
                .filter(check -> check.rule() == Rule.COMPRESSION_RATIO)
                .findFirst()
                .orElseThrow();
        return ShownCheck.of(ratio, LengthUnit.MILLIMETRE);
    }
}
