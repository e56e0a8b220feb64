package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

class TorqueTest {

    private static final double STANDARD_GRAVITY = 9.80665;

    /**
     * Exact by definition: 1 lb = 0.453 592 37 kg, g = 9.806 65 m/s², 1 ft = 0.3048 m. NIST SP 811, B.8 prints 1 lbf·ft = 1.355 818
     * N·m and 1 kgf·m = 9.806 65 N·m.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1000,    1,       0.7375621492772654, 0.1019716212977928
            1000000, 1000,    737.5621492772654,  101.9716212977928
            9807,    9.807,   7.233271997962143,  1.0000356900674543
            1356,    1.356,   1.0001342744199719, 0.1382735184798071
            1,       0.001,   7.375621492772e-4,  1.019716212978e-4
            """)
    void isShownInThreeUnits(long millinewtonMetres, double newtonMetres, double lbfFt, double kgfM) {
        Torque torque = new Torque(millinewtonMetres);
        assertThat(torque.newtonMetres()).isEqualTo(newtonMetres);
        assertThat(torque.poundForceFeet()).isCloseTo(lbfFt, within(lbfFt * 1e-12));
        assertThat(torque.kilogramForceMetres()).isCloseTo(kgfM, within(kgfM * 1e-12));
    }

    /**
     * Pairs printed in TM 9-2320-362-14&P, table F-1: each newton metre figure is the whole one nearest the pound-force feet, but for
     * two that are one too high: 420/570 and 300/408. TM 5-3800-205-23-1: 30 lb-ft is 41 N·m.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            15, 20, true
            26, 35, true
            43, 58, true
            65, 88, true
            90, 122, true
            130, 176, true
            185, 251, true
            440, 597, true
            260, 353, true
            420, 570, false
            420, 569, true
            635, 861, true
            70, 95, true
            113, 153, true
            176, 239, true
            343, 465, true
            300, 408, false
            300, 407, true
            30, 41, true
            """)
    void theManualsPrintTheNearestNewtonMetre(long poundForceFeet, long newtonMetres, boolean nearest) {
        double below = new Torque(newtonMetres * 1000 - 500).poundForceFeet();
        double above = new Torque(newtonMetres * 1000 + 500).poundForceFeet();
        assertThat(below <= poundForceFeet && poundForceFeet < above).isEqualTo(nearest);
    }

    @Property
    boolean anotherLibraryOfUnitsAgrees(@ForAll @LongRange(min = 1, max = 1_000_000_000) long millinewtonMetres) {
        Torque torque = new Torque(millinewtonMetres);
        double foot = metres(USCustomary.FOOT);
        double poundForce = kilograms() * STANDARD_GRAVITY;
        return isClose(torque.newtonMetres() / (poundForce * foot), torque.poundForceFeet())
                && isClose(
                        torque.newtonMetres(),
                        torque.kilogramForceMetres() * newtons(Units.NEWTON.multiply(STANDARD_GRAVITY)));
    }

    @ParameterizedTest
    @ValueSource(longs = {0, -1, Long.MIN_VALUE})
    void nothingIsTightenedWithNothing(long millinewtonMetres) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Torque(millinewtonMetres))
                .withMessageContaining("a torque of " + millinewtonMetres + " mN·m");
    }

    private static boolean isClose(double one, double other) {
        return Math.abs(one - other) <= Math.abs(one) * 1e-12;
    }

    private static double metres(Unit<Length> unit) {
        return unit.getConverterTo(Units.METRE).convert(1.0);
    }

    private static double kilograms() {
        return USCustomary.POUND.getConverterTo(Units.KILOGRAM).convert(1.0);
    }

    private static double newtons(Unit<Force> unit) {
        return unit.getConverterTo(Units.NEWTON).convert(1.0);
    }
}
