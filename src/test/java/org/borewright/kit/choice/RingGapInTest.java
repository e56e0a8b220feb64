package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Clip;
import org.borewright.catalog.RingSet;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.junit.jupiter.api.Test;

/** The rings of two sets in a hole of 70.010 to 70.020 mm; their groove, gauge and limits are those of {@link RingChecksTest}. */
class RingGapInTest {

    private static final Limits HOLE = new Limits(mm("70.010"), mm("70.020"));

    private final TwinShop shop = new TwinShop();

    /** 0.15 and 0.30 mm as made, wider by 10 and by 20 µm times π; to be filed to 0.2, at the most to what 10 µm · π leave of 0.8. */
    @Test
    void eachRingOfEachSetHasItsGapAndThoseToBeFiledWhatTheyAreFiledTo() {
        RingSet plain = shop.rings.get(0);
        shop.gapOfRings("standard", mm("0.15"), mm("0.254"));
        RingSet made = new RingSet(
                no("R-FILED"),
                plain.design(),
                plain.size(),
                plain.nominalBore(),
                shop.rings.get(0).rings());

        assertThat(gaps(List.of(plain, made)))
                .containsExactly(
                        new RingGapIn(no("R-STD"), "top", new Limits(mm("0.331415"), mm("0.512832")), Optional.empty()),
                        new RingGapIn(
                                no("R-FILED"),
                                "top",
                                new Limits(mm("0.181415"), mm("0.362832")),
                                Optional.of(new Limits(mm("0.2"), mm("0.768584")))));
    }

    /** A ring of a groove that the piston does not have is shown, and filed to nothing. */
    @Test
    void aRingWithoutItsGrooveIsFiledToNothing() {
        shop.gapOfRings("standard", mm("0.15"), mm("0.254"));
        RingSet set = shop.rings.get(0);
        RingShape top = set.rings().get(0);
        RingShape second = new RingShape(
                "second",
                top.section(),
                top.axialWidth(),
                top.radialWall(),
                top.gap(),
                top.gaugeBore(),
                top.fileAllowance(),
                top.face());

        assertThat(gaps(List.of(
                        new RingSet(set.number(), set.design(), set.size(), set.nominalBore(), List.of(second)))))
                .extracting(RingGapIn::groove, RingGapIn::fileTo)
                .containsExactly(tuple("second", Optional.empty()));
    }

    @Test
    void aSetThatGoesWithSeveralClipsIsNamedOnce() {
        shop.clips.add(new Clip(no("CLIP-2"), "DESIGN-1", shop.clips.get(0).shape()));
        FitTable fits = FitTable.of(shop.shelf());
        Choice choice = fits.at(shop.sizes.get(0)).get(0);

        assertThat(choice.outfits()).hasSize(2);
        assertThat(choice.ringSets()).containsExactly(shop.rings.get(0));
    }

    private List<RingGapIn> gaps(List<RingSet> sets) {
        PistonShape piston = shop.pistons.get(0).shape();
        return RingGapIn.in(HOLE, Uncertainty.NONE, sets, piston);
    }
}
