package org.borewright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Collectors;
import org.borewright.catalog.Size;
import org.borewright.kit.TwinShop;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings of a 70.000 mm twin that would change its size, worked by hand: 2·D − 70.000 + 0.040 + 2U ≤ finish − 0.050, so that D may be
 * (finish + 69.910)/2 − U, with U = 0.00528 mm at such a diameter; by the hone alone D + 0.005 + U ≤ finish.
 */
class TurningPointsTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // hole 1 | hole 2 | the turning points: hole, side, reading in mm to 0.1 µm, size then
                "70.060 | 70.050 | 1 above 70.0747 +0.50; 2 above 70.0747 +0.50",
                "70.060 | 70.150 | 1 above 70.1997 +0.75; 2 above 70.1997 +0.75; 2 at most 70.0747 +0.25",
                "70.150 | 70.150 | 1 above 70.1997 +0.75; 2 above 70.1997 +0.75",
                // +1.00 is the last: above 70.4497 no size is certain
                "70.420 | 70.002 | 1 above 70.4497 -; 1 at most 70.3247 +0.75; 2 above 70.4497 -",
                // none is certain, and one hole alone is in the way
                "70.460 | 70.002 | 1 at most 70.4497 +1.00",
                // nothing measured decides nothing
                "70.060 | -      | ''",
            })
    void aReadingThatWouldChangeTheSizeIsNamed(String first, String second, String points) {
        assertThat(shop.worn("standard", first, second).turningPoints().stream()
                        .map(TurningPointsTest::inWords)
                        .collect(Collectors.joining("; ")))
                .isEqualTo(points);
    }

    private static String inWords(TurningPoint point) {
        String side = point.side() == TurningPoint.Side.ABOVE ? "above" : "at most";
        return String.format(
                Locale.ROOT,
                "%s %s %.4f %s",
                point.cylinder(),
                side,
                point.limit().toMillimetres(),
                point.then().map(Size::label).orElse("-"));
    }
}
