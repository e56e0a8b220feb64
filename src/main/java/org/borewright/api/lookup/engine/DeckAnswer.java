package org.borewright.api.lookup.engine;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.catalog.Engine;
import org.borewright.catalog.RodEnd;
import org.borewright.fit.shape.DeckShape;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * An engine from crankshaft to head.
 *
 * @param barrelHeight from the crankshaft's axis to the deck, without the base gasket
 * @param stroke of the pistons
 * @param rod between the centres of the rod
 * @param pistonToHead the distance allowed at top dead centre, gasket compressed
 * @param chamber the volume above the gasket in cm³
 * @param headFlat whether the head is flat over the crown, so that a dome comes nearer by its height
 * @param headMouth the diameter the crown must clear; absent where it cannot reach it
 * @param gasketLand the largest opening for which the gasket still sits on its land
 * @param ratioGreatest the highest compression ratio allowed
 * @param smallEnd the small end of the rod
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DeckAnswer(
        ShownLimits barrelHeight,
        ShownLength stroke,
        ShownLength rod,
        ShownLimits pistonToHead,
        BigDecimal chamber,
        boolean headFlat,
        @Nullable ShownLength headMouth,
        ShownLength gasketLand,
        BigDecimal ratioGreatest,
        SmallEndAnswer smallEnd) {

    /**
     * The small end.
     *
     * @param bore for the pin
     * @param fit hole less pin; below zero for a press
     * @param pinPressed whether the pin is pressed in, so that no clips are needed
     * @param bearing whether a bearing is renewed with the pin
     */
    public record SmallEndAnswer(ShownLimits bore, ShownLimits fit, boolean pinPressed, boolean bearing) {

        static SmallEndAnswer of(RodEnd end, LengthUnit unit) {
            return new SmallEndAnswer(
                    ShownLimits.ofRange(end.seat().bore(), unit),
                    ShownLimits.of(end.seat().fit(), unit),
                    end.pressed(),
                    end.bearing());
        }
    }

    static DeckAnswer of(Engine engine, LengthUnit unit) {
        DeckShape deck = engine.deck();
        return new DeckAnswer(
                ShownLimits.ofRange(deck.barrelHeight(), unit),
                ShownLength.of(deck.stroke(), unit),
                ShownLength.of(deck.rod(), unit),
                ShownLimits.of(deck.pistonToHead(), unit),
                BigDecimal.valueOf(deck.head().chamberVolume()),
                deck.head().flat(),
                deck.head()
                        .mouth()
                        .map(mouth -> ShownLength.of(mouth, unit, Flattery.UPPER_LIMIT))
                        .orElse(null),
                ShownLength.of(deck.head().gasketLand(), unit, Flattery.UPPER_LIMIT),
                BigDecimal.valueOf(deck.head().ratioGreatest(), 6).setScale(2, RoundingMode.FLOOR),
                SmallEndAnswer.of(engine.rodEnd(), unit));
    }
}
