package org.borewright.kit.request;

import java.util.Optional;

/**
 * What was seen of piston and wall of one cylinder beyond its diameters, and decides whether new rings alone will do.
 *
 * @param piston that runs in it now
 * @param grooves of that piston; empty when not told
 * @param ridge above the travel of the top ring; empty when not told
 * @param glaze of the wall; empty when not told
 */
public record AsFound(PresentPiston piston, Optional<Grooves> grooves, Optional<Ridge> ridge, Optional<Glaze> glaze) {

    /** Nothing told. */
    public static final AsFound NOT_TOLD =
            new AsFound(PresentPiston.NOT_TOLD, Optional.empty(), Optional.empty(), Optional.empty());

    /** The ring grooves of a piston that has run. */
    public enum Grooves {
        /** A new ring has its play in them. */
        GOOD("good"),
        /** Too wide for a new ring. */
        WORN("worn");

        private final String label;

        Grooves(String label) {
            this.label = label;
        }

        /** The word as typed and shown. */
        public String label() {
            return label;
        }
    }

    /** The step that the top ring leaves above its travel. */
    public enum Ridge {
        /** It was taken off. */
        OFF("off"),
        /** It stands. */
        THERE("there"),
        /** There never was one. */
        NONE("none");

        private final String label;

        Ridge(String label) {
            this.label = label;
        }

        /** The word as typed and shown. */
        public String label() {
            return label;
        }
    }

    /** The polish that running leaves on a wall. */
    public enum Glaze {
        /** Roughened, so that new rings bed in. */
        BROKEN("broken"),
        /** Still there. */
        NOT_BROKEN("not broken");

        private final String label;

        Glaze(String label) {
            this.label = label;
        }

        /** The words as typed and shown. */
        public String label() {
            return label;
        }
    }
}
