package org.borewright.order;

/**
 * Where a question differs from the job it is asked about.
 *
 * @param pointer to the member of the question (RFC 6901)
 * @param what differs, such as {@code size} or {@code piston of cylinder 2}
 * @param asked what the question says
 * @param ordered what the order says
 * @param wayOut what to do
 */
public record Difference(String pointer, String what, String asked, String ordered, String wayOut) {

    private static final String OTHER_ORDER = "Compare the number of the order with the card.";

    private static final String SURVEY_ANEW =
            "Send the size and the pistons that were quoted; where they are to change, survey and quote anew.";

    /** The question is about another engine. */
    public static Difference ofEngine(String asked, String ordered) {
        return new Difference("/engine", "engine", asked, ordered, OTHER_ORDER);
    }

    /** The question is about another size. */
    public static Difference ofSize(String asked, String ordered) {
        return new Difference("/size", "size", asked, ordered, SURVEY_ANEW);
    }

    /** The question is about another maker's pistons. */
    public static Difference ofDesign(String asked, String ordered) {
        return new Difference("/design", "design", asked, ordered, SURVEY_ANEW);
    }
}
