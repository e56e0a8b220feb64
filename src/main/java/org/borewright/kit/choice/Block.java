package org.borewright.kit.choice;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;

/**
 * Why a size is not offered for another reason than the wear: it stands beside the certainty, not mixed in.
 *
 * @param reason why
 * @param checks the checks that failed, where it was a check
 * @param withdrawn the numbers that are wanting and what became of them, where it was for want of a part
 */
public record Block(Reason reason, List<Check> checks, List<Withdrawal> withdrawn) {

    /** Why a size is not offered. */
    public enum Reason {
        /** No piston was ever made for it. */
        NEVER_MADE("no piston was ever made in this size"),
        /** Its pistons need further engine work. */
        FURTHER_WORK("needs further engine work; not offered"),
        /** Beyond the largest oversize. */
        BEYOND_LARGEST("beyond the largest oversize of this engine"),
        /** The wall is never bored. */
        NEVER_BORED("this wall is never bored"),
        /** Too little wall left. */
        WALL("too little wall left"),
        /** Too little left between two holes. */
        BRIDGE("too little metal left between the holes"),
        /** No set of parts fits together. */
        PARTS("no set of rings, pin and clips fits this piston"),
        /** A part that goes with the piston is no longer, or was never, supplied. */
        PARTS_WITHDRAWN("a part that goes with this piston is not supplied"),
        /** The deck is skimmed too far for it, and a gasket kit fits when it is skimmed less. */
        SKIM("the deck would be skimmed too far for this size"),
        /** Earlier skims alone took more than it bears. */
        SKIMMED_BEFORE("the deck was skimmed too far for this size before"),
        /** No gasket kit fits. */
        GASKET("no gasket kit fits this size");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }

        /** Whether it stays whatever parts are found and however little is skimmed. */
        public boolean stays() {
            return this != PARTS && this != PARTS_WITHDRAWN && this != SKIM && this != SKIMMED_BEFORE && this != GASKET;
        }

        /** The reason in words. */
        public String sentence() {
            return sentence;
        }
    }

    /** A block that no check tells. */
    public static Block of(Reason reason) {
        return new Block(reason, List.of(), List.of());
    }

    /** A block that checks tell. */
    static Block of(Reason reason, List<Check> checks) {
        return new Block(reason, checks, List.of());
    }

    /** Too little wall around holes; empty where none is proven too thin. */
    static Optional<Block> ofWalls(List<Check> walls) {
        List<Check> thin = Check.ended(walls, Outcome.OUT);
        return thin.isEmpty() ? Optional.empty() : Optional.of(of(Reason.WALL, thin));
    }
}
