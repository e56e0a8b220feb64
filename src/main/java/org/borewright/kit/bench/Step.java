package org.borewright.kit.bench;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Strokes;

/** What to mind on the bench, in the order of the work (common practice); the makers' own instructions come first. */
public enum Step {
    /** A head pulls the hole out of round. */
    TORQUE_PLATE(
            "Bolt the torque plate on, with a head gasket and tightened as the head is, before the bar goes in: bore, hone and measure with it on.",
            engine -> engine.build().torquePlate()),
    /** Edges before the finish. */
    CHAMFER(
            "Chamfer the mouth of each hole before the finish hone.",
            engine ->
                    engine.build().construction().mayBeBored() && engine.build().strokes() == Strokes.FOUR),
    /** Edges of a two-stroke, whose rings run over ports. */
    CHAMFER_PORTS(
            "Chamfer the mouth of each hole, and every port, before the finish hone.",
            engine ->
                    engine.build().construction().mayBeBored() && engine.build().strokes() == Strokes.TWO),
    /** Wider at one end on purpose. */
    CHOKE(
            "Hone the choke of this barrel: top and bottom each to its own size, widening evenly from the one to the other.",
            engine -> engine.limits().choke().isPresent()),
    /** Nothing of the stone stays. */
    WASH("Wash with hot water and soap until a white cloth stays white, then oil at once.", engine -> true),
    /** Warm holes read large. */
    MEASURE_AGAIN(
            "Measure all holes again once the block is at room temperature, and have them judged before anything is built.",
            engine -> true),
    /** Each ring in its own hole. */
    RING_GAPS(
            "Try each ring square in its own hole, and read its gap at the smallest and at the largest place.",
            engine -> true),
    /** Marks of rings. */
    RING_MARKS("Rings go on with their marks toward the crown.", engine -> true),
    /** Where gaps stand. */
    GAPS_APART(
            "Set the gaps of the rings apart, none of them over the pin or on a thrust face.",
            engine -> engine.build().strokes() == Strokes.FOUR),
    /** Pegs of a two-stroke. */
    PEGS(
            "Each ring gap sits on its peg, and no peg runs over a port.",
            engine -> engine.build().strokes() == Strokes.TWO),
    /** Left and right. */
    HANDS(
            "The pistons differ by hand: see each one in the hole it is made for.",
            engine -> engine.cylinders().stream().anyMatch(hole -> hole.hand() != Hand.ANY)),
    /** Which way round. */
    PISTON_MARKS(
            "Each piston goes into its own hole, its mark as the piston maker says: as a rule to the front, or to the exhaust.",
            engine -> true),
    /** Clips. */
    CLIPS(
            "Seat both new clips in their grooves, and turn each to see that it is in.",
            engine -> !engine.rodEnd().pressed()),
    /** Torques. */
    TIGHTEN("Tighten in the order, stages and sequence below.", engine -> true),
    /** Running in. */
    RUN_IN("Run in as the engine maker and the piston maker say.", engine -> true);

    private final String text;

    @SuppressWarnings("ImmutableEnumChecker") // a question without state, but has no mark that says so
    private final Predicate<Engine> concerns;

    Step(String text, Predicate<Engine> concerns) {
        this.text = text;
        this.concerns = concerns;
    }

    /** The step in words. */
    public String text() {
        return text;
    }

    /** The steps that concern an engine, in order. */
    public static List<Step> of(Engine engine) {
        return Arrays.stream(values())
                .filter(step -> step.concerns.test(engine))
                .toList();
    }
}
