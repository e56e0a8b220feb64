package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.fit.shape.HeadShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompressionRatioTest {

    private static final GasketShape GASKET =
            Deck.gasket(limits("72.000", "72.400"), limits("1.000", "1.100"), limits("0", "0"));

    /** Bore 90, stroke 100 mm, clearance 65 cm³: swept 636.1725 cm³, 10.787 269 (geometry). */
    @ParameterizedTest
    @CsvSource({
        "636.172512352, 65, 10.787269",
        "500, 50, 11",
        "0, 50, 1",
        "636.1725, 0, Infinity",
        "636.1725, -4, Infinity",
        "1, NaN, Infinity"
    })
    void isSweptAndClearanceOverClearance(double swept, double clear, double ratio) {
        if (Double.isInfinite(ratio)) {
            assertThat(CompressionRatio.of(swept, clear)).isInfinite().isPositive();
        } else {
            assertThat(CompressionRatio.of(swept, clear)).isCloseTo(ratio, within(5e-7));
        }
    }

    /** Worked out in decimals of forty digits: lowest barrel, thinnest gasket, smallest opening. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FINISH, BARREL,  DOME cm³, SKIM,  RATIO
            70.000, 162.500, 0,        0,     9.882499694182
            70.500, 162.500, 0,        0,     10.000294470104
            70.000, 162.500, 3,        0,     11.041301766131
            70.000, 162.500, -4,       0,     8.697997790913
            70.000, 162.500, 0,        0.200, 10.153520160940
            70.000, 162.300, 0,        0,     10.153520160940
            70.000, 161.800, 0,        0,     10.909402814676
            """)
    void theHighestTheTolerancesAllowIsTaken(Length finish, Length barrel, double dome, Length skim, double ratio) {
        Limits barrels = new Limits(barrel, barrel.plus(mm("0.300")));
        Crown crown = new Crown(mm("32.000"), Length.ZERO, dome);
        double highest = CompressionRatio.highest(
                Limits.exactly(finish), Deck.deck(barrels, mm("60.000"), Deck.head(true)), GASKET, crown, skim);
        assertThat(highest).isCloseTo(ratio, within(1e-11));
    }

    /** Worked out in decimals of forty digits: highest barrel, thickest gasket, largest opening. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FINISH, BARREL,  DOME cm³, SKIM,  RATIO
            70.000, 162.500, 0,        0,     9.363980661928
            70.500, 162.500, 0,        0,     9.470350192503
            70.000, 162.500, -4,       0,     8.305494003891
            70.000, 162.500, 0,        0.200, 9.603855601491
            """)
    void theLowestTheTolerancesAllowIsToldBesideIt(
            Length finish, Length barrel, double dome, Length skim, double ratio) {
        Limits barrels = new Limits(barrel, barrel.plus(mm("0.300")));
        Crown crown = new Crown(mm("32.000"), Length.ZERO, dome);
        double lowest = CompressionRatio.lowest(
                Limits.exactly(finish), Deck.deck(barrels, mm("60.000"), Deck.head(true)), GASKET, crown, skim);
        assertThat(lowest).isCloseTo(ratio, within(1e-11));
    }

    /** Any piston in tolerance may be the one: the ratio rises with the hole, and falls with it only where the dome fills the chamber. */
    @Test
    void ofSeveralFinishesTheOneThatMakesItHighestOrLowestCounts() {
        DeckShape deck = Deck.deck(limits("162.500", "162.800"), mm("60.000"), Deck.head(true));
        Limits finishes = limits("70.000", "70.500");
        Crown flat = new Crown(mm("32.000"), Length.ZERO, 0);

        assertThat(CompressionRatio.highest(finishes, deck, GASKET, flat, Length.ZERO))
                .isCloseTo(10.000294470104, within(1e-11));
        assertThat(CompressionRatio.lowest(finishes, deck, GASKET, flat, Length.ZERO))
                .isCloseTo(9.363980661928, within(1e-11));
    }

    /** Chamber of 65 cm³, piston level with the deck, gasket of no thickness: 10.787 269 4…, rounded up to 10.787 270. */
    @ParameterizedTest
    @CsvSource({"10787270, IN", "10787269, OUT", "10787271, IN"})
    void theLimitIsJudgedAtTheMillionth(long ratioGreatest, Outcome outcome) {
        HeadShape head = new HeadShape(65, true, Optional.empty(), mm("95.000"), ratioGreatest);
        DeckShape deck = Deck.deck(limits("182.000", "182.000"), mm("100.000"), head);
        Comparison check =
                CompressionRatio.check(Limits.exactly(mm("90.000")), deck, noGasket(), Deck.FLAT, Length.ZERO);
        assertThat(check.value()).isEqualTo(new Amount(10_787_270, Quantity.RATIO));
        assertThat(check.outcome()).isEqualTo(outcome);
    }

    /** A crown that fills the chamber: from no clearance down the ratio has no end, and never passes for a low one. */
    @ParameterizedTest
    @CsvSource({"20", "25", "1000"})
    void withoutClearanceEveryLimitIsBroken(double dome) {
        HeadShape head = new HeadShape(20, true, Optional.empty(), mm("75.000"), 99_000_000);
        DeckShape deck = Deck.deck(limits("162.000", "162.000"), mm("60.000"), head);
        Crown crown = new Crown(mm("32.000"), Length.ZERO, dome);
        assertThat(CompressionRatio.check(Limits.exactly(mm("70.000")), deck, noGasket(), crown, Length.ZERO)
                        .outcome())
                .isEqualTo(Outcome.OUT);
    }

    @Property
    boolean everySkimRaisesIt(
            @ForAll @LongRange(min = 0, max = 300_000) long skim,
            @ForAll @LongRange(min = 1_000, max = 200_000) long more) {
        return highest(mm("70.000"), nm(skim)) < highest(mm("70.000"), nm(skim + more));
    }

    @Property
    boolean everyLargerSizeRaisesIt(
            @ForAll @LongRange(min = 60_000_000, max = 71_000_000) long finish,
            @ForAll @LongRange(min = 1_000, max = 500_000) long larger) {
        return highest(nm(finish), Length.ZERO) < highest(nm(finish + larger), Length.ZERO);
    }

    @Property
    boolean aThickerGasketNeverRaisesIt(
            @ForAll @LongRange(min = 0, max = 2_000_000) long head,
            @ForAll @LongRange(min = 0, max = 2_000_000) long base,
            @ForAll @LongRange(min = 1_000, max = 500_000) long thicker) {
        return highest(head + thicker, base) < highest(head, base)
                && highest(head, base + thicker) < highest(head, base);
    }

    private static double highest(long head, long base) {
        GasketShape gasket =
                Deck.gasket(limits("72.000", "72.400"), Limits.exactly(nm(head)), Limits.exactly(nm(base)));
        return CompressionRatio.highest(
                Limits.exactly(mm("70.000")),
                Deck.deck(limits("162.500", "162.500"), mm("60.000"), Deck.head(true)),
                gasket,
                Deck.FLAT,
                Length.ZERO);
    }

    private static double highest(Length finish, Length skim) {
        DeckShape deck = Deck.deck(limits("162.500", "162.500"), mm("60.000"), Deck.head(true));
        return CompressionRatio.highest(Limits.exactly(finish), deck, GASKET, Deck.FLAT, skim);
    }

    private static GasketShape noGasket() {
        return Deck.gasket(limits("91.000", "91.000"), limits("0", "0"), limits("0", "0"));
    }
}
