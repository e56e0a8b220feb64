package org.borewright.page;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemType;

/**
 * What the API says to whoever sends JSON, in words of whoever fills in a form: there are no quotes, headers or members in it. What speaks
 * to both stays as it is.
 */
final class InAForm {

    /** A body of one member, which is one field of a form. */
    private static final Pattern ONE_MEMBER = Pattern.compile("Send \\{\"[a-zA-Z]+\": .*}\\.");

    /** The name of a member in brackets, beside the words for it. */
    private static final Pattern NAMED = Pattern.compile(" \\([a-z]+[A-Z][a-zA-Z]+\\)");

    /** In a form, by what the API says, or by a part of it where the rest differs from time to time. */
    static final Map<String, String> WORDS = words();

    private InAForm() {}

    /** A problem in words of a form. */
    static Problem said(Problem problem) {
        return new Problem(
                problem.type(),
                problem.status(),
                said(problem.detail()),
                problem.faults().stream().map(InAForm::said).toList(),
                Optional.of(said(problem.wayOut())));
    }

    private static Fault said(Fault fault) {
        return new Fault(
                fault.type(),
                fault.pointer(),
                fault.part(),
                fault.value(),
                fault.limit(),
                said(withLimit(fault)),
                said(fault.wayOut()),
                fault.suggestion());
    }

    /** What a form says of a figure names the range that the API tells beside it. */
    private static String withLimit(Fault fault) {
        boolean ofRange = fault.type() == ProblemType.BAD_FIGURE || fault.type() == ProblemType.BAD_READING;
        String limit = fault.limit();
        return !ofRange
                        || limit == null
                        || fault.reason().contains(limit)
                        || !fault.reason().endsWith(".")
                ? fault.reason()
                : fault.reason().substring(0, fault.reason().length() - 1) + ": " + limit + ".";
    }

    /** A sentence in words of a form. */
    static String said(String sentence) {
        String said = ONE_MEMBER.matcher(sentence).replaceAll("Fill it in.");
        for (Map.Entry<String, String> word : WORDS.entrySet()) {
            said = said.replace(word.getKey(), word.getValue());
        }
        return NAMED.matcher(said).replaceAll("");
    }

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        ofTypes(words);
        ofOneTime(words);
        return words;
    }

    private static void ofTypes(Map<String, String> words) {
        String anew = "Open the page anew, and fill in its form.";
        words.put(ProblemType.BAD_REQUEST.wayOut(), anew);
        words.put(ProblemType.KEY_MISSING.wayOut(), anew);
        words.put(ProblemType.BAD_VERSION.wayOut(), anew);
        words.put(ProblemType.VERSION_MISSING.wayOut(), anew);
        words.put(ProblemType.KEY_USED.wayOut(), "Look whether it is done already; if not, send the form again.");
        words.put(ProblemType.BUSY.wayOut(), "Send the form again in a few seconds.");
        words.put(
                ProblemType.ORDER_CHANGED.wayOut(),
                "Look at the order as it stands and whether this still makes sense; then send the form again.");
        words.put(
                ProblemType.PARTS_TO_COME.wayOut(),
                "Wait for them to arrive; then open the order again. Or call it off.");
        words.put(
                ProblemType.STOCK_SHORT.wayOut(),
                "Quote anew, or tick with the yes that the customer waits for what must be ordered.");
        words.put(ProblemType.BAD_FIGURE.wayOut(), "Type a plain number with a point, within the range named.");
        words.put(ProblemType.BAD_DATE.wayOut(), "Type it as in 2026-12-01, or leave it empty for today.");
        words.put(
                ProblemType.BAD_READING.wayOut(),
                "Compare with the note from the bench and type what the gauge showed.");
        words.put(ProblemType.UNCLEAR_STAMP.wayOut(), "Measure a piston, and type the size as it is labelled.");
        words.put(ProblemType.MISSING_FIELD.wayOut(), "Fill it in.");
        words.put(ProblemType.WRONG_FORM.wayOut(), "Type it as its label says.");
        words.put(
                ProblemType.BAD_GRID.wayOut(),
                "Type the depths from the deck down, and a dash where a place could not be measured, as over a port.");
        words.put(ProblemType.SEVERAL_FAULTS.wayOut(), "Put all of them right and send the form again.");
        words.put(
                ProblemType.UNKNOWN_GAUGE.wayOut(),
                "Take a gauge of the register, or leave its name empty and say what it is worth: its uncertainty or its smallest step.");
        words.put(ProblemType.UNKNOWN_ENGINE.wayOut(), "Look the engine up at the desk.");
        words.put(ProblemType.UNKNOWN_ORDER.wayOut(), "Look it up among the orders.");
    }

    /** What is said of one place, with the name of a member or of a body in it. */
    private static void ofOneTime(Map<String, String> words) {
        words.put(
                "Send a plain decimal number without quotes, with a point before the decimals.",
                "Type a plain number with a point before the decimals, such as 77.295.");
        words.put("; then send the size as it is labelled", "; then type the size as it is labelled");
        words.put(
                "Leave it out, or send the grid that was read again.", "Leave it empty, or type what was read again.");
        words.put(
                "leave presentSize out when nobody knows it", "leave empty what it is known from when nobody knows it");
        words.put(
                "Weigh every piston of the set, and send its mass.",
                "Weigh every piston of the set, and type its mass.");
        words.put(
                "Send the cylinders as measured now with the confirmation",
                "Enter the holes as measured now with the confirmation");
        words.put("Send the size and the pistons that were quoted", "Take the size and the pistons that were quoted");
        words.put("An inside micrometer is sent as a bore gauge", "An inside micrometer is entered as a bore gauge");
    }
}
