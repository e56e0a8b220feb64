package org.borewright.page.bench;

import java.util.Locale;

/** What holes are surveyed for. Those of an order are each a move that is sent the body of a match. */
enum Occasion {
    NO_ORDER("Survey", "What does it say?", "For no order: it is answered, and not kept."),
    SURVEY("Survey", "Keep the survey", "How the holes were found."),
    DID_NOT_CLEAN_UP(
            "Did not clean up",
            "Keep the new survey",
            "A hole did not clean up, or something came to light. Measure all holes as they are now: the order is quoted anew, and the first"
                    + " quote is kept."),
    CONFIRM(
            "New rings, before they go in",
            "Confirm",
            "New rings go on the pistons that are in it. Every condition must be met in every hole before they do."),
    FINISH(
            "New rings, before it leaves",
            "Judge and sign",
            "The holes as they leave. Every condition must still be met in every hole.");

    private final String title;
    private final String button;
    private final String lead;

    Occasion(String title, String button, String lead) {
        this.title = title;
        this.button = button;
        this.lead = lead;
    }

    /** The last part of its address. */
    String path() {
        return move().replace(' ', '-');
    }

    /** The move as the API calls it. */
    String move() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    String title() {
        return title;
    }

    String button() {
        return button;
    }

    String lead() {
        return lead;
    }
}
