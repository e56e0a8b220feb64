package org.borewright.api.asked;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.Legible;
import org.borewright.api.problem.NearNames;
import org.borewright.api.problem.ProblemType;
import org.borewright.api.problem.Suggestion;
import org.jspecify.annotations.Nullable;

/**
 * A place in a body: its JSON Pointer (RFC 6901) and what stands there. What cannot be read as asked is noted as a fault, and reads as
 * empty like what is not given at all; null is not given.
 */
public final class Place {

    private static final int LONGEST_REPEATED = 60;

    /** Beyond these a figure is no length, no temperature and no angle of an engine, and reckoning with it is not safe. */
    private static final int MOST_DIGITS = 18;

    private final @Nullable Place around;
    private final Object step;
    private final JsonNode node;
    private final Faults faults;

    private Place(@Nullable Place around, Object step, JsonNode node, Faults faults) {
        this.around = around;
        this.step = step;
        this.node = node;
        this.faults = faults;
    }

    /** The top of a body. */
    public static Place top(JsonNode node, Faults faults) {
        return new Place(null, "", node, faults);
    }

    /** Where this is (RFC 6901); worked out only when asked, for most places have no fault. */
    public String pointer() {
        return around == null
                ? ""
                : around.pointer() + "/" + step.toString().replace("~", "~0").replace("/", "~1");
    }

    /** Whether something stands here. */
    public boolean isGiven() {
        return !node.isMissingNode() && !node.isNull();
    }

    /** Whether a list stands here. */
    public boolean isList() {
        return node.isArray();
    }

    /** Whether a text stands here. */
    public boolean isText() {
        return node.isTextual();
    }

    /** The member of a name. */
    public Place at(String name) {
        return new Place(this, name, node.isObject() ? node.path(name) : MissingNode.getInstance(), faults);
    }

    /** Whether an object stands here; notes members other than those known. */
    public boolean isObject(String... known) {
        if (!isGiven()) {
            return false;
        }
        if (!node.isObject()) {
            wrongForm("an object");
            return false;
        }
        List<String> names = Arrays.asList(known);
        node.fieldNames().forEachRemaining(name -> checkKnown(name, names));
        return true;
    }

    private void checkKnown(String name, List<String> known) {
        if (known.contains(name)) {
            return;
        }
        Fault unknown = Fault.of(
                        ProblemType.UNKNOWN_FIELD, at(name).pointer(), "\"" + shortened(name) + "\" is not known here.")
                .against("known here: " + String.join(", ", known));
        List<String> near = isTold() ? NearNames.of(name, known) : List.of();
        faults.add(near.isEmpty() ? unknown : unknown.suggesting(new Suggestion(near.get(0), "the nearest name")));
    }

    /** The members of a list; notes a fault and reads none when there are too many. */
    public List<Place> items(int most, String what) {
        if (!isGiven()) {
            return List.of();
        }
        if (!node.isArray()) {
            wrongForm("a list of " + what);
            return List.of();
        }
        if (node.size() > most) {
            add(Fault.of(ProblemType.WRONG_FORM, pointer(), node.size() + " " + what + " are more than are read.")
                    .against("at most " + most)
                    .wayOut("Leave out what the question does not need."));
            return List.of();
        }
        List<Place> items = new ArrayList<>(node.size());
        for (int i = 0; i < node.size(); i++) {
            items.add(new Place(this, i, node.get(i), faults));
        }
        return items;
    }

    /** The text here, on one line. */
    public Optional<String> text() {
        return legible(Legible::flaw);
    }

    /** The text here, of one line or several. */
    public Optional<String> lines() {
        return legible(Legible::flawOfLines);
    }

    private Optional<String> legible(Function<String, Optional<String>> flaw) {
        if (isGiven() && !node.isTextual()) {
            wrongForm("a text in quotes");
        }
        Optional<String> text = node.isTextual() ? Optional.of(node.textValue()) : Optional.empty();
        Optional<String> wrong = text.flatMap(flaw);
        // What was sent is not repeated: it is just what cannot be shown.
        wrong.ifPresent(reason ->
                add(Fault.of(ProblemType.WRONG_FORM, pointer(), reason).wayOut(Legible.WAY_OUT)));
        return text.filter(sent -> wrong.isEmpty());
    }

    /** Yes or no. */
    public Optional<Boolean> truth() {
        if (isGiven() && !node.isBoolean()) {
            wrongForm("true or false");
        }
        return isGiven() && node.isBoolean() ? Optional.of(node.booleanValue()) : Optional.empty();
    }

    /** The number here, exactly as typed. */
    public Optional<BigDecimal> number() {
        if (!isGiven()) {
            return Optional.empty();
        }
        if (!node.isNumber()) {
            notANumber();
            return Optional.empty();
        }
        BigDecimal number = node.decimalValue();
        if (number.precision() > MOST_DIGITS || Math.abs((long) number.scale()) > MOST_DIGITS) {
            fault(ProblemType.BAD_FIGURE, "The figure has too many digits.", "at most " + MOST_DIGITS + " digits");
            return Optional.empty();
        }
        return Optional.of(number);
    }

    private void notANumber() {
        if (node.isContainerNode()) {
            wrongForm("a number");
        } else {
            String typed = shortened(node.asText());
            String sent = node.isTextual() ? "\"" + typed + "\"" : typed;
            add(Fault.of(ProblemType.BAD_FIGURE, pointer(), sent + " is not a number.")
                    .sent(sent())
                    .wayOut("Send a plain decimal number without quotes, with a point before the decimals."));
        }
    }

    /** One of several words. */
    public <W> Optional<W> word(List<W> allowed, Function<W, String> label) {
        Optional<String> typed = text();
        Optional<W> meant = typed.flatMap(text -> among(allowed, label, text));
        if (typed.isPresent() && meant.isEmpty()) {
            unknownWord(
                    ProblemType.UNKNOWN_WORD,
                    typed.get(),
                    allowed.stream().map(label).toList());
        }
        return meant;
    }

    private static <W> Optional<W> among(List<W> allowed, Function<W, String> label, String text) {
        for (W word : allowed) {
            if (label.apply(word).equals(text)) {
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }

    /** Notes a word that is not one of those allowed. */
    public void unknownWord(ProblemType type, String typed, List<String> allowed) {
        Fault unknown = Fault.of(type, pointer(), "\"" + shortened(typed) + "\" is not known here.")
                .sent(sent())
                .against(NearNames.either(allowed))
                .wayOut("Use one of: " + String.join(", ", allowed) + ".");
        List<String> near = isTold() ? NearNames.of(typed, allowed) : List.of();
        add(near.isEmpty() ? unknown : unknown.suggesting(new Suggestion(near.get(0), "the nearest word")));
    }

    /** Notes that something is needed here; what was sent in a wrong form is noted already. */
    public void need(String why) {
        if (!isGiven()) {
            add(Fault.of(ProblemType.MISSING_FIELD, pointer(), why));
        }
    }

    /** Notes that what stands here has another form. */
    public void wrongForm(String expected) {
        add(Fault.of(ProblemType.WRONG_FORM, pointer(), "This is " + form() + " where " + expected + " belongs.")
                .sent(sent())
                .against(expected));
    }

    /** Notes a fault of what stands here. */
    public void fault(ProblemType type, String reason, String limit) {
        add(Fault.of(type, pointer(), reason).sent(sent()).against(limit));
    }

    /** Whether a fault of this place would still be told; if not, nothing need be worked out for it. */
    public boolean isTold() {
        return !faults.isFull();
    }

    /** Notes a fault. */
    public void add(Fault fault) {
        faults.add(fault);
    }

    /** What was sent here, where it is short enough to repeat. */
    public @Nullable Object sent() {
        if (node.isNumber()) {
            return node.decimalValue();
        }
        if (node.isBoolean()) {
            return node.booleanValue();
        }
        return node.isTextual() || node.isPojo() ? shortened(node.asText()) : null;
    }

    private String form() {
        return switch (node.getNodeType()) {
            case ARRAY -> "a list";
            case OBJECT -> "an object";
            case NUMBER -> "a number";
            case BOOLEAN -> "true or false";
            case STRING, BINARY -> "a text";
            case POJO -> "a figure that cannot be read";
            case NULL, MISSING -> "nothing";
        };
    }

    /** A text no longer than is repeated. */
    public static String shortened(String text) {
        return Legible.first(LONGEST_REPEATED, text);
    }
}
