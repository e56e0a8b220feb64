package org.borewright.kit.request;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.ServiceLimits;
import org.borewright.fit.DeckFlatness;
import org.borewright.kit.TwinShop;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A deck that bears 0.05 mm out of flat, known to 0.010 mm, and 0.3 mm skimmed off it in all. */
class DeckTest {

    private final ServiceLimits limits = new TwinShop().shelf().engine().limits();

    @ParameterizedTest(name = "{0} out of flat, {1} to be skimmed, {2} before: {3}")
    @CsvSource({
        ", 0, 0, DECK_FLATNESS NOT_CHECKED",
        ", 0.1, 0, DECK_FLATNESS NOT_CHECKED",
        "0.040, 0, 0, DECK_FLATNESS IN",
        "0.040, 0.1, 0, DECK_FLATNESS IN",
        "0.040001, 0, 0, DECK_FLATNESS TOO_CLOSE DECK_SKIM IN",
        "0.060, 0, 0, DECK_FLATNESS OUT DECK_SKIM IN",
        "0.060, 0, 0.230, DECK_FLATNESS OUT DECK_SKIM IN",
        "0.060, 0, 0.230001, DECK_FLATNESS OUT DECK_SKIM OUT",
        "0.060, 0.069999, 0, SKIM_TO_FLAT OUT",
        "0.060, 0.070, 0, SKIM_TO_FLAT IN",
    })
    void onceItIsToBeSkimmedHowFlatItWasStandsInNobodysWay(Length found, Length skim, Length before, String told) {
        assertThat(deck(found, skim, before).checks(limits).stream()
                        .flatMap(check ->
                                Stream.of(check.rule().name(), check.outcome().name()))
                        .toList())
                .containsExactly(told.split(" "));
    }

    @ParameterizedTest(name = "{0} out of flat, {1} asked, {2} before: {3} skimmed, {4} lower")
    @CsvSource({
        ", 0, , 0, 0",
        ", 0.1, 0.2, 0.1, 0.3",
        "0.040, 0, 0.2, 0, 0.2",
        "0.040001, 0, , 0.050001, 0.050001",
        "0.060, 0.050, 0.1, 0.070, 0.170",
        "0.060, 0.070, 0.1, 0.070, 0.170",
        "0.060, 0.080, 0.1, 0.080, 0.180",
    })
    void itIsSkimmedFlatByNoMoreThanItMust(Length found, Length asked, Length before, Length skimmed, Length lowered) {
        Deck flat = deck(found, asked, before).skimmedFlat(limits);

        assertThat(flat.skim()).isEqualTo(skimmed);
        assertThat(flat.lowered()).isEqualTo(lowered);
        assertThat(flat.isToBeSkimmed()).isEqualTo(skimmed.isMoreThan(Length.ZERO));
    }

    /** An order skims its deck once: what the survey planned counts until something else is told, flatness and earlier skims likewise. */
    @ParameterizedTest(name = "{0} {1} {2} after {3} {4} {5}: {6} {7} {8}")
    @CsvSource({
        ", 0, , 0.060, 0.1, 0.2, 0.060, 0.1, 0.2",
        "0.010, 0, , 0.060, 0.1, 0.2, 0.010, 0.1, 0.2",
        ", 0.15, , 0.060, 0.1, 0.2, 0.060, 0.15, 0.2",
        ", 0, 0.3, 0.060, 0, , 0.060, 0, 0.3",
        "0.010, 0.15, 0, 0.060, 0.1, 0.2, 0.010, 0.15, 0",
        ", 0, , , 0, , , 0, ",
    })
    void aLaterLookTellsWhatItTellsAndTheEarlierTheRest(
            Length found,
            Length skim,
            Length before,
            Length foundFirst,
            Length skimFirst,
            Length beforeFirst,
            Length flatness,
            Length skimmed,
            Length earlier) {
        assertThat(deck(found, skim, before).after(deck(foundFirst, skimFirst, beforeFirst)))
                .isEqualTo(deck(flatness, skimmed, earlier));
    }

    private static Deck deck(Length found, Length skim, Length before) {
        return new Deck(
                Optional.ofNullable(found).map(known -> new DeckFlatness(known, Optional.empty())),
                skim,
                Optional.ofNullable(before));
    }
}
