package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PistonToHeadTest {

    private static final Limits BARREL = limits("161.700", "161.800");
    private static final GasketShape GASKET =
            Deck.gasket(limits("72.000", "72.400"), limits("0.800", "0.900"), limits("0.400", "0.450"));

    /** Barrel 161.700 to 161.800 and base gasket 0.400 to 0.450, less 162.000: geometry. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            STROKE,    SKIM,     LEAST,    GREATEST
            60.000,    0,        0.100,    0.250
            60.000,    0.100,    0.000,    0.150
            60.000,    0.200,    -0.100,   0.050
            60.000,    0.000001, 0.099999, 0.249999
            60.000002, 0,        0.099999, 0.249999
            60.000001, 0,        0.099999, 0.250
            59.999999, 0,        0.100,    0.250001
            """)
    void theDeckIsWhatTheStackLeaves(Length stroke, Length skim, Length least, Length greatest) {
        DeckShape deck = Deck.deck(BARREL, stroke, Deck.head(true));
        assertThat(PistonToHead.deck(deck, GASKET, Deck.FLAT, skim)).isEqualTo(new Limits(least, greatest));
    }

    /** On top of the deck the head gasket of 0.800 to 0.900; a dome comes nearer under a flat head only. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FLAT,  DOME,  COMPRESSION HEIGHT, LEAST,  GREATEST
            true,  0,     32.000,             0.900,  1.150
            true,  0.300, 32.000,             0.600,  0.850
            false, 0.300, 32.000,             0.900,  1.150
            true,  0,     32.100,             0.800,  1.050
            true,  0,     33.000,             -0.100, 0.150
            """)
    void theHeadGasketComesOnTopAndADomeComesNearer(
            boolean flat, Length dome, Length compressionHeight, Length least, Length greatest) {
        DeckShape deck = Deck.deck(BARREL, mm("60.000"), Deck.head(flat));
        Crown crown = new Crown(compressionHeight, dome, 0);
        assertThat(PistonToHead.of(deck, GASKET, crown, Length.ZERO)).isEqualTo(new Limits(least, greatest));
    }

    /** 0.900 to 1.200 asked for; barrel and base gasket give what is typed here. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            LOWEST BARREL, HIGHEST BARREL, LEAST, GREATEST
            161.700,       161.850,        IN,    IN
            161.699999,    161.850,        OUT,   IN
            161.700,       161.850001,     IN,    OUT
            161.700001,    161.849999,     IN,    IN
            """)
    void bothDistancesAreInclusive(Length lowest, Length highest, Outcome least, Outcome greatest) {
        DeckShape deck = Deck.deck(new Limits(lowest, highest), mm("60.000"), Deck.head(true));
        List<Comparison> checks = PistonToHead.check(deck, GASKET, Deck.FLAT, Length.ZERO);
        assertThat(checks)
                .extracting(Comparison::rule)
                .containsExactly(Rule.PISTON_TO_HEAD_LEAST, Rule.PISTON_TO_HEAD_GREATEST);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(least, greatest);
    }

    @Property
    boolean everySkimBringsItNearerByItsDepth(
            @ForAll @LongRange(min = 0, max = 500_000) long skim,
            @ForAll @LongRange(min = 0, max = 500_000) long more) {
        DeckShape deck = Deck.deck(BARREL, mm("60.000"), Deck.head(true));
        return PistonToHead.of(deck, GASKET, Deck.FLAT, nm(skim + more))
                .equals(PistonToHead.of(deck, GASKET, Deck.FLAT, nm(skim)).plus(nm(-more)));
    }

    @Property
    boolean anOddStrokeNeverFlattersEitherEnd(@ForAll @LongRange(min = 59_000_000, max = 60_000_000) long stroke) {
        DeckShape deck = Deck.deck(BARREL, nm(stroke), Deck.head(true));
        Limits left = PistonToHead.deck(deck, GASKET, Deck.FLAT, Length.ZERO);
        long twiceLeast = 2 * (161_700_000L + 400_000 - 132_000_000) - stroke;
        long twiceGreatest = 2 * (161_800_000L + 450_000 - 132_000_000) - stroke;
        return 2 * left.least().nanometres() <= twiceLeast
                && 2 * left.greatest().nanometres() >= twiceGreatest;
    }
}
