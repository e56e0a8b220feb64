package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.piston;

import java.util.List;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PistonSizeTest {

    private static final ClearanceWindow WINDOW = new ClearanceWindow(mm("0.030"), mm("0.040"), mm("0.060"));
    private static final Limits NEW_BORE = limits("70.000", "70.019");

    /** At +0.25 the holes are 70.250 to 70.269: the smallest hole of a piston at most 70.269, its largest at least 70.250. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SMALLEST,  LARGEST,   OVERSIZE, SMALLEST HOLE, LARGEST HOLE
            70.210,    70.220,    0.25,     IN,            IN
            70.239,    70.249,    0.25,     IN,            IN
            70.239001, 70.249,    0.25,     OUT,           IN
            70.180,    70.190,    0.25,     IN,            IN
            70.180,    70.189999, 0.25,     IN,            OUT
            69.960,    69.970,    0.25,     IN,            OUT
            70.460,    70.470,    0.25,     OUT,           IN
            69.960,    69.970,    0,        IN,            IN
            70.468,    70.478,    0.508,    IN,            IN
            70.210,    70.220,    0.254,    IN,            IN
            70.210,    70.220,    0.508,    IN,            OUT
            """)
    void aPistonBelongsToTheSizeItIsListedUnder(
            Length smallest, Length largest, Length oversize, Outcome smallestHole, Outcome largestHole) {
        List<Comparison> checks = PistonSize.check(piston(new Limits(smallest, largest), WINDOW), NEW_BORE, oversize);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(smallestHole, largestHole);
        assertThat(checks).extracting(Comparison::rule).containsOnly(Rule.PISTON_SIZE);
        assertThat(checks).extracting(Comparison::place).containsExactly("smallest hole", "largest hole");
    }
}
