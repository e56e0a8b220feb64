package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PistonShapeTest {

    private static final Limits ANY = Limits.exactly(Length.ofMicrometres(18_000));

    @ParameterizedTest
    @CsvFileSource(resources = "/fit/manual-finishes.csv", useHeadersInDisplayName = true)
    void theFinishedBoreIsPistonAndClearance(
            LengthUnit unit,
            BigDecimal leastPiston,
            BigDecimal greatestPiston,
            BigDecimal leastClearance,
            BigDecimal greatestClearance,
            BigDecimal leastBore,
            BigDecimal greatestBore) {
        Length least = Length.parse(leastClearance, unit);
        PistonShape piston = piston(
                new Limits(Length.parse(leastPiston, unit), Length.parse(greatestPiston, unit)),
                new ClearanceWindow(least, least, Length.parse(greatestClearance, unit)));
        assertThat(piston.finishes())
                .isEqualTo(new Limits(Length.parse(leastBore, unit), Length.parse(greatestBore, unit)));
    }

    /** Clean-up: smallest piston + target. Gasket, wall and bridge: largest piston + greatest clearance. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SMALLEST,  LARGEST,   LEAST, TARGET, GREATEST, CLEAN-UP,  LARGEST HOLE, SMALLEST HOLE
            69.960,    69.970,    0.030, 0.040,  0.060,    70.000,    70.030,       69.990
            70.210,    70.220,    0.030, 0.040,  0.060,    70.250,    70.280,       70.240
            70.000,    70.000,    0,     0,      0,        70.000,    70.000,       70.000
            69.960001, 69.970003, 0.030, 0.040,  0.060,    70.000001, 70.030003,    69.990001
            """)
    void eachUseTakesThePistonThatFlattersLeast(
            Length smallest,
            Length largest,
            Length least,
            Length target,
            Length greatest,
            Length cleanUp,
            Length largestHole,
            Length smallestHole) {
        PistonShape piston = piston(new Limits(smallest, largest), new ClearanceWindow(least, target, greatest));
        assertThat(piston.finishForCleanUp()).isEqualTo(cleanUp);
        assertThat(piston.largestFinish()).isEqualTo(largestHole);
        assertThat(piston.smallestFinish()).isEqualTo(smallestHole);
    }

    @Property
    boolean theFinishForCleanUpIsAmongTheFinishes(
            @ForAll @LongRange(min = 60_000_000, max = 80_000_000) long smallest,
            @ForAll @LongRange(min = 0, max = 20_000) long tolerance,
            @ForAll @LongRange(min = 0, max = 50_000) long least,
            @ForAll @LongRange(min = 0, max = 20_000) long toTarget,
            @ForAll @LongRange(min = 0, max = 20_000) long toGreatest) {
        ClearanceWindow window = new ClearanceWindow(
                Length.ofNanometres(least),
                Length.ofNanometres(least + toTarget),
                Length.ofNanometres(least + toTarget + toGreatest));
        PistonShape piston =
                piston(new Limits(Length.ofNanometres(smallest), Length.ofNanometres(smallest + tolerance)), window);
        return piston.finishes().hold(piston.finishForCleanUp());
    }

    @Test
    void aPistonKeepsItsOwnGrooves() {
        List<GrooveShape> grooves = new ArrayList<>();
        PistonShape piston = piston(ANY, new ClearanceWindow(Length.ZERO, Length.ZERO, Length.ZERO), grooves);
        grooves.add(new GrooveShape("top", RingSection.RECTANGULAR, ANY, ANY, ANY, ANY, Length.ZERO));
        assertThat(piston.grooves()).isEmpty();
    }

    private static PistonShape piston(Limits diameter, ClearanceWindow clearance) {
        return piston(diameter, clearance, List.of());
    }

    private static PistonShape piston(Limits diameter, ClearanceWindow clearance, List<GrooveShape> grooves) {
        return new PistonShape(
                diameter,
                Length.ofMicrometres(70_000),
                clearance,
                new Crown(Length.ofMicrometres(32_000), Length.ZERO, 0),
                grooves,
                new PinSeat(ANY, ANY),
                Optional.empty(),
                new MassRange(250_000, 252_000));
    }
}
