package org.borewright.kit;

import java.util.List;
import org.borewright.fit.Check;

/**
 * Something that stands between the engine and a pass.
 *
 * @param reason what
 * @param cylinders the holes it concerns; empty for the engine
 * @param checks the checks it stands on, where it was a check
 */
public record Hold(Reason reason, List<String> cylinders, List<Check> checks) {

    /** What holds, and the way out. */
    public enum Reason {
        /** Holed, melted, cracked. */
        BEYOND_MACHINING(
                "A cylinder is beyond machining.", "No kit: ask a specialist about a sleeve, or find another block."),
        /** Smeared aluminium or a loose sleeve. */
        PUT_RIGHT_FIRST(
                "Smeared aluminium or a loose sleeve must be put right before anything is measured.",
                "Take the aluminium off, refit the sleeve, then measure again."),
        /** No diameter at all. */
        NOT_MEASURED("Nothing was measured in a cylinder.", "Measure it: three depths by two axes at the least."),
        /** A defect without a depth. */
        DEPTH_NOT_MEASURED(
                "The depth of a finding was not measured, so no size is certain.",
                "Measure how deep it goes into the wall."),
        /** D0 unknown. */
        SIZE_WHEN_NEW_NOT_KNOWN(
                "The size when new is not known, so the wear may be all on one wall.",
                "Find the record of the last finish, read the unworn wall, or probe the wall."),
        /** The wear may be on one side. */
        WALL_NOT_PROBED(
                "The wear may be all on one wall, and then no size is certain.",
                "Probe how far the worn wall stands off the axis."),
        /** Nothing is large enough. */
        NO_SIZE_LEFT(
                "No size that is made and allowed brings every cylinder clean.", "Ask a specialist about sleeving."),
        /** Only the skim of the deck stands against a size. */
        SKIMMED_TOO_FAR("The deck would be skimmed too far for the size.", "Skim less, or find a thicker gasket kit."),
        /** Only a gasket kit is wanting for a size. */
        NO_GASKET_KIT("No gasket kit fits the size.", "Find a gasket kit that fits: see what it must clear."),
        /** Only parts that go with its pistons are wanting for a size. */
        PARTS_DO_NOT_FIT(
                "No set of rings, pin and clips that fits the pistons of the size is to be had.",
                "Find the parts elsewhere: see the row of the size."),
        /** A check is beyond its limit. */
        CHECK_OUT("A check is beyond its limit.", "See the check for the way out."),
        /** A check is too close to call, or lacks a figure. */
        CHECK_OPEN("A check is not proven.", "See the check for the reading that settles it."),
        /** The kit is short of a part. */
        KIT_SHORT(
                "The kit is short of a part that cannot be had.", "Find the part elsewhere, or ask for a larger size."),
        /** Finished holes of different sizes. */
        HOLES_DIFFER(
                "The finished holes do not take one size.",
                "Bore or hone the smaller holes to the size that brings all together, or sleeve the odd one."),
        /** Finished holes that fit no size as they are, all between the same two. */
        BETWEEN_SIZES(
                "The finished holes lie between two sizes: too loose for the smaller, too tight for the larger.",
                "Take all of them to the size that brings them together."),
        /** Finished holes that no size brings together. */
        NO_COMMON_SIZE("No size brings the finished holes together.", "Sleeve the largest hole."),
        /** A larger size was asked for and does not serve. */
        ASKED_SIZE_DOES_NOT_SERVE(
                "The size asked for does not serve this engine.",
                "See its row in the table; the smallest that serves is given instead.");

        private final String sentence;
        private final String wayOut;

        Reason(String sentence, String wayOut) {
            this.sentence = sentence;
            this.wayOut = wayOut;
        }

        /** What holds, in one sentence. */
        public String sentence() {
            return sentence;
        }

        /** What to do next. */
        public String wayOut() {
            return wayOut;
        }
    }

    static Hold of(Reason reason) {
        return new Hold(reason, List.of(), List.of());
    }

    static Hold in(Reason reason, List<String> cylinders) {
        return new Hold(reason, cylinders, List.of());
    }
}
