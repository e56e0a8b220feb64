package org.borewright.kit.caution;

/** What must be said beside every answer, or beside some. */
public enum Caution {
    /** On every answer. */
    MAKER_FIRST(
            "Torques and clearances here are reminders: the engine maker's service manual and the piston maker's sheet come first."),
    /** On every answer. */
    TRAINED_PEOPLE(
            "Work on engines and machine tools is for trained people with eye and hand protection; local rules apply."),
    /** A plan for worn holes knows of their wear, findings and walls nothing but what it is told. */
    CLEAN_UP_NOT_ASKED(
            "Whether the worn holes come out clean at this size is for a match to prove, and is not asked here: bore only what a match has passed."),
    /** Axes that leave a gap an oval may lie in. */
    TWO_AXES("Two axes miss an oval at 45°, and a two-point gauge misses lobes."),
    /** More axes, all read with a gauge of two points. */
    LOBES("However many axes are read, a two-point gauge misses lobes of an odd number."),
    /** One diameter only. */
    SINGLE_DIAMETER("A single diameter says nothing of taper or out-of-round, and may not be the largest."),
    /** A probe worth so little that the diameters prove more without it. */
    PROBE_SET_ASIDE(
            "What probed a wall tells less of it than the diameters alone, so the probe is set aside: probe it with something worth as much as the gauge of the holes."),
    /** Nobody wrote the temperature down. */
    TEMPERATURE_NOT_STATED("No temperature was stated: taken as 20 ± 5 °C, and that widens every uncertainty."),
    /** Far from 20 °C. */
    TEMPERATURE_FAR(
            "Measured more than 5 K away from 20 °C: let block, gauge and pistons come to one temperature and measure again."),
    /** Hole and piston measured warm apart. */
    MEASURED_WARM_APART(
            "Hole and piston were measured more than 5 K apart: a warm piston against a cold hole is the classic wrong clearance; let both come to one temperature."),
    /** Nobody said what the gauge is worth. */
    GAUGE_NOT_STATED(
            "The calibration uncertainty of the gauge of the holes was not stated: the usual one of its kind is taken."),
    /** The same of the pistons. */
    PISTON_GAUGE_NOT_STATED(
            "The calibration uncertainty of the gauge of the pistons was not stated: the usual one of its kind is taken."),
    /** Calibrated too long ago. */
    CALIBRATION_OVERDUE(
            "The calibration of the gauge of the holes is overdue: have it checked before metal is cut on the strength of its readings."),
    /** The same of the pistons. */
    PISTON_CALIBRATION_OVERDUE(
            "The calibration of the gauge of the pistons is overdue: have it checked before metal is cut on the strength of its readings."),
    /** The present size stands on hearsay. */
    PRESENT_SIZE_HEARSAY(
            "The present size is hearsay: a reading alone cannot tell a worn standard hole from a fresh oversize."),
    /** The present size stands on a stamp. */
    PRESENT_SIZE_STAMP("The present size is read from a stamp: measure a piston to be sure that it was never swapped."),
    /** An iron sleeve in aluminium. */
    SLEEVE_IN_ALUMINIUM(
            "An iron sleeve in aluminium lets go as the barrel warms: bore and hone it cold, and measure cold."),
    /** A block that its head pulls out of round. */
    TORQUE_PLATE(
            "This block is bored, honed and measured with a torque plate on, tightened as the head is: without it the holes are not those that the pistons run in."),
    /** A wall that is never cut. */
    NEVER_BORED("This wall is never bored or honed: only a set of the same size or a grade of it may go on."),
    /** Ports in a wall that is bored or honed. */
    PORTS("Chamfer the ports before the finish hone."),
    /** Ports. */
    RING_PEGS("Set the ring pegs clear of the ports."),
    /** Threads in aluminium. */
    THREADS_IN_ALUMINIUM(
            "Threads in aluminium give way before the stud: check them and stop at the first sign of pulling."),
    /** Over 90 %. */
    NEAR_PROOF_LOAD(
            "A torque pulls over 90 % of the proof load at the lowest plausible friction: do not exceed it, and do not oil a thread that is meant dry."),
    /** Always new. */
    NEW_CLIPS("Clips are always renewed; see each one seated, for a loose clip ruins the hole."),
    /** A skim where none is needed. */
    SKIM_NOT_NEEDED(
            "The deck is flat within its limit and needs no skim: skim it only as needed, for no later rebuild gets it back."),
    /** Nobody said whether the deck was skimmed before. */
    EARLIER_SKIMS_NOT_STATED(
            "It is not stated what was skimmed off the deck before: none is reckoned with, and the most that may be skimmed counts all skims."),
    /** A deck lower than made. */
    SKIMMED_DECK("A skimmed deck brings the piston nearer to the head and raises the ratio."),
    /** The same of a four-stroke. */
    VALVE_ROOM(
            "A skimmed deck brings the valves nearer to the pistons: see that they clear before the engine is turned, and set valve timing and clearances anew."),
    /** The same of a two-stroke. */
    CUT_BASE(
            "Skim the deck of a two-stroke and not its base: a base that is cut lets the ports down and changes their timing."),
    /** A base gasket of another thickness under a two-stroke. */
    PORT_TIMING(
            "A base gasket of another thickness moves the ports of a two-stroke and changes their timing: see by how much they stand higher or lower, and check the timing before it runs."),
    /** Ring to be filed. */
    FILE_RINGS("A ring of this set is to be filed to its least gap: file square, and leave no burr.");

    private final String text;

    Caution(String text) {
        this.text = text;
    }

    /** The caution in words. */
    public String text() {
        return text;
    }
}
