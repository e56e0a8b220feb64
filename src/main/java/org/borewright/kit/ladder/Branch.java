package org.borewright.kit.ladder;

import java.util.Optional;
import org.borewright.kit.bill.Job;
import org.borewright.kit.choice.RebuildsLeft;

/**
 * One way to restore an engine, with what it would come to.
 *
 * @param rung the way
 * @param job parts and work; empty for a sleeve, and where something stands against the way
 * @param left the rebuilds left after it; empty where they are not known
 * @param largestHole the reading that decides; empty where every hole is measured, or no reading decides
 */
public record Branch(Rung rung, Optional<Job> job, Optional<RebuildsLeft> left, Optional<LargestHole> largestHole) {}
