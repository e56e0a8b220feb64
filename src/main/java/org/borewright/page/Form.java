package org.borewright.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.jspecify.annotations.Nullable;

/**
 * What a person typed into a form, and the body of JSON that it stands for. A field is named by the JSON Pointer (RFC 6901) of its place
 * in that body: {@code /engine} holds a text, {@code number:/cylinders/0/diameter} a number and {@code truth:/mayWait} yes or no. A field
 * left empty is left out, but for {@code text:/notes}, a text that may be taken away; a dash for a number says that it cannot be measured,
 * and is null. Whatever has another name, such as {@code by}, goes beside the body.
 *
 * @param fields what was typed, by the name of the field, in the order of the form
 */
public record Form(Map<String, String> fields) {

    /** Its media type. */
    public static final String MEDIA_TYPE = "application/x-www-form-urlencoded";

    private static final String NUMBER = "number:";
    private static final String TRUTH = "truth:";
    private static final String TEXT = "text:";
    private static final List<String> KINDS = List.of(NUMBER, TRUTH, TEXT);

    /** A number as JSON writes it, or as a machinist does: .002. What is none is sent as it was typed, and refused at its place. */
    private static final Pattern FIGURE = Pattern.compile("-?(0|[1-9][0-9]{0,30}|(?=\\.))(\\.[0-9]{1,30})?");

    private static final Pattern DASH = Pattern.compile("[-–—]");
    private static final Pattern INDEX = Pattern.compile("0|[1-9][0-9]?");

    /** Twice as deep as any place in a body. */
    private static final int MOST_STEPS = 12;

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** Keeps the order of the form. */
    public Form {
        fields = new LinkedHashMap<>(fields);
    }

    /** A form that nobody filled in yet. */
    public static Form empty() {
        return new Form(Map.of());
    }

    /** Reads what a browser sent. @throws ProblemException if an escape in it is none, or a name leads deeper than any body goes */
    public static Form read(String sent) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String field : sent.split("&", -1)) {
            int end = field.indexOf('=');
            if (end > 0) {
                // A browser sends the end of each line as two characters.
                String typed = unescaped(field.substring(end + 1)).replace("\r\n", "\n");
                fields.put(shallow(unescaped(field.substring(0, end))), typed);
            }
        }
        return new Form(fields);
    }

    private static String unescaped(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException noEscape) {
            throw notOurs();
        }
    }

    private static String shallow(String name) {
        if (name.chars().filter(letter -> letter == '/').count() > MOST_STEPS) {
            throw notOurs();
        }
        return name;
    }

    /** The same form with one field filled in. */
    public Form with(String name, String value) {
        Map<String, String> more = new LinkedHashMap<>(fields);
        more.put(name, value);
        return new Form(more);
    }

    /** The same form without the fields of other names. */
    public Form only(Predicate<String> name) {
        Map<String, String> fewer = new LinkedHashMap<>(fields);
        fewer.keySet().removeIf(name.negate());
        return new Form(fewer);
    }

    /** What was typed into a field; nothing where it was not in the form. */
    public String typed(String name) {
        return fields.getOrDefault(name, "");
    }

    /** The field of a place in the body, or of a name beside it. */
    Optional<String> nameOf(String pointer) {
        return fields.keySet().stream()
                .filter(name -> pointer(name).equals(pointer))
                .findFirst();
    }

    static String pointer(String name) {
        return KINDS.stream()
                .filter(name::startsWith)
                .findFirst()
                .map(kind -> name.substring(kind.length()))
                .orElse(name);
    }

    /** The fields that go into the body, to be carried on in another form as they are. */
    public Map<String, String> question() {
        Map<String, String> asked = new LinkedHashMap<>(fields);
        asked.keySet().removeIf(name -> !pointer(name).startsWith("/"));
        return asked;
    }

    /** The body of the question. @throws ProblemException if the names of the fields do not go together */
    public byte[] body() {
        JsonNode body = NODES.objectNode();
        for (Map.Entry<String, String> field : question().entrySet()) {
            if (!field.getValue().isBlank() || field.getKey().startsWith(TEXT)) {
                body = grown(body, steps(pointer(field.getKey())), value(field));
            }
        }
        return body.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> steps(String pointer) {
        return Arrays.stream(pointer.substring(1).split("/", -1))
                .map(step -> step.replace("~1", "/").replace("~0", "~"))
                .toList();
    }

    private static JsonNode value(Map.Entry<String, String> field) {
        String typed = field.getValue().strip();
        if (field.getKey().startsWith(NUMBER) && FIGURE.matcher(typed).matches()) {
            return NODES.numberNode(new BigDecimal(typed));
        }
        if (field.getKey().startsWith(NUMBER) && DASH.matcher(typed).matches()) {
            return NODES.nullNode();
        }
        if (field.getKey().startsWith(TRUTH) && List.of("true", "false").contains(typed)) {
            return NODES.booleanNode(Boolean.parseBoolean(typed));
        }
        return NODES.textNode(typed);
    }

    /** A tree with one more leaf. A step that is a number leads into a list; what nobody filled in before it is null there. */
    private static JsonNode grown(@Nullable JsonNode tree, List<String> steps, JsonNode leaf) {
        if (steps.isEmpty()) {
            return leaf;
        }
        String step = steps.get(0);
        List<String> further = new ArrayList<>(steps.subList(1, steps.size()));
        boolean begins = tree == null || tree.isNull();
        if (INDEX.matcher(step).matches()) {
            ArrayNode list = begins ? NODES.arrayNode() : list(tree);
            int index = Integer.parseInt(step);
            while (list.size() <= index) {
                list.addNull();
            }
            list.set(index, grown(list.get(index), further, leaf));
            return list;
        }
        ObjectNode object = begins ? NODES.objectNode() : object(tree);
        object.set(step, grown(object.get(step), further, leaf));
        return object;
    }

    private static ArrayNode list(@Nullable JsonNode tree) {
        if (tree instanceof ArrayNode list) {
            return list;
        }
        throw notOurs();
    }

    private static ObjectNode object(@Nullable JsonNode tree) {
        if (tree instanceof ObjectNode object) {
            return object;
        }
        throw notOurs();
    }

    private static ProblemException notOurs() {
        return new ProblemException(Problem.of(ProblemType.BAD_REQUEST, "This is not a form of these pages."));
    }
}
