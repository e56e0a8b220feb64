package org.borewright.kit.bill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.catalog.BaseGasket;
import org.borewright.catalog.Bearing;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.HeadGasket;
import org.borewright.fit.Certainty;
import org.borewright.fit.shape.GasketShape;
import org.borewright.kit.TwinShop;
import org.borewright.kit.choice.Outfit;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the twin needs, part by part in the order of a kit list, and for which hole. */
class NeedsTest {

    private static final TwinShop SHOP = new TwinShop();

    @ParameterizedTest(
            name = "clips {0}, bearings {1}, a loose head gasket {2}, a loose base gasket {3}, bolts {4}: {5}")
    @CsvSource({
        "false, false, false, false, false, P-050 12 R-050 12 PIN-1 12 GK-1 *",
        "true, false, false, false, true, P-050 12 R-050 12 PIN-1 12 CLIP-1 1122 GK-1 * BOLT-1 ******",
        "true, true, false, false, true, P-050 12 R-050 12 PIN-1 12 CLIP-1 1122 SE-1 12 GK-1 * BOLT-1 ******",
        "false, true, true, false, false, P-050 12 R-050 12 PIN-1 12 SE-1 12 GK-1 * HG-1 *",
        "true, false, false, true, true, P-050 12 R-050 12 PIN-1 12 CLIP-1 1122 GK-1 * BG-1 ** BOLT-1 ******",
    })
    void aRebuildNeedsPistonsAndAllThatGoesWithThem(
            boolean clips, boolean bearings, boolean head, boolean base, boolean bolts, String needs) {
        assertThat(words(Needs.of(
                        SHOP.shelf().engine(), holes(), outfit(clips, bearings), gaskets(head, base), touched(bolts))))
                .isEqualTo(needs);
    }

    /** New rings go onto the pistons that stay: no piston, pin or bearing, but new clips, for every piston is out of its hole. */
    @ParameterizedTest(
            name = "clips {0}, bearings {1}, a loose head gasket {2}, a loose base gasket {3}, bolts {4}: {5}")
    @CsvSource({
        "false, false, false, false, false, R-050 12 GK-1 *",
        "false, true, false, false, false, R-050 12 GK-1 *",
        "true, true, false, false, false, R-050 12 CLIP-1 1122 GK-1 *",
        "true, false, false, false, true, R-050 12 CLIP-1 1122 GK-1 * BOLT-1 ******",
        "true, false, true, true, true, R-050 12 CLIP-1 1122 GK-1 * HG-1 * BG-1 ** BOLT-1 ******",
    })
    void ringsAloneNeedNoPistonPinOrBearing(
            boolean clips, boolean bearings, boolean head, boolean base, boolean bolts, String needs) {
        assertThat(words(Needs.ofRings(
                        SHOP.shelf().engine(), holes(), outfit(clips, bearings), gaskets(head, base), touched(bolts))))
                .isEqualTo(needs);
    }

    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource({"P-050, P-050, P-050 12", "P-A, P-B, P-A 1 P-B 2", "P-B, P-A, P-B 1 P-A 2"})
    void pistonsAloneAreCountedByNumber(String first, String second, String needs) {
        assertThat(words(Needs.ofPistons(List.of(hole("1", first), hole("2", second)))))
                .isEqualTo(needs);
    }

    /** Each number with the holes its parts go to, those of the engine as stars. */
    private static String words(List<Need> needs) {
        return needs.stream()
                .map(need -> need.number().text() + " "
                        + String.join("", need.holes()).replace(Need.ENGINE, "*"))
                .collect(Collectors.joining(" "));
    }

    private static Outfit outfit(boolean clips, boolean bearings) {
        return new Outfit(
                SHOP.rings.get(2),
                SHOP.pins.get(0),
                Optional.of(SHOP.clips.get(0)).filter(clip -> clips),
                Optional.of(new Bearing(TwinShop.no("SE-1"))).filter(bearing -> bearings),
                List.of());
    }

    /** One loose head gasket serves both holes, one loose base gasket serves one. */
    private static Gaskets gaskets(boolean head, boolean base) {
        GasketShape own = SHOP.gaskets.get(0).shape();
        return new Gaskets(
                SHOP.gaskets.get(0),
                Optional.of(new HeadGasket(TwinShop.no("HG-1"), own.opening(), own.headThickness(), own.margin(), 2))
                        .filter(gasket -> head),
                Optional.of(new BaseGasket(TwinShop.no("BG-1"), own.baseThickness(), 1))
                        .filter(gasket -> base));
    }

    private static List<Fastener> touched(boolean bolts) {
        return bolts ? SHOP.shelf().fasteners() : List.of();
    }

    private static List<HoleAtSize> holes() {
        return List.of(hole("1", "P-050"), hole("2", "P-050"));
    }

    private static HoleAtSize hole(String cylinder, String piston) {
        return new HoleAtSize(
                cylinder,
                Work.REBORE,
                Certainty.CERTAIN,
                TwinShop.piston(piston, "+0.50", "0.50", Optional.empty()),
                Optional.empty());
    }
}
