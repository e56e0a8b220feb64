package org.borewright.kit.bench;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.fit.Check;
import org.borewright.measure.survey.Query;

/**
 * Something that stands in the way on the bench.
 *
 * @param reason what
 * @param cylinders the holes it concerns
 * @param pistons the tags of the pistons it concerns
 * @param checks the checks it stands on, each with its place
 * @param besides what stands against the size, in words that say what its checks say
 * @param queries what is asked about the readings of its one hole
 */
public record BenchHold(
        Reason reason,
        List<String> cylinders,
        List<String> pistons,
        List<Check> checks,
        List<String> besides,
        List<Query> queries) {

    /** Copies the lists. */
    public BenchHold {
        cylinders = List.copyOf(cylinders);
        pistons = List.copyOf(pistons);
        checks = List.copyOf(checks);
        besides = List.copyOf(besides);
        queries = List.copyOf(queries);
    }

    /** What holds, and the way out. */
    public enum Reason {
        /** Holed, melted, cracked. */
        BEYOND_MACHINING(
                "A cylinder is beyond machining.",
                "Stop: no kit. Ask a specialist about a sleeve, or find another block; then survey all holes again, and quote anew."),
        /** A finding in a wall that is never cut. */
        FINDING_NEVER_CUT(
                "What was found must be cut or honed out, and this wall is never bored or honed.",
                "Stop: no kit. Ask a specialist about plating it anew or a sleeve, or find another barrel or block."),
        /** Aluminium on the wall. */
        SMEARED_ALUMINIUM(
                "Aluminium is smeared on the wall, and what lies below it was not measured.",
                "Take the aluminium off, then measure again."),
        /** A sleeve that moves in its seat. */
        SLEEVE_LOOSE(
                "A sleeve is loose in its seat, and nothing measured in it stands.",
                "Refit the sleeve, then measure again."),
        /** Something to cut out before honing. */
        CLEAN_UP_NOT_JUDGED(
                "A finding must be cut out, and a plan does not judge whether its size brings the hole clean.",
                "Ask a match with the finding, then plan the size that it is certain of, without it."),
        /** Something to cut out after honing. */
        DID_NOT_CLEAN_UP(
                "A hole did not clean up, for a finding is left in it.",
                "Do not build it: survey all holes again, ask a match with the finding, and quote anew."),
        /** A poor surface in a hole that is left with it. */
        FINISH_POOR(
                "The surface of a finished hole is poor, and the hone that settles it makes the hole larger.",
                "Hone it, then measure again."),
        /** Wall, bridge, gasket, parts: whatever a match says against the size. */
        SIZE_BLOCKED(
                "Something else than the wear stands against the size.", "Ask a match for a size that is offered."),
        /** A reading of a hole may be a slip. */
        READINGS_QUERIED(
                "A reading may be a slip, and nothing is computed from its hole.",
                "Read the queried places again: correct the reading, or say (readingsChecked) that it was read again and stands."),
        /** Of another design, size or hand. */
        WRONG_PISTON(
                "A piston is not made for this place.",
                "Set it aside, and find the piston made for this size and hole."),
        /** More than 0.05 mm small. */
        PISTON_MISREAD(
                "A piston reads far too small, as if across the pin or at the wrong height.",
                "Measure it again at its gauge height across the thrust faces; nothing is computed from this reading."),
        /** Far from what its number weighs. */
        MASS_MISREAD(
                "A piston weighs far from what is listed of its number.",
                "Weigh it again, and look at its number: a digit may have slipped, or it is another piston, or weighed otherwise than was said."),
        /** Proven too large or too small. */
        PISTON_OUT_OF_TOLERANCE("A piston is beyond its tolerance.", "Do not fit it: it is worn, or not of its size."),
        /** Neither proven to be of its tolerance nor not to be. */
        PISTON_OPEN(
                "A piston is nearer to a limit of its tolerance than its gauge can tell.",
                "Settle it before it is fitted, or take another piston; its hole stands with it as measured."),
        /** Too heavy against another. */
        MASSES_APART("The pistons differ too much in mass.", "Weigh the set again, and match it."),
        /** The uncertainty eats the window. */
        TARGET_NOT_PROVEN(
                "With these gauges a hole honed to target is not proven.",
                "Measure hole and piston with better gauges."),
        /** Nothing left to hone. */
        PAST_WINDOW(
                "A hole is too large for its piston, and the work stops.",
                "Stop: do not hone it for this size; see the size that would save it."),
        /** Nothing left to hone, and nothing larger to go to. */
        PAST_LAST_SIZE(
                "A hole is too large for its piston, the work stops, and no larger size that is offered would save it.",
                "Stop: do not hone it for this size; ask a specialist about a sleeve, or find another barrel or block."),
        /** Rings that are made to be filed, and nobody says that they are. */
        RINGS_NOT_FILED(
                "A ring must be filed for its hole, and it is not said that it is.",
                "Try each ring square at the narrowest place of its hole, and file its ends until the gap there is within the limits told for its hole (fileTo); "
                        + "then say that it is done (ringsFiled)."),
        /** Not at one temperature. */
        NOT_AT_ROOM_TEMPERATURE(
                "The holes were measured before the block was at room temperature.",
                "Let the block stand until it is at room temperature, and measure all holes again."),
        /** A check is beyond its limit. */
        CHECK_OUT("A check is beyond its limit.", "Put right what is beyond its limit."),
        /** Something was not measured. */
        CHECK_UNKNOWN("A check could not be made.", "Measure what is missing."),
        /** A check is too close to call. */
        CHECK_OPEN("A check is too close to call.", "Measure it again with a better gauge.");

        private final String sentence;
        private final String wayOut;

        Reason(String sentence, String wayOut) {
            this.sentence = sentence;
            this.wayOut = wayOut;
        }

        /** The reason in a few words. */
        public String label() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
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

    /** A hold on the engine. */
    public static BenchHold of(Reason reason, List<Check> checks) {
        return inHoles(reason, List.of(), checks);
    }

    static BenchHold inHoles(Reason reason, List<String> cylinders, List<Check> checks) {
        return new BenchHold(reason, cylinders, List.of(), checks, List.of(), List.of());
    }

    static BenchHold onPistons(Reason reason, List<String> pistons, List<Check> checks) {
        return new BenchHold(reason, List.of(), pistons, checks, List.of(), List.of());
    }

    static BenchHold onSize(List<String> besides, List<Check> checks) {
        return new BenchHold(Reason.SIZE_BLOCKED, List.of(), List.of(), checks, besides, List.of());
    }

    static BenchHold onQueries(String cylinder, List<Query> queries) {
        return new BenchHold(Reason.READINGS_QUERIED, List.of(cylinder), List.of(), List.of(), List.of(), queries);
    }

    /** What holds and where, in one sentence. */
    public String says() {
        String what = besides.isEmpty()
                ? checks.stream().map(check -> check.rule().title()).distinct().collect(Collectors.joining(", "))
                : String.join(", ", besides);
        String where = Stream.of(what, named("cylinder", cylinders), named("piston", pistons))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
        String sentence = reason.sentence();
        return where.isEmpty() ? sentence : sentence.substring(0, sentence.length() - 1) + ": " + where + ".";
    }

    private static String named(String what, List<String> names) {
        return names.isEmpty() ? "" : (names.size() == 1 ? what : what + "s") + " " + String.join(", ", names);
    }
}
