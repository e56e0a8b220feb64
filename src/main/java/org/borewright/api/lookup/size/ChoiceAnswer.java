package org.borewright.api.lookup.size;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownBlock;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Part;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.choice.Outfit;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One maker's pistons at a size with all that goes with them.
 *
 * @param design the pistons' design
 * @param maker who makes them
 * @param pistons that may go into each hole
 * @param clearance hole less piston
 * @param finish the hole at target clearance of the smallest piston
 * @param largestFinish the hole at greatest clearance of the largest piston
 * @param blocks why the size is not offered with them, whatever the wear
 * @param outfits rings, pins and clips that go with them
 * @param gaskets every set of gaskets over them, the deck as made, the preferred first
 * @param checks of the metal at the largest finish, the wall as made, and of the worst spread of masses
 */
public record ChoiceAnswer(
        String design,
        String maker,
        List<HoleAnswer> pistons,
        ClearanceAnswer clearance,
        ShownLength finish,
        ShownLength largestFinish,
        List<ShownBlock> blocks,
        List<OutfitAnswer> outfits,
        List<GasketAnswer> gaskets,
        List<ShownCheck> checks) {

    /**
     * The pistons for one hole.
     *
     * @param cylinder the hole
     * @param numbers that may go in, smallest first: one, or the grades of a size
     */
    public record HoleAnswer(String cylinder, List<String> numbers) {}

    /**
     * The clearance asked for.
     *
     * @param least the smallest
     * @param target what to hone for
     * @param greatest the largest of a finished hole
     */
    public record ClearanceAnswer(ShownLength least, ShownLength target, ShownLength greatest) {

        static ClearanceAnswer of(ClearanceWindow window, LengthUnit unit) {
            return new ClearanceAnswer(
                    ShownLength.of(window.least(), unit, Flattery.LOWER_LIMIT),
                    ShownLength.of(window.target(), unit),
                    ShownLength.of(window.greatest(), unit, Flattery.UPPER_LIMIT));
        }
    }

    /**
     * Parts that go with the pistons.
     *
     * @param rings one set for each piston
     * @param pin one for each piston
     * @param clip two for each piston; absent where pins are pressed into the rod
     * @param bearing one for each piston; absent where there is none to renew
     * @param fits whether every check passed
     * @param checks part against part
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record OutfitAnswer(
            String rings,
            String pin,
            @Nullable String clip,
            @Nullable String bearing,
            boolean fits,
            List<ShownCheck> checks) {

        static OutfitAnswer of(Outfit outfit, LengthUnit unit) {
            return new OutfitAnswer(
                    text(outfit.rings()),
                    text(outfit.pin()),
                    outfit.clip().map(ChoiceAnswer::text).orElse(null),
                    outfit.bearing().map(ChoiceAnswer::text).orElse(null),
                    outfit.fits(),
                    shown(outfit.checks(), unit));
        }
    }

    /**
     * A set of gaskets over the pistons.
     *
     * @param kit the gasket kit
     * @param servesCylinders how many cylinders one kit serves
     * @param head the head gasket in place of the kit's own; absent where that goes on
     * @param base the base gasket in place of the kit's own; absent where that goes on, or there is none
     * @param fits whether every check passed
     * @param checks of opening, deck and head
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record GasketAnswer(
            String kit,
            int servesCylinders,
            @Nullable String head,
            @Nullable String base,
            boolean fits,
            List<ShownCheck> checks) {

        static GasketAnswer of(GasketFit fit, LengthUnit unit) {
            Gaskets gaskets = fit.gaskets();
            return new GasketAnswer(
                    text(gaskets.kit()),
                    gaskets.kit().servesCylinders(),
                    gaskets.head().map(ChoiceAnswer::text).orElse(null),
                    gaskets.base().map(ChoiceAnswer::text).orElse(null),
                    fit.fits(),
                    shown(fit.checks(), unit));
        }
    }

    static ChoiceAnswer of(Engine engine, Choice choice, LengthUnit unit) {
        Piston largest = choice.largest();
        return new ChoiceAnswer(
                choice.design().code(),
                choice.design().maker(),
                IntStream.range(0, choice.pistons().size())
                        .mapToObj(i -> new HoleAnswer(
                                engine.cylinders().get(i).name(),
                                choice.pistons().get(i).stream()
                                        .map(ChoiceAnswer::text)
                                        .toList()))
                        .toList(),
                ClearanceAnswer.of(largest.shape().clearance(), unit),
                ShownLength.of(choice.finish(), unit),
                ShownLength.of(largest.shape().largestFinish(), unit),
                choice.blocksAsMade(engine).stream()
                        .map(block -> ShownBlock.of(block, unit))
                        .toList(),
                choice.outfits().stream()
                        .map(outfit -> OutfitAnswer.of(outfit, unit))
                        .toList(),
                choice.gaskets().stream()
                        .map(gasket -> GasketAnswer.of(gasket, unit))
                        .toList(),
                shown(
                        Stream.concat(choice.metalChecks().stream(), choice.wallAsMade().stream())
                                .toList(),
                        unit));
    }

    private static String text(Part part) {
        return part.number().text();
    }

    private static List<ShownCheck> shown(List<Check> checks, LengthUnit unit) {
        return checks.stream().map(check -> ShownCheck.of(check, unit)).toList();
    }
}
