package org.borewright.kit.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Bearing;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RodEnd;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.ClipShape;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.PinShape;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What goes with the standard pistons of the twin. Pin 17.996 to 18.000 mm thick, 55.2 to 55.4 long; its bore in the piston 18.000 to
 * 18.006 with 0 to 0.012 clearance, in the rod 18.010 to 18.020 with 0.005 to 0.03. Clips of 1.18 to 1.20 wire in grooves 1.2 to 1.25
 * wide, 58.0 to 58.1 apart: float 0.1 to 0.6, side play at most 0.1.
 */
class OutfitFinderTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "{0} {1} to {2}: {3}")
    @CsvSource({
        "pin, 17.996, 18.000, ",
        "pin, 17.996, 18.000001, PIN_IN_PISTON_LEAST",
        "pin, 17.994, 18.000, ",
        "pin, 17.993999, 18.000, PIN_IN_PISTON_GREATEST",
        "rod, 18.005, 18.026, ",
        "rod, 18.004999, 18.026, PIN_IN_ROD_LEAST",
        "rod, 18.005, 18.026001, PIN_IN_ROD_GREATEST",
        // 58.0 − 2·1.20 − 55.5 = 0.1; 58.1 − 2·1.18 − 55.14 = 0.6
        "length, 55.14, 55.5, ",
        "length, 55.14, 55.500001, CLIP_FLOAT_LEAST",
        "length, 55.139999, 55.5, CLIP_FLOAT_GREATEST",
        // 58.0 − 2·1.20 − 55.4 = 0.2 to 58.1 − 2·1.15 − 55.2 = 0.6; 1.25 − 1.15 = 0.1
        "wire, 1.15, 1.20, ",
        "wire, 1.15, 1.200001, CLIP_PLAY_LEAST",
        "wire, 1.149999, 1.20, CLIP_FLOAT_GREATEST CLIP_PLAY_GREATEST",
    })
    void everyRuleOfPinAndClipIsAsked(String what, String least, String greatest, String rules) {
        Limits figures = new Limits(mm(least), mm(greatest));
        PinShape pin = shop.pins.get(0).shape();
        switch (what) {
            case "pin" -> pin(new PinShape(figures, pin.length()));
            case "length" -> pin(new PinShape(pin.outside(), figures));
            case "wire" -> shop.clips.set(0, new Clip(no("CLIP-1"), "DESIGN-1", new ClipShape(figures)));
            default ->
                shop.rodEnd = new RodEnd(new PinSeat(figures, shop.rodEnd.seat().fit()), false, false);
        }

        assertThat(standard().blocks().stream()
                        .flatMap(block -> block.checks().stream())
                        .map(check -> check.rule().name())
                        .toList())
                .isEqualTo(rules == null ? List.of() : List.of(rules.split(" ", -1)));
    }

    private void pin(PinShape shape) {
        shop.pins.set(0, new Pin(no("PIN-1"), "DESIGN-1", shape));
    }

    @Test
    void aPressedPinNeedsNoClipsAndNoneIsAskedOf() {
        shop.rodEnd = new RodEnd(
                new PinSeat(new Limits(mm("17.970"), mm("17.980")), new Limits(mm("-0.035"), mm("-0.012"))),
                true,
                false);

        Outfit outfit = standard().outfits().get(0);

        assertThat(outfit.clip()).isEmpty();
        assertThat(outfit.checks())
                .extracting(Check::rule)
                .contains(Rule.PIN_IN_ROD_LEAST)
                .doesNotContain(Rule.CLIP_FLOAT_LEAST, Rule.CLIP_PLAY_LEAST);
    }

    @Test
    void clipsInAPistonOfUnknownClipGroovesAreNotKnownToHold() {
        Piston piston = shop.pistons.get(0);
        PistonShape shape = piston.shape();
        PistonShape without = new PistonShape(
                shape.diameter(),
                shape.nominalBore(),
                shape.clearance(),
                shape.crown(),
                shape.grooves(),
                shape.pinSeat(),
                Optional.empty(),
                shape.mass());
        shop.pistons.set(
                0, new Piston(piston.number(), piston.design(), piston.size(), piston.hand(), piston.grade(), without));

        assertThat(standard().outfits()).isEmpty();
        assertThat(standard().blocks())
                .flatExtracting(Block::checks)
                .extracting(Check::rule, Check::outcome)
                .containsExactly(tuple(Rule.CLIP_FLOAT_LEAST, Outcome.UNKNOWN));
    }

    @Test
    void everyCombinationThatFitsIsAnOutfit() {
        PinShape pin = shop.pins.get(0).shape();
        shop.pins.add(new Pin(no("PIN-2"), "DESIGN-1", pin));
        shop.pins.add(new Pin(no("PIN-3"), "DESIGN-1", new PinShape(pin.length(), pin.length())));
        shop.clips.add(new Clip(no("CLIP-2"), "DESIGN-1", shop.clips.get(0).shape()));

        assertThat(standard().blocks()).isEmpty();
        assertThat(standard().outfits())
                .extracting(outfit -> outfit.pin().number() + " "
                        + outfit.clip().orElseThrow().number())
                .containsExactly("PIN-1 CLIP-1", "PIN-1 CLIP-2", "PIN-2 CLIP-1", "PIN-2 CLIP-2");
    }

    @ParameterizedTest
    @ValueSource(strings = {"pin", "clip"})
    void partsOfAnotherDesignAreNotLookedAt(String part) {
        if (part.equals("pin")) {
            shop.pins.set(0, new Pin(no("PIN-1"), "DESIGN-2", shop.pins.get(0).shape()));
        } else {
            shop.clips.set(
                    0, new Clip(no("CLIP-1"), "DESIGN-2", shop.clips.get(0).shape()));
        }

        assertThat(standard().outfits()).isEmpty();
        assertThat(standard().blocks()).containsExactly(Block.of(Block.Reason.PARTS));
    }

    @Test
    void ringsOfAnotherSizeAreNotLookedAt() {
        shop.rings.remove(0);

        assertThat(standard().outfits()).isEmpty();
        assertThat(standard().blocks()).containsExactly(Block.of(Block.Reason.PARTS));
    }

    /** The rod end has a bearing that is renewed with the pin: an outfit for each that can be had, and none without. */
    @Test
    void aBearingGoesWithThePinWhereTheRodEndHasOne() {
        shop.bearings.add(new Bearing(no("BEARING-1")));
        assertThat(standard().outfits()).extracting(Outfit::bearing).containsExactly(Optional.empty());

        shop.rodEnd = new RodEnd(shop.rodEnd.seat(), false, true);
        assertThat(standard().outfits())
                .extracting(outfit -> outfit.bearing().orElseThrow().number())
                .containsExactly(no("BEARING-1"));

        shop.bearings.clear();
        assertThat(standard().blocks()).containsExactly(Block.of(Block.Reason.PARTS));
    }

    /** Never made: nothing goes without it. Discontinued: it does while it lasts. */
    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "R-STD, NEVER_MADE, 0",
        "R-STD, DISCONTINUED, 1",
        "PIN-1, NEVER_MADE, 0",
        "PIN-1, DISCONTINUED, 1",
        "CLIP-1, NEVER_MADE, 0",
        "CLIP-1, DISCONTINUED, 1",
    })
    void whatIsNotSuppliedIsNoPartOfAnOutfit(String number, Withdrawal.State state, int outfits) {
        shop.withdraw(number, state);

        assertThat(standard().outfits()).hasSize(outfits);
    }

    /** Beside the twin's own a spare pin PIN-2, and PIN-9 and CLIP-9 of another design. */
    @ParameterizedTest(name = "{0} never made, pin pressed {1}, bearing {2}: {3}")
    @CsvSource({
        "R-STD, false, false, R-STD",
        "R-STD R-025, false, false, R-STD",
        "PIN-1 PIN-2 PIN-9, false, false, PIN-1 PIN-2",
        "CLIP-1 CLIP-9, false, false, CLIP-1",
        "R-STD CLIP-1, false, false, R-STD CLIP-1",
        // a pin that is left still serves
        "R-STD PIN-2, false, false, R-STD",
        // a pressed pin wants no clips, a plain rod end no bearing
        "R-STD CLIP-1, true, false, R-STD",
        "R-STD BEARING-1, false, false, R-STD",
        "BEARING-1, false, true, BEARING-1",
    })
    void whereAPartIsWantingItIsNamedWithWhatBecameOfIt(String gone, boolean pressed, boolean bearing, String named) {
        PinShape pin = shop.pins.get(0).shape();
        shop.pins.add(new Pin(no("PIN-2"), "DESIGN-1", pin));
        shop.pins.add(new Pin(no("PIN-9"), "DESIGN-2", pin));
        shop.clips.add(new Clip(no("CLIP-9"), "DESIGN-2", shop.clips.get(0).shape()));
        shop.bearings.add(new Bearing(no("BEARING-1")));
        shop.rodEnd = new RodEnd(shop.rodEnd.seat(), pressed, bearing);
        List.of(gone.split(" ")).forEach(number -> shop.withdraw(number, Withdrawal.State.NEVER_MADE));

        assertThat(standard().blocks()).extracting(Block::reason).containsExactly(Block.Reason.PARTS_WITHDRAWN);
        assertThat(standard().blocks().get(0).withdrawn())
                .extracting(withdrawal -> withdrawal.number().text())
                .containsExactly(named.split(" "));
    }

    private Choice standard() {
        FitTable fits = FitTable.of(shop.shelf());
        return fits.at(fits.shelf().sizes().get(0)).get(0);
    }
}
