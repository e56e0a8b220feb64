package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.surveys;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.Hold;
import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoldAnswerTest {

    /** Source: 0.2 mm = 0.007 874 0… in, which as an upper limit is shown rounded down. */
    @ParameterizedTest(name = "skim {0} after {1}, in {3}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
            0.25 | 0 | 1.7 | MILLIMETRE | Skim at most 0.200 mm altogether, or find a thicker gasket.
            0.25 | 0 | 1.7 | INCH | Skim at most 0.007874 in altogether, or find a thicker gasket.
            0.05 | 0.200 | 1.7 | MILLIMETRE | Skim at most 0.200 mm altogether, or find a thicker gasket.
            0.05 | 0.200001 | 1.7 | MILLIMETRE | No skim less puts it back: ask a specialist about another block or barrel. A thicker gasket may rescue it, where one is found.
            0 | 0.300 | 1.7 | MILLIMETRE | No skim less puts it back: ask a specialist about another block or barrel. A thicker gasket may rescue it, where one is found.
            0 | 0.300001 | 1.7 | MILLIMETRE | No skim less puts it back: ask a specialist about another block or barrel.
            0.300 | 0 | 1.7 | MILLIMETRE | Skim at most 0.200 mm altogether, or find a thicker gasket.
            0.300001 | 0 | 1.7 | MILLIMETRE | Skim at most 0.200 mm altogether, or at most 0.300 mm where a thicker gasket is found.
            0.300001 | 0 | 1.9 | INCH | Do not skim, or at most 0.011811 in where a thicker gasket is found.
            0.25 | 0 | 1.9 | MILLIMETRE | Do not skim, or find a thicker gasket.
            0.300001 | 0 | 1.6 | MILLIMETRE | Skim at most 0.300 mm altogether.
            0.05 | 0.300 | 1.6 | MILLIMETRE | Skim at most 0.300 mm altogether.
            0 | 0.300001 | 1.6 | MILLIMETRE | No skim less puts it back: ask a specialist about another block or barrel.
            0.35 | 0 | 0.6 | MILLIMETRE | Skim at most 0.300 mm altogether.
            0.05 | 0.300 | 0.6 | MILLIMETRE | Skim at most 0.300 mm altogether.
            0 | 0.300001 | 0.6 | MILLIMETRE | No skim less puts it back: ask a specialist about another block or barrel.
            """)
    void tooDeepASkimSaysHowDeepItMayBe(String skim, Length before, String least, LengthUnit unit, String next) {
        TwinShop shop = new TwinShop();
        shop.pistonToHead = new Limits(mm(least), mm("2.4"));
        MatchRequest plain = shop.request(Condition.WORN, "standard", surveys("70.110", "70.020"));
        Match match = shop.ask(plain.with(new Deck(TwinShop.skimmed(skim).flatness(), mm(skim), Optional.of(before))));

        assertThat(HoldAnswer.of(match.ruling().holds().get(0), unit).next()).isEqualTo(next);
        assertThat(Sentence.of(match, unit))
                .startsWith("Hold: the size would be +0.50. ")
                .endsWith(next);
    }

    /** The twin of two holes, its depths 10 mm apart; a kind of query is told once, however many readings it concerns. */
    @ParameterizedTest(name = "{0}, in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            70.06 70.04 / 70.32 70.03 / 70.02 70.01 | 70.07 70.04 / 70.05 70.03 / 70.02 70.01 | MILLIMETRE | far from every reading beside it (70.320 mm at depth 20.000 mm, thrust)
            70.08 70.04 / 70.02 70.06 / 70.05 70.01 | 70.07 70.04 / 70.05 70.03 / 70.02 70.01 | MILLIMETRE | thrust and pin the other way round than in every other row (70.020 mm at depth 20.000 mm, thrust; 70.060 mm at depth 20.000 mm, pin)
            70.104 70.104 / 70.612 70.104 / 70.104 70.104 / 70.104 70.612 | 70.07 70.04 / 70.05 70.03 / 70.02 70.01 | INCH | far from every reading beside it (2.780 in at depth 0.787402 in, thrust; 2.780 in at depth 1.574803 in, pin)
            70.06 70.04 / 70.05 70.03 / 70.02 70.01 | 70.06 70.04 / 70.05 70.03 / 70.02 70.01 | INCH | the same grid as another cylinder (cylinder 2)
            """)
    void whatIsQueriedIsToldWithItsPlace(String first, String second, LengthUnit unit, String queried) {
        List<CylinderSurvey> surveys = List.of(surveyed("1", first), surveyed("2", second));
        TwinShop shop = new TwinShop();
        Match match = shop.ask(shop.request(Condition.WORN, "standard", surveys));

        String says = HoldAnswer.of(match.ruling().holds().get(0), unit).says();

        assertThat(says)
                .isEqualTo(
                        "A reading may be a slip, and nothing is computed from that cylinder's grid: cylinder 1. Queried: "
                                + queried + ".");
        assertThat(Sentence.of(match, unit)).endsWith(says);
    }

    private static CylinderSurvey surveyed(String cylinder, String rows) {
        return new CylinderSurvey(cylinder, Grids.grid(rows), Wall.UNKNOWN, List.of());
    }

    /** Proven from 69.990 + U to 70.040 − U with U = 0.005 281: in inches 2.755 719 7… up, and 2.757 272 3… down. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 69995281, 70034719", "INCH, 2755720, 2757272"})
    void aClearanceTooCloseToCallSaysWhatSettlesIt(LengthUnit unit, long least, long greatest) {
        HoldAnswer hold = onClearances(new TwinShop().finished("69.993", "70.010"), unit);

        assertThat(hold.next())
                .isEqualTo(
                        "Measure the pistons and pair them with the holes: a measured piston takes the place of its tolerance."
                                + " Without that, only a hole within the proven limits (provenHoles) is proven.");
        assertThat(hold.provenHoles()).singleElement().satisfies(proven -> {
            assertThat(proven.cylinder()).isEqualTo("1");
            assertThat(proven.size()).isEqualTo("standard");
            assertThat(proven.piston()).isEqualTo("P-STD");
            assertThat(proven.least().millionths()).isEqualTo(least);
            assertThat(proven.greatest().millionths()).isEqualTo(greatest);
        });
    }

    /** A tolerance of 0.050 mm leaves nothing of a window of 0.060 once U is guarded on both sides. */
    @Test
    void pistonsOfTooWideAToleranceCanOnlyBeMeasured() {
        TwinShop shop = new TwinShop();
        Piston standard = shop.pistons.get(0);
        PistonShape shape = standard.shape();
        shop.pistons.set(
                0,
                new Piston(
                        standard.number(),
                        standard.design(),
                        standard.size(),
                        standard.hand(),
                        standard.grade(),
                        new PistonShape(
                                new Limits(mm("69.900"), mm("69.950")),
                                shape.nominalBore(),
                                shape.clearance(),
                                shape.crown(),
                                shape.grooves(),
                                shape.pinSeat(),
                                shape.clipSeat(),
                                shape.mass())));

        HoldAnswer hold = onClearances(shop.finished("69.995", "69.995"), LengthUnit.MILLIMETRE);

        assertThat(hold.next())
                .endsWith(" With the tolerance of P-STD no hole is proven: only measured pistons settle it.")
                .doesNotContain("provenHoles");
        assertThat(hold.provenHoles()).hasSize(2).allMatch(proven -> proven.least() == null);
    }

    private static HoldAnswer onClearances(Match match, LengthUnit unit) {
        return match.ruling().holds().stream()
                .filter(hold -> hold.reason() == Hold.Reason.CLEARANCE_TOO_CLOSE)
                .findFirst()
                .map(hold -> HoldAnswer.of(hold, unit))
                .orElseThrow();
    }
}
