package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hole of 60 mm stroke, the same diameter everywhere it is read. */
class ShapeShownTest {

    private static final Length STROKE = mm("60");

    @ParameterizedTest(name = "depths {0}, axes {1}: {2}")
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            DEPTHS,              AXES,     SHOWN
            10 25 40,            0 90,     true
            10 25 39.999999,     0 90,     false
            1 1.1 1.2,           0 90,     false
            10 60,               0 90,     false
            10 30 50 70,         0,        false
            10 25 40,            0 45,     true
            10 25 40,            0 44,     false
            10 25 40,            0 10,     false
            10 25 40,            10 145,   true
            10 25 40,            10 146,   false
            10 25 40,            0 10 20,  false
            10 25 40,            0 30 60,  true
            """)
    void theDepthsSpanHalfTheStrokeAndTwoAxesStand45Apart(String depths, String axes, boolean shown) {
        assertThat(ShapeShown.by(grid(depths, axes), STROKE)).isEqualTo(shown);
    }

    /** Depths and axes that nobody read prove nothing: over a port, or passed over. */
    @ParameterizedTest(name = "at 10, 20, 30 and 60 mm {0}: {1}")
    @CsvSource({
        "54.1 54.1 / 54.1 54.1 / - - / 54.1 54.1, true",
        "54.1 54.1 / 54.1 54.1 / 54.1 54.1 / - -, false",
        "54.1 54.1 / 54.1 54.1 / 54.1 54.1 / 54.1 -, false",
        "54.1 - / - 54.1 / 54.1 - / - 54.1, false",
    })
    void onlyWhatWasReadCounts(String rows, boolean shown) {
        Grid read = Grids.grid(rows, List.of(mm("10"), mm("20"), mm("30"), mm("60")));

        assertThat(ShapeShown.by(read, STROKE)).isEqualTo(shown);
    }

    @Test
    void aSingleDiameterTellsNoShape() {
        assertThat(ShapeShown.by(new SingleDiameter(mm("54.150")), STROKE)).isFalse();
        assertThat(ShapeShown.by(new NotMeasured(), STROKE)).isFalse();
    }

    private static Grid grid(String depths, String axes) {
        List<Length> at = Arrays.stream(depths.split(" ", -1)).map(Shapes::mm).toList();
        List<Axis> along = Arrays.stream(axes.split(" ", -1))
                .map(degrees -> new Axis(Integer.parseInt(degrees)))
                .toList();
        List<Optional<Length>> row = Collections.nCopies(along.size(), Optional.of(mm("54.150")));
        return new Grid(at, along, Collections.nCopies(at.size(), row));
    }
}
