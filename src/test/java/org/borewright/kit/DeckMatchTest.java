package org.borewright.kit;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Strokes;
import org.borewright.fit.Check;
import org.borewright.fit.DeckFlatness;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A deck as found: the twin's must be flat to 0.05 mm and bears 0.3 mm of skims; a reading of it is worth 0.010 mm. */
class DeckMatchTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "out of flat {0}, skim {1}, before {2}: {3} {4}")
    @CsvSource({
        ", 0, 0, serves, ''",
        "0.040, 0, 0, serves, ''",
        "0.040001, 0, 0, hold, DECK_FLATNESS",
        "0.060, 0, 0, hold, DECK_FLATNESS",
        "0.060, 0.070, 0, serves, ''",
        "0.060, 0.069999, 0, hold, SKIM_TO_FLAT",
        "0.040001, 0.050, 0, hold, SKIM_TO_FLAT",
        "0.040, 0.001, 0, serves, ''",
        // what would make it flat is asked before anybody skims
        "0.290, 0, 0, hold, DECK_FLATNESS",
        "0.290001, 0, 0, hold, DECK_FLATNESS DECK_SKIM",
        "0.290, 0, 0.000001, hold, DECK_FLATNESS DECK_SKIM",
        // all skims count
        "0.060, 0.070, 0.230, serves, ''",
        "0.060, 0.070, 0.230001, hold, DECK_SKIM",
        "0.060, 0.070, , serves, ''",
        ", 0, 0.300, serves, ''",
        ", 0, 0.300001, hold, DECK_SKIM",
    })
    void aDeckIsSkimmedAsNeededAndNoDeeperThanItBears(
            Length found, String skim, Length before, String verdict, String holding) {
        Match match = ask(found, skim, before);

        assertThat(match.ruling().verdict().label()).isEqualTo(verdict);
        assertThat(match.ruling().holds().stream()
                        .flatMap(hold -> hold.checks().stream())
                        .map(check -> check.rule().name())
                        .distinct()
                        .collect(joining(" ")))
                .isEqualTo(holding);
    }

    /** Least piston to head 1.9 mm as made, 1.7 asked for. */
    @ParameterizedTest(name = "skim {0}, before {1}: {2}")
    @CsvSource({"0.100, 0.100, serves", "0.100, 0.100001, hold", "0, 0.200, serves", "0, 0.200001, hold"})
    void anEarlierSkimBringsThePistonNearerAsWell(String skim, Length before, String verdict) {
        shop.pistonToHead = new Limits(mm("1.7"), mm("2.4"));

        assertThat(ask(mm("0.02"), skim, before).ruling().verdict().label()).isEqualTo(verdict);
    }

    @ParameterizedTest(name = "out of flat {0}, skim {1}: at least {2}")
    @CsvSource({", 0, ", "0.040, 0, ", "0.040001, 0, 0.050001", "0.080, 0, 0.090", "0.080, 0.2, 0.090"})
    void theLeastSkimIsNamedWhereOneIsNeeded(Length found, String skim, Length least) {
        Deck deck = new Deck(flatness(found), mm(skim), Optional.empty());

        assertThat(deck.leastSkim(shop.shelf().engine().limits())).isEqualTo(Optional.ofNullable(least));
    }

    @ParameterizedTest(name = "holes of {0}")
    @CsvSource({"70.110", "-"})
    void aDeckThatNobodyMeasuredIsNotCheckedAndItIsSaidHow(String diameter) {
        MatchRequest plain = shop.request(Condition.WORN, "standard", TwinShop.surveys(diameter, diameter));

        List<Check> checks = shop.ask(with(plain, new Deck(Optional.empty(), Length.ZERO, Optional.of(Length.ZERO))))
                .checks();

        assertThat(checks)
                .filteredOn(check -> check.rule() == Rule.DECK_FLATNESS)
                .containsExactly(DeckFlatness.NOT_MEASURED)
                .extracting(Check::outcome)
                .containsExactly(Outcome.NOT_CHECKED);
    }

    @ParameterizedTest(name = "{0}-stroke, out of flat {1}, skim {2}, before {3}: {4} {5}")
    @CsvSource({
        "FOUR, 0.040, 0, 0, SKIM_NOT_NEEDED, false",
        "FOUR, 0.040, 0.1, 0, SKIM_NOT_NEEDED, true",
        "FOUR, 0.060, 0.1, 0, SKIM_NOT_NEEDED, false",
        "FOUR, , 0.1, 0, SKIM_NOT_NEEDED, false",
        "FOUR, , 0, , EARLIER_SKIMS_NOT_STATED, true",
        "FOUR, , 0, 0, EARLIER_SKIMS_NOT_STATED, false",
        "FOUR, , 0, 0, SKIMMED_DECK, false",
        "FOUR, , 0, 0.1, SKIMMED_DECK, true",
        "FOUR, , 0.1, 0, VALVE_ROOM, true",
        "FOUR, , 0, 0, VALVE_ROOM, false",
        "FOUR, , 0.1, 0, CUT_BASE, false",
        "TWO, , 0.1, 0, CUT_BASE, true",
        "TWO, , 0, 0, CUT_BASE, false",
        "TWO, , 0.1, 0, VALVE_ROOM, false",
    })
    void aDeckBringsItsOwnCautions(
            Strokes strokes, Length found, String skim, Length before, Caution caution, boolean due) {
        shop.strokes = strokes;

        assertThat(ask(found, skim, before).cautions().contains(caution)).isEqualTo(due);
    }

    private Match ask(Length found, String skim, Length before) {
        return shop.ask(with(
                shop.request(Condition.WORN, "standard", TwinShop.surveys("70.110", "70.020")),
                new Deck(flatness(found), mm(skim), Optional.ofNullable(before))));
    }

    private static Optional<DeckFlatness> flatness(Length found) {
        return Optional.ofNullable(found).map(known -> new DeckFlatness(known, Optional.empty()));
    }

    private static MatchRequest with(MatchRequest plain, Deck deck) {
        return plain.with(deck);
    }
}
