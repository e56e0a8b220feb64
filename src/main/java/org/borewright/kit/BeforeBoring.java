package org.borewright.kit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.borewright.fit.Check;
import org.borewright.kit.Hold.Reason;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * What a survey leaves open that must be settled before the first cut. Whether a hole comes clean the cut itself tells, what lies on the
 * shelf is another question, and of the deck and of the finished holes the bench asks by itself.
 */
public final class BeforeBoring {

    private static final Set<Reason> WHATEVER_IS_READ = EnumSet.of(Reason.BEYOND_MACHINING, Reason.FINDING_NEVER_CUT);

    private static final Set<Reason> UNTIL_READ_ANEW = EnumSet.of(
            Reason.SMEARED_ALUMINIUM,
            Reason.SLEEVE_LOOSE,
            Reason.READINGS_QUERIED,
            Reason.NOT_MEASURED,
            Reason.SMALLER_THAN_PRESENT_SIZE,
            Reason.SMALLER_THAN_WHEN_NEW);

    private BeforeBoring() {}

    /**
     * What is still open.
     *
     * @param match the answer to the survey
     * @param choice the pistons that the engine is bored for
     * @param anew the holes as they were measured since, those that were not among them
     */
    public static List<Hold> of(Match match, Choice choice, List<Hole> anew) {
        List<String> read = anew.stream()
                .filter(hole -> hole.diameters().isPresent() && isReadAnew(hole.survey(), match))
                .map(Hole::name)
                .toList();
        List<Hold> open = new ArrayList<>();
        match.ruling().holds().stream().filter(hold -> isOpen(hold, read)).forEach(open::add);
        List<SizeRow> rows = match.table().stream()
                .filter(row -> row.choice().filter(choice::equals).isPresent())
                .toList();
        List<Check> walls = rows.stream()
                .flatMap(row -> Check.holding(row.walls()).stream())
                .toList();
        if (rows.isEmpty() || !walls.isEmpty()) {
            open.add(Hold.on(Reason.CHECK_OPEN, List.of(), walls));
        }
        return open;
    }

    /** What the survey itself read, carried along, tells nothing new, unless somebody read it again and stands by it. */
    private static boolean isReadAnew(CylinderSurvey now, Match match) {
        return match.surveyed().stream()
                .map(Hole::survey)
                .filter(before -> before.cylinder().equals(now.cylinder()))
                .noneMatch(before ->
                        before.asRead().equals(now.asRead()) && before.readingsChecked() == now.readingsChecked());
    }

    private static boolean isOpen(Hold hold, List<String> read) {
        return UNTIL_READ_ANEW.contains(hold.reason())
                ? !read.containsAll(hold.cylinders())
                : WHATEVER_IS_READ.contains(hold.reason());
    }
}
