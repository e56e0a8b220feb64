package org.borewright.fit;

import java.util.ArrayList;
import java.util.List;

/** One thing that was asked of an engine and its parts, and how it ended. */
public sealed interface Check permits Comparison, Suitability, Unchecked {

    /** The rule that asked. */
    Rule rule();

    /** Where: a groove, a pin, a pair of holes; empty where the rule says it all. */
    String place();

    /** How it ended. */
    Outcome outcome();

    /** The same check, said to be at another place. */
    Check at(String elsewhere);

    /** Whether none of them stands in the way of a pass. */
    static boolean allPass(List<? extends Check> checks) {
        for (Check check : checks) {
            if (check.outcome().holds()) {
                return false;
            }
        }
        return true;
    }

    /** Those that stand in the way of a pass. */
    static List<Check> holding(List<? extends Check> checks) {
        return checks.stream()
                .filter(check -> check.outcome().holds())
                .<Check>map(check -> check)
                .toList();
    }

    /** Those that ended in a certain way. */
    static List<Check> ended(List<? extends Check> checks, Outcome outcome) {
        List<Check> ended = new ArrayList<>(0);
        for (Check check : checks) {
            if (check.outcome() == outcome) {
                ended.add(check);
            }
        }
        return ended;
    }
}
