package org.borewright.page.bench.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.borewright.page.Form;

/** What goes from one question into the next as it was told, so that nobody enters it twice. */
public final class Carried {

    private static final Pattern OF_A_SURVEY =
            Pattern.compile("(number:|truth:)?/(engine|unit|temperatureUnit|condition|temperature|gauge/.*"
                    + "|deckFlatness|deckFlatnessUncertainty|deckSkim|skimmedBefore"
                    + "|cylinders/\\d+/(cylinder|diameter|grid/.*|readingsChecked|findings/.*))");

    private static final Pattern OF_A_PAIRING = Pattern.compile(
            "(number:|truth:)?/(engine|unit|temperatureUnit|size|design|gauge/.*|pistonTemperature|pistonGauge/.*|weighed|pistons/.*)");

    private Carried() {}

    /** What a survey tells the bench: the holes as found, how they were measured, and the deck. */
    public static Form fromSurvey(Form survey) {
        return only(survey, OF_A_SURVEY);
    }

    /** What a pairing tells the judgement: the pistons as measured. */
    public static Form fromPairing(Form pairing) {
        return only(pairing, OF_A_PAIRING);
    }

    private static Form only(Form form, Pattern names) {
        return left(form, name -> names.matcher(name).matches());
    }

    private static Form left(Form form, Predicate<String> stays) {
        Map<String, String> fields = new LinkedHashMap<>(form.fields());
        fields.keySet().removeIf(stays.negate());
        return new Form(fields);
    }

    /** The same without what was seen in the holes. */
    public static Form withoutFindings(Form form) {
        return left(form, name -> !name.contains("/findings/"));
    }

    /** The fields of a question that stand nowhere on the page, to be sent along unseen. */
    public static Map<String, String> unseen(Form form, Predicate<String> seen) {
        return new Form(form.question())
                .fields().entrySet().stream()
                        .filter(field -> !seen.test(field.getKey()))
                        .collect(
                                LinkedHashMap::new,
                                (all, field) -> all.put(field.getKey(), field.getValue()),
                                Map::putAll);
    }
}
