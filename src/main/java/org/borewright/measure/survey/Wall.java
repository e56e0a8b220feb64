package org.borewright.measure.survey;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.borewright.measure.Length;

/**
 * What is known of the wall of one hole beyond its diameters, as read: the record of the last finish and what is known of a sleeve hold at 20 °C.
 *
 * @param lastFinish the finished size on record from the last visit
 * @param unworn a diameter read where no ring runs
 * @param reach how far the worn wall stands off the original axis, probed
 * @param sleeveOutside the outside diameter of a sleeve fitted since
 * @param least the least thickness of the wall around the hole as it is now
 * @param sleevedBefore whether a sleeve was fitted since the engine was made
 */
public record Wall(
        Optional<Length> lastFinish,
        Optional<Length> unworn,
        Optional<Reach> reach,
        Optional<Length> sleeveOutside,
        Optional<Length> least,
        boolean sleevedBefore) {

    /** Nothing known. */
    public static final Wall UNKNOWN =
            new Wall(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false);

    /**
     * A probed radius.
     *
     * @param radius from the axis to the farthest worn wall
     * @param fromBarAxis whether it was taken from the axis the bar itself will turn on, so that no centring error is added
     * @param uncertainty the expanded uncertainty of what took it; empty where that of the gauge of the holes stands for it
     */
    public record Reach(Length radius, boolean fromBarAxis, Optional<Length> uncertainty) {

        /** Taken with something that is worth as much as the gauge of the holes. */
        public Reach(Length radius, boolean fromBarAxis) {
            this(radius, fromBarAxis, Optional.empty());
        }

        /** Probed from the same axis with the same thing, the wall at another radius. */
        public Reach at(Length other) {
            return new Reach(other, fromBarAxis, uncertainty);
        }
    }

    /** The same wall with the finished size of the last visit, where none was told. */
    public Wall recalling(Length finished) {
        return new Wall(lastFinish.or(() -> Optional.of(finished)), unworn, reach, sleeveOutside, least, sleevedBefore);
    }

    /** The same wall, the farthest worn wall at another radius from the axis that it was probed from. */
    Wall reaching(Length radius) {
        return new Wall(lastFinish, unworn, reach.map(known -> known.at(radius)), sleeveOutside, least, sleevedBefore);
    }

    /** The same wall with what was read inside the hole changed: corrected to 20 °C. */
    Wall map(UnaryOperator<Length> gauged, UnaryOperator<Length> probed) {
        return new Wall(
                lastFinish,
                unworn.map(gauged),
                reach.map(known -> known.at(probed.apply(known.radius))),
                sleeveOutside,
                least,
                sleevedBefore);
    }
}
