package org.borewright.page.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.PresentSize.KnownFrom;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.order.OrderKind;
import org.borewright.page.Entry;
import org.borewright.page.Form;

/**
 * What the desk asks about an engine, as a form.
 *
 * @param engine it is about
 * @param known how much is known of its holes
 * @param entry what was typed
 */
public record Question(EngineAnswer engine, Known known, Entry entry) {

    private static final int DEPTHS = 3;
    private static final List<String> AXES = List.of("thrust", "pin");

    /** How far the holes of the example are worn, one after the other and from the first again. */
    private static final List<Length> WEAR_OF_EXAMPLE = List.of(
            Length.ofNanometres(95_000),
            Length.ofNanometres(170_000),
            Length.ofNanometres(150_000),
            Length.ofNanometres(110_000));

    /**
     * A hole and the names of its fields.
     *
     * @param index among the holes, from 0
     * @param cylinder its name
     */
    public record Hole(int index, String cylinder) {

        /** The field of its name. */
        public String name() {
            return at() + "/cylinder";
        }

        /** The field of the name again, in an order that tells the tag of its barrel. */
        public String barrelAt() {
            return "/barrels/" + index + "/cylinder";
        }

        /** The field of the tag of its barrel. */
        public String barrel() {
            return "/barrels/" + index + "/tag";
        }

        /** The field of its one diameter. */
        public String diameter() {
            return "number:" + at() + "/diameter";
        }

        /** The field of a depth. */
        public String depth(int row) {
            return "number:" + at() + "/grid/depths/" + row;
        }

        /** The field of an axis. */
        public String axis(int column) {
            return at() + "/grid/axes/" + column;
        }

        /** The field of a reading. */
        public String reading(int row, int column) {
            return "number:" + at() + "/grid/readings/" + row + "/" + column;
        }

        private String at() {
            return "/cylinders/" + index;
        }
    }

    /** A form to begin with: in the unit that the engine steps in, worn, and at a temperature that nobody told yet. */
    static Question begun(EngineAnswer engine, Known known) {
        Form form = Form.empty().with("/unit", known.isOfHoles() ? engine.steps() : "");
        return new Question(
                engine, known, Entry.of(known.isOfHoles() ? form.with("/condition", Condition.WORN.label()) : form));
    }

    /** A form filled in, in millimetres, of an engine that ran long. */
    static Question example(EngineAnswer engine) {
        Question begun = begun(engine, Known.BORES);
        Form form = begun.entry
                .form()
                .with("/unit", LengthUnit.MILLIMETRE.symbol())
                .with("/presentSize/size", engine.sizes().get(0).size())
                .with("/presentSize/knownFrom", "record")
                .with("number:/temperature", "20");
        for (Hole hole : begun.holes()) {
            Length worn = Length.ofNanometres(engine.bore().nominal().nm())
                    .plus(WEAR_OF_EXAMPLE.get(hole.index() % WEAR_OF_EXAMPLE.size()));
            form = form.with(
                    hole.diameter(), ShownLength.of(worn, LengthUnit.MILLIMETRE).toString());
        }
        return new Question(engine, Known.BORES, Entry.of(form));
    }

    /** The same engine with more or less known of its holes: what was typed stays, but a stamp is no reading and its unit is its own. */
    Question of(Known other) {
        return known.isOfHoles() == other.isOfHoles() ? new Question(engine, other, entry) : begun(engine, other);
    }

    /**
     * The form as it is asked: with the names that nobody types. A hole without a reading is one that was not measured, and one without
     * depths was measured where the first was.
     */
    Form asked() {
        Form asked = entry.form().only(name -> !name.contains("/grid/"));
        asked = asked.with("/engine", engine.engine());
        for (Hole hole : known.isOfHoles() ? holes() : List.<Hole>of()) {
            asked = asked.with(hole.name(), hole.cylinder());
            if (isRead(hole)) {
                asked = withGrid(asked, hole);
            }
        }
        return asked;
    }

    private boolean isRead(Hole hole) {
        return rows().stream()
                .anyMatch(row -> columns().stream()
                        .anyMatch(column ->
                                !entry.typed(hole.reading(row, column)).isBlank()));
    }

    private Form withGrid(Form form, Hole hole) {
        Hole first = holes().get(0);
        boolean asFirst =
                rows().stream().allMatch(row -> entry.typed(hole.depth(row)).isBlank());
        Form asked = form;
        for (int column : columns()) {
            asked = asked.with(hole.axis(column), AXES.get(column));
        }
        for (int row : rows()) {
            asked = asked.with(hole.depth(row), entry.typed((asFirst ? first : hole).depth(row)));
            for (int column : columns()) {
                asked = asked.with(hole.reading(row, column), entry.typed(hole.reading(row, column)));
            }
        }
        return asked;
    }

    /** The holes in the maker's order. */
    public List<Hole> holes() {
        return IntStream.range(0, engine.cylinders().size())
                .mapToObj(i -> new Hole(i, engine.cylinders().get(i).cylinder()))
                .toList();
    }

    /** The rows of a grid, from 0. */
    public List<Integer> rows() {
        return IntStream.range(0, DEPTHS).boxed().toList();
    }

    /** The columns of a grid, from 0. */
    public List<Integer> columns() {
        return IntStream.range(0, AXES.size()).boxed().toList();
    }

    /** The name of a column. */
    public String axis(int column) {
        return AXES.get(column);
    }

    /** How much may be known. */
    public List<Known> knowledge() {
        return List.of(Known.values());
    }

    /** The units to choose among; a stamp tells its own where it is clear. */
    public Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        if (!known.isOfHoles()) {
            units.put("", "as the stamp tells");
        }
        units.put("mm", "millimetres");
        units.put("in", "inches");
        return units;
    }

    /** The sizes to choose among. */
    public Map<String, String> sizes() {
        return unknownOr(engine.sizes(), EngineAnswer.SizeAnswer::size);
    }

    /** Where the present size may be known from. */
    public Map<String, String> sources() {
        return unknownOr(List.of(KnownFrom.values()), KnownFrom::label);
    }

    /** How the holes may have been found. */
    public Map<String, String> conditions() {
        Map<String, String> conditions = new LinkedHashMap<>();
        for (Condition condition : Condition.values()) {
            conditions.put(condition.label(), condition.label());
        }
        return conditions;
    }

    /** What may be ordered. */
    public Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (OrderKind kind : OrderKind.values()) {
            kinds.put(kind.label(), kind.label());
        }
        return kinds;
    }

    private static <W> Map<String, String> unknownOr(List<W> all, Function<W, String> label) {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "not known");
        all.forEach(one -> choices.put(label.apply(one), label.apply(one)));
        return choices;
    }
}
