package org.borewright.api.match.request;

import java.util.Optional;
import org.borewright.api.asked.GaugeReader;
import org.borewright.api.asked.Place;
import org.borewright.api.asked.Ruler;
import org.borewright.fit.DeckFlatness;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Length;

/** Reads what was found of the deck, and what is to be done to it. */
public final class DeckReader {

    private static final Length DEEPEST_SKIM = Length.ofMicrometres(5_000);

    private DeckReader() {}

    /** What is said of the deck by the members of one object. */
    public static Deck read(Place top, Ruler ruler) {
        Place flatness = top.at("deckFlatness");
        Place uncertainty = top.at("deckFlatnessUncertainty");
        if (uncertainty.isGiven()) {
            flatness.need("The uncertainty of a reading of the deck is given, and the reading is not.");
        }
        Optional<Length> stated = ruler.above(uncertainty, GaugeReader.WORST_GAUGE);
        return new Deck(
                ruler.upTo(flatness, DEEPEST_SKIM).map(found -> new DeckFlatness(found, stated)),
                ruler.upTo(top.at("deckSkim"), DEEPEST_SKIM).orElse(Length.ZERO),
                ruler.upTo(top.at("skimmedBefore"), DEEPEST_SKIM));
    }
}
