package org.borewright.page.bench.sheet;

import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.borewright.page.Form;

/** What goes from one question into the next as it was told, so that nobody enters it twice. */
public final class Carried {

    private static final String DECK = "deckFlatness|deckFlatnessUncertainty|deckSkim|skimmedBefore";

    private static final Pattern OF_A_SURVEY =
            Pattern.compile("(number:|truth:)?/(engine|unit|temperatureUnit|condition|temperature|gauge/.*" + "|" + DECK
                    + "|cylinders/\\d+/(cylinder|diameter|grid/.*|readingsChecked|findings/.*))");

    private static final Pattern OF_A_PAIRING = Pattern.compile(
            "(number:|truth:)?/(engine|unit|temperatureUnit|size|design|gauge/.*|pistonTemperature|pistonGauge/.*|weighed|pistons/.*|"
                    + DECK + ")");

    private Carried() {}

    /** What a survey tells the bench: the holes as found, how they were measured, and the deck. */
    public static Form fromSurvey(Form survey) {
        return only(survey, OF_A_SURVEY);
    }

    /** What a pairing tells the judgement: the pistons as measured, and the deck. */
    public static Form fromPairing(Form pairing) {
        return only(pairing, OF_A_PAIRING);
    }

    private static Form only(Form form, Pattern names) {
        return form.only(name -> names.matcher(name).matches());
    }

    /** The same without what was seen in the holes. */
    public static Form withoutFindings(Form form) {
        return form.only(name -> !name.contains("/findings/"));
    }

    /** The fields of a question that stand nowhere on the page, to be sent along unseen. */
    public static Map<String, String> unseen(Form form, Predicate<String> seen) {
        return form.only(seen.negate()).question();
    }
}
