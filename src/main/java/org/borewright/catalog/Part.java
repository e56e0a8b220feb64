package org.borewright.catalog;

/** A part that goes into an engine: a number and what the rules need to know of it. */
public sealed interface Part permits Piston, RingSet, Pin, Clip, Bearing, GasketKit, HeadGasket, BaseGasket, Bolt {

    /** The number it is ordered by. */
    PartNumber number();

    /** What it is. */
    Kind kind();

    /** The kinds of part, in the order of a kit list. */
    enum Kind {
        /** A piston without anything in it. */
        PISTON("piston"),
        /** The rings of one piston. */
        RING_SET("ring set"),
        /** A wrist pin. */
        PIN("wrist pin"),
        /** A clip that keeps the pin in. */
        CLIP("clip"),
        /** A small-end bearing. */
        BEARING("small-end bearing"),
        /** Gaskets. */
        GASKET_KIT("gasket kit"),
        /** A head gasket sold by itself. */
        HEAD_GASKET("head gasket"),
        /** A base gasket sold by itself. */
        BASE_GASKET("base gasket"),
        /** A bolt that is used once. */
        BOLT("single-use bolt");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The words as shown. */
        public String label() {
            return label;
        }
    }
}
