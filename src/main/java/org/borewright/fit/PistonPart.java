package org.borewright.fit;

/** Whether a piston is made for the place it is to go to: design, size, and the hand of the hole, for hands and grades are not oversizes. */
public final class PistonPart {

    private PistonPart() {}

    /** What it is made for against what is asked. */
    public static Suitability check(String piston, String madeFor, String asked) {
        return new Suitability(Rule.PISTON_PART, piston, madeFor, asked, madeFor.equals(asked));
    }
}
