package org.borewright.fit;

/** One thing that was asked of an engine and its parts, and how it ended. */
public sealed interface Check permits Comparison, Suitability, Unchecked {

    /** The rule that asked. */
    Rule rule();

    /** Where: a groove, a pin, a pair of holes; empty where the rule says it all. */
    String place();

    /** How it ended. */
    Outcome outcome();
}
