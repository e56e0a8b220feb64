package org.borewright.kit.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.fit.Check;
import org.borewright.fit.MassSpread;
import org.borewright.fit.shape.MassRange;

/** How the pistons of a set were weighed: all of them alike, for bare and complete are never set against each other. */
public enum Weighed {
    /** Without anything in them, as their numbers are listed. */
    BARE("bare"),
    /** With pin and clips, of which no list says what they weigh. */
    WITH_PIN_AND_CLIPS("with pin and clips");

    private final String label;

    Weighed(String label) {
        this.label = label;
    }

    /** The words as typed and shown. */
    public String label() {
        return label;
    }

    /**
     * The spread of a set. A piston that was not weighed counts as its number allows where the others are bare; weighed with pin and clips
     * they have nothing to be set against, and the spread is not known.
     *
     * @param set the piston of each hole; empty while none is measured
     * @param listed what the numbers allow in each hole
     * @param limitMilligrams the most one may be heavier than another
     */
    public Check spread(List<Optional<PistonInHand>> set, List<MassRange> listed, long limitMilligrams) {
        boolean apart = set.stream()
                .anyMatch(piston -> piston.flatMap(PistonInHand::weight).isEmpty());
        return this == WITH_PIN_AND_CLIPS && apart && set.size() > 1
                ? MassSpread.NOT_ALL_WEIGHED
                : MassSpread.check(
                        IntStream.range(0, set.size())
                                .mapToObj(i ->
                                        set.get(i).flatMap(PistonInHand::weight).orElse(listed.get(i)))
                                .toList(),
                        limitMilligrams);
    }
}
