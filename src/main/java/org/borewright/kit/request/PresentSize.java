package org.borewright.kit.request;

import java.util.Optional;
import org.borewright.catalog.Size;

/**
 * The size an engine has now, and where that is known from. A reading alone cannot tell a worn standard hole from a fresh +0.25.
 *
 * @param size the size; empty when not known
 * @param knownFrom how it is known
 */
public record PresentSize(Optional<Size> size, KnownFrom knownFrom) {

    /** Nobody knows. */
    public static final PresentSize NOT_KNOWN = new PresentSize(Optional.empty(), KnownFrom.HEARSAY);

    /** Where a size is known from. */
    public enum KnownFrom {
        /** A record of the last visit. */
        RECORD("record", true),
        /** A piston taken out and measured. */
        MEASURED_PISTON("measured piston", true),
        /** The stamp on a crown. */
        CROWN_STAMP("crown stamp", true),
        /** Somebody said so: no size the hole had when new can be drawn from it. */
        HEARSAY("hearsay", false);

        private final String label;
        private final boolean reliable;

        KnownFrom(String label, boolean reliable) {
            this.label = label;
            this.reliable = reliable;
        }

        /** The words as typed and shown. */
        public String label() {
            return label;
        }

        /** Whether the size a hole had when new may be drawn from it. */
        public boolean isReliable() {
            return reliable;
        }
    }

    /** The size, where it is known from something better than hearsay. */
    public Optional<Size> reliable() {
        return size.filter(known -> knownFrom.isReliable());
    }
}
