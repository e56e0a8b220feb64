package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.BoreSurface;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.RingFace;
import org.borewright.fit.shape.RingSection;
import org.borewright.fit.shape.RingShape;
import org.borewright.kit.Pistons;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rings on the standard pistons of the twin, which run in holes of 69.980 to 70.050 mm. Groove: 1.52 to 1.54 mm wide, root at most
 * 64.0, gap 0.2 to 0.8, play 0.01 to 0.08, room behind 0.1. Ring: 1.48 to 1.50 high, at most 2.8 thick, gap 0.30 to 0.45 in a gauge
 * of 70.
 */
class RingChecksTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "{0} {1} to {2}: {3}")
    @CsvSource({
        "as made, 0, 0, ",
        // 0.262832 − π·0.020 = 0.200000…, rounded down
        "gap, 0.262832, 0.45, ",
        "gap, 0.262831, 0.45, RING_GAP_LEAST",
        // 0.642920 + π·0.050 = 0.799999…, rounded up
        "gap, 0.30, 0.642920, ",
        "gap, 0.30, 0.642921, RING_GAP_GREATEST",
        "height, 1.48, 1.510, ",
        "height, 1.48, 1.510001, RING_PLAY_LEAST",
        "height, 1.460, 1.50, ",
        "height, 1.459999, 1.50, RING_PLAY_GREATEST",
        // (69.980 − 64.0)/2 − 0.1
        "thickness, 2.7, 2.890, ",
        "thickness, 2.7, 2.890001, RING_BACK",
        "nominal bore, 70, 70, ",
        "nominal bore, 70.000001, 70.000001, RING_BORE",
    })
    void everyRuleOfARingIsAsked(String what, String least, String greatest, String rule) {
        Limits figures = new Limits(mm(least), mm(greatest));
        RingSet set = shop.rings.get(0);
        RingShape ring = set.rings().get(0);
        shop.rings.set(
                0,
                what.equals("nominal bore")
                        ? set(figures.least(), ring)
                        : set(set.nominalBore(), changed(ring, what, figures)));

        assertThat(standing())
                .extracting(check -> check.rule().name())
                .isEqualTo(rule == null ? List.of() : List.of(rule));
    }

    private static RingShape changed(RingShape ring, String what, Limits to) {
        return new RingShape(
                ring.groove(),
                ring.section(),
                what.equals("height") ? to : ring.axialWidth(),
                what.equals("thickness") ? to : ring.radialWall(),
                what.equals("gap") ? to : ring.gap(),
                ring.gaugeBore(),
                ring.fileAllowance(),
                ring.face());
    }

    @ParameterizedTest(name = "{0} {1} on {2}: {3}")
    @CsvSource({
        "RECTANGULAR, PLAIN, IRON, ",
        "RECTANGULAR, CHROME, IRON, ",
        "RECTANGULAR, CHROME, CHROME, RING_FACE",
        "RECTANGULAR, CHROME, SILICON, RING_FACE",
        "RECTANGULAR, PLAIN, CHROME, ",
        "KEYSTONE, PLAIN, IRON, RING_SECTION",
    })
    void sectionAndFaceMustSuit(RingSection section, RingFace face, BoreSurface surface, String rule) {
        shop.surface = surface;
        RingShape ring = shop.rings.get(0).rings().get(0);
        shop.rings.set(
                0,
                set(
                        mm("70"),
                        new RingShape(
                                "top",
                                section,
                                ring.axialWidth(),
                                ring.radialWall(),
                                ring.gap(),
                                ring.gaugeBore(),
                                ring.fileAllowance(),
                                face)));

        assertThat(standing())
                .extracting(check -> check.rule().name())
                .isEqualTo(rule == null ? List.of() : List.of(rule));
    }

    @Test
    void aGrooveWithoutARingIsNotKnownToFit() {
        twoGrooves();

        assertThat(standing())
                .extracting(Check::rule, Check::place, Check::outcome)
                .containsExactly(tuple(Rule.RING_SECTION, "second", Outcome.UNKNOWN));
    }

    @Test
    void theRingOfEveryGrooveIsAsked() {
        twoGrooves();
        RingShape top = shop.rings.get(0).rings().get(0);
        RingShape second = new RingShape(
                "second",
                top.section(),
                top.axialWidth(),
                top.radialWall(),
                new Limits(mm("0.30"), mm("0.70")),
                top.gaugeBore(),
                top.fileAllowance(),
                top.face());
        shop.rings.set(0, set(mm("70"), top, second));

        assertThat(standing())
                .extracting(Check::rule, Check::place)
                .containsExactly(tuple(Rule.RING_GAP_GREATEST, "second"));
    }

    /** 0.30 + π·0.010 rounded down and 0.45 + π·0.010 rounded up; U of the gap is π times 5 281 nm, rounded up. */
    @Test
    void theGapsInAMeasuredHoleAreAskedInThatHole() {
        assertThat(shop.finished("70.010", "70.020").holes().get(0).checks())
                .filteredOn(check -> check.place().equals("top"))
                .map(Comparison.class::cast)
                .extracting(Comparison::rule, check -> check.value().units(), Comparison::uncertainty)
                .containsExactly(
                        tuple(Rule.RING_GAP_LEAST, 331_415L, 16_591L),
                        tuple(Rule.RING_GAP_GREATEST, 481_416L, 16_591L));
    }

    /** In a hole at the gauge bore the gap is as made, from 0.15 mm; 0.05 mm to the least of the groove may be filed off. */
    @ParameterizedTest(name = "allowance {0}, filed {1}: {2}")
    @CsvSource({"0.06, false, OUT", "0.06, true, IN", "0, false, ", "0, true, "})
    void ringsMadeToBeFiledAreAskedWhetherTheyAre(String allowance, boolean filed, Outcome outcome) {
        shop.gapOfRings("standard", mm("0.15"), mm(allowance));
        Limits hole = new Limits(mm("70"), mm("70"));

        assertThat(RingChecks.filedIn(
                        hole,
                        Uncertainty.NONE,
                        shop.rings.get(0),
                        shop.pistons.get(0).shape(),
                        filed))
                .extracting(Check::rule, Check::place, Check::outcome)
                .isEqualTo(outcome == null ? List.of() : List.of(tuple(Rule.RING_FILED, "top", outcome)));
    }

    @Test
    void theGapsInAWornHoleAreAskedByTheRuleOfService() {
        assertThat(RingChecks.gapsInService(
                        new Limits(mm("70"), mm("70.100")),
                        Uncertainty.NONE,
                        shop.rings.get(0),
                        shop.pistons.get(0).shape()))
                .extracting(Check::rule, Check::place)
                .containsExactly(tuple(Rule.RING_GAP_LEAST, "top"), tuple(Rule.SERVICE_RING_GAP, "top"));
    }

    private void twoGrooves() {
        Piston standard = shop.pistons.get(0);
        GrooveShape top = standard.shape().grooves().get(0);
        GrooveShape second = new GrooveShape(
                "second", top.section(), top.width(), top.root(), top.gap(), top.axialPlay(), top.backClearanceLeast());
        shop.pistons.set(0, Pistons.grooved(standard, List.of(top, second)));
    }

    private List<Check> standing() {
        FitTable fits = FitTable.of(shop.shelf());
        Choice choice = fits.at(fits.shelf().sizes().get(0)).get(0);
        List<Check> standing = new ArrayList<>();
        choice.blocks().forEach(block -> {
            assertThat(block.reason()).isEqualTo(Block.Reason.PARTS);
            standing.addAll(block.checks());
        });
        return standing;
    }

    private static RingSet set(Length nominalBore, RingShape... rings) {
        return new RingSet(no("R-STD"), "DESIGN-1", "standard", nominalBore, Arrays.asList(rings));
    }
}
