package org.borewright.order;

/** What can be done with an order. */
public enum Move {
    /** Tells how the holes were found, worn or finished. */
    SURVEY("survey"),
    /** Names a price for what the last survey says. */
    QUOTE("quote"),
    /** The customer's yes to a quote: its parts are put aside. */
    ACCEPT("accept"),
    /** The customer's no. */
    DECLINE("decline"),
    /** The pistons in hand are measured and paired. */
    CONFIRM("confirm"),
    /** A hole did not clean up, or something hidden came to light: it is surveyed anew. */
    DID_NOT_CLEAN_UP("did not clean up"),
    /** The honed holes are measured and judged. */
    FINISH("finish"),
    /** It leaves, and the parts are taken off the shelf. */
    RELEASE("release"),
    /** It is called off. */
    WITHDRAW("withdraw"),
    /** The parts were put aside too long without the pistons being confirmed. */
    RUN_OUT("run out");

    private final String label;

    Move(String label) {
        this.label = label;
    }

    /** The words as shown. */
    public String label() {
        return label;
    }
}
