package org.borewright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.PistonInHole;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Query;

/**
 * Something that stands between the engine and a pass.
 *
 * @param reason what
 * @param cylinders the holes it concerns; empty for the engine
 * @param checks the checks it stands on, each with its place, where it was a check
 * @param missing the parts that cannot be had, where the kit is short
 * @param queries what is asked about the readings of its one cylinder, where they are in question
 * @param tooClose the pistons whose clearance is too close to call, where it is that
 */
public record Hold(
        Reason reason,
        List<String> cylinders,
        List<Check> checks,
        List<Kit.Missing> missing,
        List<Query> queries,
        List<PistonInHole> tooClose) {

    /** Copies the lists. */
    public Hold {
        cylinders = List.copyOf(cylinders);
        checks = List.copyOf(checks);
        missing = List.copyOf(missing);
        queries = List.copyOf(queries);
        tooClose = List.copyOf(tooClose);
    }

    /** What holds, and the way out. */
    public enum Reason {
        /** Holed, melted, cracked. */
        BEYOND_MACHINING(
                "A cylinder is beyond machining.", "No kit: ask a specialist about a sleeve, or find another block."),
        /** A finding in a wall that is never cut. */
        FINDING_NEVER_CUT(
                "What was found must be cut or honed out, and this wall is never bored or honed.",
                "No kit: ask a specialist about plating it anew or a sleeve, or find another barrel or block."),
        /** Aluminium on the wall. */
        SMEARED_ALUMINIUM(
                "Aluminium is smeared on the wall, and what lies below it was not measured.",
                "Take the aluminium off, then measure again."),
        /** A sleeve that moves in its seat. */
        SLEEVE_LOOSE(
                "A sleeve is loose in its seat, and nothing measured in it stands.",
                "Refit the sleeve, then measure again."),
        /** A poor surface in a finished hole that is left as it is. */
        FINISH_POOR(
                "The surface of a finished hole is poor, and the hone that settles it makes the hole larger.",
                "Hone it, then measure again."),
        /** A reading that may be a slip. */
        READINGS_QUERIED(
                "A reading may be a slip, and nothing is computed from that cylinder's grid.",
                "Read the places named again: correct what was a slip, or say (readingsChecked) that they were read again and stand."),
        /** No diameter at all. */
        NOT_MEASURED("Nothing was measured in a cylinder.", "Measure it: three depths by two axes at the least."),
        /** A defect without a depth. */
        DEPTH_NOT_MEASURED(
                "The depth of a finding was not measured, so no size is certain.",
                "Measure how deep it goes into the wall."),
        /** The whole hole is smaller than it can be. */
        SMALLER_THAN_PRESENT_SIZE(
                "A hole reads smaller than any hole of the present size can be.",
                "Find out the present size from a measured piston, and read the hole again."),
        /** The readings contradict the record, or one another. */
        SMALLER_THAN_WHEN_NEW(
                "A hole reads smaller throughout than its last finish on record or its unworn wall, and no hole grows smaller.",
                "Read the hole and its unworn wall again, and see whether the record is of this hole."),
        /** D0 unknown. */
        SIZE_WHEN_NEW_NOT_KNOWN(
                "The size when new is not known, so the wear may be all on one wall.",
                "Find the record of the last finish, read the unworn wall, or probe the wall."),
        /** The wear may be on one side. */
        WALL_NOT_PROBED(
                "The wear may be all on one wall, and then no size is certain.",
                "Probe how far the worn wall stands off the axis."),
        /** A better gauge would tell. */
        READING_TOO_CLOSE("A reading is too close to call.", "Measure again with a gauge of a smaller uncertainty."),
        /** A hole that is left as it is, and pistons anywhere in their tolerance. */
        CLEARANCE_TOO_CLOSE(
                "The clearance in a hole left as it is lies too close to call.",
                "Measure the pistons and pair them with the holes: a measured piston takes the place of its tolerance."),
        /** Nothing is large enough. */
        NO_SIZE_LEFT(
                "No size that is made and allowed brings every cylinder clean.", "Ask a specialist about sleeving."),
        /** Only the pistons of a size are wanting, and nobody ever made them. */
        NEVER_MADE(
                "Every cylinder would come out clean at the size, and nothing known speaks against the metal, but no piston was ever made for it.",
                "Have pistons made for it, or ask a specialist about a sleeve."),
        /** Sizes that are only possible, and nobody ever made pistons for them. */
        POSSIBLE_NEVER_MADE(
                "Only a size for which no piston was ever made might bring every cylinder clean.",
                "Once a reading proves it, have pistons made for it, or ask a specialist about a sleeve."),
        /** Only the skim of the deck stands against a size. */
        SKIMMED_TOO_FAR("The deck would be skimmed too far for the size.", "Skim less, or find a thicker gasket."),
        /** Earlier skims alone stand against a size. */
        SKIMMED_TOO_FAR_BEFORE(
                "Earlier skims took more off the deck than the size bears.",
                "No skim less puts it back: ask a specialist about another block or barrel."),
        /** Only a gasket kit is wanting for a size. */
        NO_GASKET_KIT("No gasket kit fits the size.", "Find a gasket kit that fits: see what it must clear."),
        /** Only parts that go with its pistons are wanting for a size. */
        PARTS_DO_NOT_FIT(
                "No set of rings, pin and clips that fits the pistons of the size is to be had.",
                "Find the parts elsewhere: see the row of the size."),
        /** A check is beyond its limit. */
        CHECK_OUT("A check is beyond its limit.", "Put right what is beyond its limit."),
        /** A check is too close to call, or lacks a figure. */
        CHECK_OPEN("A check is not proven.", "Measure again what is not proven."),
        /** The kit is short of a part. */
        KIT_SHORT(
                "The kit is short of a part that cannot be had.", "Find the part elsewhere, or ask for a larger size."),
        /** Finished holes of different sizes. */
        HOLES_DIFFER(
                "The finished holes do not take one size, and the smaller ones must be cut.",
                "Bore or hone the smaller holes to the size that brings all together, or sleeve the odd one."),
        /** Finished holes that fit no size as they are, all between the same two. */
        BETWEEN_SIZES(
                "The finished holes lie between two sizes, too loose for the smaller and too tight for the larger.",
                "Take all of them to the size that brings them together."),
        /** A finished hole that must be cut again. */
        FINDING_TO_CUT(
                "A finding must be cut out of a finished hole.",
                "Bore or hone all holes to the size that brings them together, or sleeve that one."),
        /** A hole of a wall that is never cut, and no piston runs in it. */
        NEVER_CUT(
                "No piston that is made runs in the hole as it is, and its wall is never bored or honed.",
                "Ask a specialist about plating it anew or a sleeve, or find another barrel."),
        /** Finished holes that no size brings together. */
        NO_COMMON_SIZE(
                "No size brings the finished holes together, and the largest stands in the way.",
                "Sleeve the largest hole."),
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

    static Hold of(Reason reason) {
        return in(reason, List.of());
    }

    static Hold in(Reason reason, List<String> cylinders) {
        return on(reason, cylinders, List.of());
    }

    /** What holds in the holes that it concerns; empty when it concerns none. */
    static Optional<Hold> where(Reason reason, List<Hole> holes, Predicate<Hole> concerned) {
        List<String> cylinders =
                holes.stream().filter(concerned).map(Hole::name).toList();
        return cylinders.isEmpty() ? Optional.empty() : Optional.of(in(reason, cylinders));
    }

    /** What must be put right in holes before they are measured. */
    static List<Hold> toPutRight(List<Hole> holes) {
        return Stream.of(
                        where(
                                Reason.SMEARED_ALUMINIUM,
                                holes,
                                hole -> hole.survey().has(Finding.Kind.SMEARED_ALUMINIUM)),
                        where(Reason.SLEEVE_LOOSE, holes, hole -> hole.survey().has(Finding.Kind.SLEEVE_LOOSE)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Checks that hold, and the holes they were asked of. */
    static Hold on(Reason reason, List<String> cylinders, List<Check> checks) {
        return new Hold(reason, cylinders, checks, List.of(), List.of(), List.of());
    }

    /** What stands against a size beside the wear; empty when nothing does. */
    static List<Hold> onBlocks(SizeRow row) {
        return row.blocks().stream()
                .map(block -> on(
                        switch (block.reason()) {
                            case SKIM -> Reason.SKIMMED_TOO_FAR;
                            case SKIMMED_BEFORE -> Reason.SKIMMED_TOO_FAR_BEFORE;
                            case GASKET -> Reason.NO_GASKET_KIT;
                            case PARTS, PARTS_WITHDRAWN -> Reason.PARTS_DO_NOT_FIT;
                            case NEVER_MADE -> Reason.NEVER_MADE;
                            case FURTHER_WORK, BEYOND_LARGEST, NEVER_BORED, WALL, BRIDGE -> Reason.NO_SIZE_LEFT;
                        },
                        List.of(),
                        block.checks()))
                .toList();
    }

    /** One for each hole whose readings are in question. */
    static List<Hold> onQueries(List<Hole> holes) {
        return holes.stream()
                .filter(hole -> !hole.survey().queries().isEmpty())
                .map(hole -> new Hold(
                        Reason.READINGS_QUERIED,
                        List.of(hole.name()),
                        List.of(),
                        List.of(),
                        hole.survey().queries(),
                        List.of()))
                .toList();
    }

    /** The kit lacks parts; empty where nothing can be assembled at all. */
    static Hold shortOf(List<Kit.Missing> missing) {
        return new Hold(Reason.KIT_SHORT, List.of(), List.of(), missing, List.of(), List.of());
    }

    /** The clearances that are too close to call, of pistons in holes that are left as they are; empty when there is none. */
    static Optional<Hold> onClearances(List<PistonInHole> running) {
        List<PistonInHole> close =
                running.stream().filter(piston -> !piston.tooClose().isEmpty()).toList();
        return close.isEmpty()
                ? Optional.empty()
                : Optional.of(new Hold(
                        Reason.CLEARANCE_TOO_CLOSE,
                        close.stream().map(piston -> piston.hole().name()).toList(),
                        close.stream()
                                .flatMap(piston -> piston.tooClose().stream())
                                .toList(),
                        List.of(),
                        List.of(),
                        close));
    }

    /**
     * What holds of all the checks at a size: those beyond their limit, clearances too close to call, and others not proven; empty when all
     * are in.
     */
    static List<Hold> of(List<Check> engine, List<HoleReport> holes, List<PistonInHole> running) {
        Optional<Hold> clearances = onClearances(running);
        return Stream.of(
                        ofThose(Reason.CHECK_OUT, List.of(Outcome.OUT), engine, holes, List.of()),
                        clearances,
                        ofThose(
                                Reason.CHECK_OPEN,
                                List.of(Outcome.TOO_CLOSE, Outcome.UNKNOWN),
                                engine,
                                holes,
                                clearances.map(Hold::checks).orElse(List.of())))
                .flatMap(Optional::stream)
                .toList();
    }

    /** The checks that ended in one of these ways, but for those that are held already. */
    private static Optional<Hold> ofThose(
            Reason reason, List<Outcome> ended, List<Check> engine, List<HoleReport> holes, List<Check> heldAlready) {
        List<Check> checks = new ArrayList<>();
        List<String> cylinders = new ArrayList<>();
        for (Check check : engine) {
            if (ended.contains(check.outcome()) && !heldAlready.contains(check)) {
                checks.add(check);
            }
        }
        for (HoleReport report : holes) {
            int before = checks.size();
            for (Check check : report.checks()) {
                if (ended.contains(check.outcome())) {
                    checks.add(placed(check, report.hole().place()));
                }
            }
            checks.subList(before, checks.size()).removeAll(heldAlready);
            if (checks.size() > before) {
                cylinders.add(report.hole().name());
            }
        }
        return checks.isEmpty() ? Optional.empty() : Optional.of(on(reason, cylinders, checks));
    }

    /** Beside the checks of other holes a check must say whose it is. */
    private static Check placed(Check check, String hole) {
        return check.at(check.place().isEmpty() ? hole : hole + ", " + check.place());
    }

    /** What holds and where, in one sentence: the checks, the parts, the cylinders. */
    public String says() {
        List<String> where = new ArrayList<>(3);
        if (!checks.isEmpty()) {
            where.add(checks.stream()
                    .map(check -> check.rule().title())
                    .distinct()
                    .collect(Collectors.joining(", ")));
        }
        missing.forEach(lack -> where.add(lack.says()));
        if (!cylinders.isEmpty()) {
            where.add(Hole.inWords(cylinders));
        }
        String sentence = reason.sentence();
        return where.isEmpty()
                ? sentence
                : sentence.substring(0, sentence.length() - 1) + ": " + String.join("; ", where) + ".";
    }
}
