package org.borewright.page;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemType;
import org.jspecify.annotations.Nullable;

/**
 * A form as it is shown: what was typed stays in its field, and what is wrong stands beside it.
 *
 * @param form what was typed
 * @param refused why it was not answered; empty where it was, or where nobody asked yet
 */
public record Entry(Form form, Optional<Problem> refused) {

    private static final Pattern HOLE = Pattern.compile(
            "/cylinders/(?<hole>\\d{1,2})(?:/grid/(?:readings|depths)/(?<depth>\\d{1,2})(?:/(?<axis>\\d{1,2}))?)?");

    /** Says what is wrong in words of a form. */
    public Entry {
        refused = refused.map(InAForm::said);
    }

    /** A form that is well, or that nobody sent yet. */
    public static Entry of(Form form) {
        return new Entry(form, Optional.empty());
    }

    /** A form that was refused. */
    public static Entry of(Form form, Problem refused) {
        return new Entry(form, Optional.of(refused));
    }

    /**
     * A form about an order that was refused. Where the order had changed its page says so, and the form goes on for the order as it stands;
     * refused for anything else it stays for the order as it was known, so that nobody passes over a change that they were not told of.
     *
     * @param version that the order has by now
     */
    public static Entry of(Form form, Problem refused, int version) {
        boolean toldOfIt = refused.type() == ProblemType.ORDER_CHANGED;
        return of(toldOfIt ? form.with("version", Integer.toString(version)) : form, refused);
    }

    /** The status of a page that shows it. */
    public int status() {
        return refused.map(Problem::status).orElse(200);
    }

    /** What was typed into a field. */
    public String typed(String name) {
        return form.typed(name);
    }

    /** Whether a field came with the form, be it empty. */
    public boolean isSent(String name) {
        return form.fields().containsKey(name);
    }

    /** Whether exactly this stands in a field, as of a choice. */
    public boolean is(String name, String value) {
        return typed(name).equals(value);
    }

    /** Whether this number stands in a field. */
    public boolean is(String name, int value) {
        return is(name, Integer.toString(value));
    }

    /** What is wrong with a field. */
    public @Nullable Fault fault(String name) {
        String pointer = Form.pointer(name);
        return faults().stream()
                .filter(fault -> pointer.equals(fault.pointer()))
                .findFirst()
                .orElse(null);
    }

    /** All that is wrong. */
    public List<Fault> faults() {
        return refused.map(Problem::faults).orElse(List.of());
    }

    /** Which hole a fault is of, and which reading of it, to be said before what is wrong; nothing where it is of none. */
    public String place(Fault fault) {
        Matcher of = HOLE.matcher(fault.pointer() == null ? "" : fault.pointer());
        if (!of.lookingAt()) {
            return "";
        }
        String called = typed("/cylinders/" + of.group("hole") + "/cylinder");
        return "Hole " + (called.isEmpty() ? counted(of.group("hole")) : called)
                + (of.group("depth") == null ? "" : ", depth " + counted(of.group("depth")))
                + (of.group("axis") == null ? "" : ", " + axis(of.group("hole"), of.group("axis")))
                + ": ";
    }

    /** As the form calls it; a sheet has the axes of all holes with the first. */
    private String axis(String hole, String axis) {
        return Stream.of(hole, "0")
                .map(at -> typed("/cylinders/" + at + "/grid/axes/" + axis))
                .filter(called -> !called.isEmpty())
                .findFirst()
                .orElse("axis " + counted(axis));
    }

    private static String counted(String index) {
        return Integer.toString(Integer.parseInt(index) + 1);
    }

    /** The field that a fault belongs to; absent where the form has none for it. */
    public @Nullable String field(Fault fault) {
        return Optional.ofNullable(fault.pointer()).flatMap(form::nameOf).orElse(null);
    }
}
