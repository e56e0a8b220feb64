package org.borewright.measure.survey;

import java.util.Optional;
import org.borewright.measure.Length;

/**
 * Something seen in or on a cylinder.
 *
 * @param kind what was seen
 * @param depth how deep it goes into the wall, where that was measured
 * @param height how far below the deck it lies, where that was noted
 */
public record Finding(Kind kind, Optional<Length> depth, Optional<Length> height) {

    /** What a finding means for the work. */
    public enum Weight {
        /** Noted, never blocks. */
        COSMETIC("noted, never blocks"),
        /** Settled by a hone at the same size; nothing needs cutting. */
        HONE("settled by a hone"),
        /** Cut out by the bar; its depth counts in the clean-up. */
        MACHINABLE("cut out by the bar"),
        /** Something to put right first; nothing is decided until then. */
        HOLD("put right first, then measure again"),
        /** No bar mends it: a specialist, a sleeve, another block. */
        BEYOND_MACHINING("beyond machining");

        private final String says;

        Weight(String says) {
            this.says = says;
        }

        /** What it means, in words. */
        public String says() {
            return says;
        }
    }

    /** The findings of the trade (common practice). */
    public enum Kind {
        /** A fin broken off. */
        BROKEN_FIN("broken fin", Weight.COSMETIC),
        /** A crack in a fin that does not reach the barrel. */
        CRACKED_FIN("cracked fin", Weight.COSMETIC),
        /** Paint gone or burnt. */
        PAINT("paint", Weight.COSMETIC),
        /** A stain that a finger nail does not feel. */
        STAIN("stain", Weight.COSMETIC),
        /** Glazed, or a poor surface. */
        FINISH_POOR("finish poor", Weight.HONE),
        /** Worn by running. */
        WORN("worn", Weight.MACHINABLE),
        /** Scratches along the stroke. */
        SCORED("scored", Weight.MACHINABLE),
        /** Pits. */
        PITTED("pitted", Weight.MACHINABLE),
        /** Rust: always machined, whatever the diameter says. */
        CORRODED("corroded", Weight.MACHINABLE),
        /** Marks of a seizure: always machined, whatever the diameter says. */
        SEIZED("seized", Weight.MACHINABLE),
        /** Aluminium smeared on the wall: comes off before anything is measured. */
        SMEARED_ALUMINIUM("smeared aluminium", Weight.HOLD),
        /** The sleeve moves in its seat: refitted first. */
        SLEEVE_LOOSE("sleeve loose", Weight.HOLD),
        /** A hole through the wall. */
        HOLED("holed", Weight.BEYOND_MACHINING),
        /** Melted. */
        MELTED("melted", Weight.BEYOND_MACHINING),
        /** A crack in the wall. */
        CRACKED("cracked", Weight.BEYOND_MACHINING);

        private final String label;
        private final Weight weight;

        Kind(String label, Weight weight) {
            this.label = label;
            this.weight = weight;
        }

        /** The word of the trade, as typed and shown. */
        public String label() {
            return label;
        }

        /** What it means for the work. */
        public Weight weight() {
            return weight;
        }

        /** Whether the wall must be cut even where the diameter would pass: rust and seizure marks. */
        public boolean alwaysMachined() {
            return this == CORRODED || this == SEIZED;
        }
    }

    /**
     * What it means in a wall: where neither bar nor hone may touch it, nothing settles what they would.
     *
     * @param mayBeCut whether they may
     */
    public Weight weightIn(boolean mayBeCut) {
        Weight weight = kind.weight();
        return !mayBeCut && (weight == Weight.HONE || weight == Weight.MACHINABLE) ? Weight.BEYOND_MACHINING : weight;
    }

    /** Whether it must be cut out and nobody measured how deep: no size is then better than possible. */
    public boolean isOfUnknownDepth() {
        return kind.weight() == Weight.MACHINABLE && kind != Kind.WORN && depth.isEmpty();
    }

    /** How much deeper than the wall the bar must go, nothing for a finding that is not machined. */
    public Length cut() {
        return kind.weight() == Weight.MACHINABLE ? depth.orElse(Length.ZERO) : Length.ZERO;
    }
}
