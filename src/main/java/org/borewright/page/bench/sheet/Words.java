package org.borewright.page.bench.sheet;

import io.quarkus.qute.TemplateExtension;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.kit.bench.Weighed;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.survey.Finding;

/** The words among which somebody at the bench chooses, as the API reads them; the empty one leaves it open. */
@TemplateExtension(namespace = "bench")
public final class Words {

    private Words() {}

    static Map<String, String> conditions() {
        return oneOf(Condition.values(), Condition::label);
    }

    static Map<String, String> findings() {
        return orNothing("nothing", oneOf(Finding.Kind.values(), Finding.Kind::label));
    }

    static Map<String, String> knownFrom() {
        return notTold(oneOf(PresentSize.KnownFrom.values(), PresentSize.KnownFrom::label));
    }

    static Map<String, String> grooves() {
        return notTold(oneOf(AsFound.Grooves.values(), AsFound.Grooves::label));
    }

    static Map<String, String> ridges() {
        return notTold(oneOf(AsFound.Ridge.values(), AsFound.Ridge::label));
    }

    static Map<String, String> glazes() {
        return notTold(oneOf(AsFound.Glaze.values(), AsFound.Glaze::label));
    }

    static Map<String, String> weighed() {
        return oneOf(Weighed.values(), Weighed::label);
    }

    static Map<String, String> yesOrNo() {
        return notTold(told(List.of("true", "false"), word -> word.equals("true") ? "yes" : "no"));
    }

    static Map<String, String> units() {
        return told(List.of("mm", "in"), word -> word);
    }

    static Map<String, String> scales() {
        return told(List.of("C", "F"), word -> "°" + word);
    }

    /** The scale that a temperature is read on; of what says nothing that of the API. */
    static String scale(String word) {
        return "F".equals(word) ? "°F" : "°C";
    }

    static Map<String, String> sizes(EngineAnswer engine) {
        return notTold(
                told(engine.sizes().stream().map(EngineAnswer.SizeAnswer::size).toList(), label -> label));
    }

    /** An axis as it is shown: the words as they are, an angle in degrees. */
    static String axis(String axis) {
        return Character.isDigit(axis.charAt(0)) ? axis + "°" : axis;
    }

    static Map<String, String> among(Collection<String> words) {
        return notTold(told(words, word -> word));
    }

    private static <W> Map<String, String> oneOf(W[] words, Function<W, String> label) {
        return told(Arrays.stream(words).map(label).toList(), word -> word);
    }

    private static Map<String, String> told(Collection<String> words, Function<String, String> shown) {
        Map<String, String> choices = new LinkedHashMap<>();
        words.forEach(word -> choices.put(word, shown.apply(word)));
        return choices;
    }

    private static Map<String, String> notTold(Map<String, String> choices) {
        return orNothing("not told", choices);
    }

    private static Map<String, String> orNothing(String empty, Map<String, String> choices) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", empty);
        all.putAll(choices);
        return all;
    }
}
