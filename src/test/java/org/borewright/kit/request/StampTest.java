package org.borewright.kit.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.catalog.Size;
import org.borewright.kit.TwinShop;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice: millimetres, hundredths of them, thousandths of an inch, or so many steps; the sizes of the engine tell which. */
class StampTest {

    private final TwinShop shop = new TwinShop();

    private String read(String stamp, String unit) {
        return new Stamp(stamp)
                        .readings(
                                shop.shelf(),
                                Arrays.stream(LengthUnit.values())
                                        .filter(known -> known.symbol().equals(unit))
                                        .findFirst())
                        .stream()
                        .map(reading -> reading.size().label() + ": " + reading.as())
                        .collect(Collectors.joining("; "));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            STD       | standard: standard
            Standard  | standard: standard
            0         | standard: standard
            0.00      | standard: standard
            +0.50     | +0.50: the label of the size
            0.50      | +0.50: 0.50 mm
            0,50      | +0.50: 0.50 mm
            .5        | +0.50: 0.5 mm
            0.50 mm   | +0.50: 0.50 mm
            50        | +0.50: 50 hundredths of a millimetre
            050       | +0.50: 50 hundredths of a millimetre
            100       | +1.00: 100 hundredths of a millimetre
            2         | +0.50: oversize number 2
            4         | +1.00: oversize number 4
            1         | +1.00: 1 mm; +0.25: oversize number 1
            +1        | +1.00: 1 mm
            1.00      | +1.00: 1.00 mm
            5         | ''
            020       | ''
            0.508     | ''
            .020      | ''
            0.50 in   | ''
            0.30      | ''
            C         | ''
            oversize  | ''
            """)
    void aStampIsHeldAgainstMetricSteps(String stamp, String readings) {
        assertThat(read(stamp, "")).isEqualTo(readings);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            020   |    | +0.020 in: 20 thousandths of an inch
            20    |    | +0.020 in: 20 thousandths of an inch
            .020  |    | +0.020 in: 0.020 in
            +.030 |    | +0.030 in: 0.030 in
            .03\\" |    | +0.030 in: 0.03 in
            1     |    | +0.010 in: oversize number 1
            2     |    | +0.020 in: oversize number 2
            2     | in | ''
            020   | in | +0.020 in: 20 thousandths of an inch
            020   | mm | ''
            0.50  |    | ''
            STD   | mm | standard: standard
            """)
    void aStampIsHeldAgainstStepsInInches(String stamp, String unit, String readings) {
        shop.sizes.clear();
        List.of("0", "0.254", "0.508", "0.762", "1.016").forEach(this::inches);

        assertThat(read(stamp.replace("\\", ""), unit)).isEqualTo(readings);
    }

    private void inches(String millimetres) {
        List<String> labels = List.of("standard", "+0.010 in", "+0.020 in", "+0.030 in", "+0.040 in");
        shop.sizes.add(new Size(labels.get(shop.sizes.size()), TwinShop.mm(millimetres), false));
    }

    /** 20 is 0.20 mm or 0.020 in = 0.508 mm: where both are made, only the unit tells. */
    @ParameterizedTest(name = "in {0}")
    @CsvSource(delimiter = '|', textBlock = """
               | +0.20: 20 hundredths of a millimetre; +0.020 in: 20 thousandths of an inch
            mm | +0.20: 20 hundredths of a millimetre
            in | +0.020 in: 20 thousandths of an inch
            """)
    void aFigureThatMayMeanTwoSizesIsReadBothWays(String unit, String readings) {
        shop.sizes.clear();
        shop.sizes.add(new Size("standard", TwinShop.mm("0"), false));
        shop.sizes.add(new Size("+0.20", TwinShop.mm("0.20"), false));
        shop.sizes.add(new Size("+0.020 in", TwinShop.mm("0.508"), false));

        assertThat(read("20", unit)).isEqualTo(readings);
    }

    @Test
    void aGradeIsNoOversize() {
        shop.pistons.set(0, TwinShop.piston("P-STD", "standard", "0", Optional.of("B")));

        assertThat(read("b", "")).isEqualTo("standard: grade B");
    }
}
