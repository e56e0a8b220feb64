package org.borewright.kit.bill;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.GasketKit;
import org.borewright.fit.Certainty;
import org.borewright.kit.TwinShop;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the shop does to the four-stroke twin, and how often: stripping and skimming per engine, boring and honing per hole. */
class ShopWorkTest {

    @ParameterizedTest(name = "{0}, {1}, {2} mm skimmed: {3} in {4} days")
    @CsvSource({
        "REBORE, REBORE, 0, strip 1 bore 2 hone 2, 3",
        "REBORE, HONE_ONLY, 0, strip 1 bore 1 hone 2, 3",
        "HONE_ONLY, HONE_ONLY, 0, strip 1 hone 2, 2",
        "HONE_ONLY, AS_IS, 0, strip 1 hone 1, 2",
        "AS_IS, AS_IS, 0, strip 1, 1",
        "AS_IS, AS_IS, 0.000001, strip 1 skim 1, 2",
        "REBORE, REBORE, 0.1, strip 1 bore 2 hone 2 skim 1, 4",
    })
    void everyOperationIsCountedWhereItIsDone(Work first, Work second, String skim, String lines, int days) {
        ShopWork work =
                ShopWork.of(new TwinShop().shelf(), List.of(hole("1", first), hole("2", second)), TwinShop.mm(skim));

        assertThat(work.lines().stream()
                        .map(line -> line.operation().code() + " " + line.quantity())
                        .collect(joining(" ")))
                .isEqualTo(lines);
        assertThat(work.days()).isEqualTo(days);
    }

    /** Once for the engine, whether the bar goes in or the hone alone; a hole that nobody cuts wants none. */
    @ParameterizedTest(name = "an engine with a torque plate {0}, {1} and {2}: {3}")
    @CsvSource({
        "true, REBORE, REBORE, 1",
        "true, AS_IS, HONE_ONLY, 1",
        "true, AS_IS, AS_IS, 0",
        "false, REBORE, REBORE, 0",
    })
    void aTorquePlateIsBoltedOnWhereHolesAreCutThatWantIt(boolean plate, Work first, Work second, long times) {
        TwinShop shop = new TwinShop();
        shop.torquePlate = plate;

        assertThat(ShopWork.of(shop.shelf(), List.of(hole("1", first), hole("2", second)), Length.ZERO).lines().stream()
                        .filter(line -> line.operation().code().equals("plate"))
                        .mapToLong(ShopWork.Line::quantity)
                        .sum())
                .isEqualTo(times);
    }

    @ParameterizedTest(name = "fasteners that {0} loosens, holes that want {1}, {2} mm skimmed: {3}")
    @CsvSource({
        "strip, AS_IS, 0, true",
        "bore, REBORE, 0, true",
        "bore, HONE_ONLY, 0, false",
        "bore hone, HONE_ONLY, 0, true",
        "skim, REBORE, 0.1, true",
        "skim, REBORE, 0, false",
        "ports, REBORE, 0, false",
        "'', REBORE, 0, false",
    })
    void aFastenerIsTouchedWhereAnOperationOfItsOwnIsDone(String operations, Work work, String skim, boolean touched) {
        TwinShop shop = new TwinShop();
        Fastener bolts = shop.shelf().fasteners().get(0);
        Fastener fastener = new Fastener(
                bolts.name(),
                bolts.count(),
                bolts.bolt(),
                bolts.singleUse(),
                bolts.stages(),
                bolts.sequence(),
                List.of(operations.split(" ", -1)));
        ShopWork done = ShopWork.of(shop.shelf(), List.of(hole("1", work), hole("2", Work.AS_IS)), TwinShop.mm(skim));

        assertThat(done.touches(fastener)).isEqualTo(touched);
        assertThat(done.touched(List.of(fastener))).hasSize(touched ? 1 : 0);
    }

    @ParameterizedTest(name = "a gasket kit serves {0} cylinders: {1}")
    @CsvSource({"1, 2", "2, 1", "3, 1", "4, 1"})
    void gasketKitsAreCountedForAllCylinders(int serves, int kits) {
        TwinShop shop = new TwinShop();
        GasketKit kit = shop.gaskets.get(0);
        shop.gaskets.set(0, new GasketKit(kit.number(), kit.shape(), serves));

        Kit taken = shop.worn("standard", "70.110", "70.020")
                .ruling()
                .row()
                .orElseThrow()
                .kit()
                .orElseThrow();

        assertThat(taken.lines().stream()
                        .filter(line -> line.box().number().equals(kit.number()))
                        .map(Kit.Line::quantity))
                .containsExactly(kits);
    }

    private static HoleAtSize hole(String cylinder, Work work) {
        return new HoleAtSize(
                cylinder,
                work,
                Certainty.CERTAIN,
                TwinShop.piston("P-050", "+0.50", "0.50", Optional.empty()),
                Optional.empty());
    }
}
