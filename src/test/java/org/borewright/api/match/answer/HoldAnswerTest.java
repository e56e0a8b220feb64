package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.surveys;

import org.borewright.kit.Match;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoldAnswerTest {

    /** Source: 0.2 mm = 0.007 874 0… in, which as an upper limit is shown rounded down. */
    @ParameterizedTest(name = "skim {0} in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            0.25 | 1.7 | MILLIMETRE | Skim at most 0.200 mm altogether, or find a thicker gasket kit.
            0.25 | 1.7 | INCH | Skim at most 0.007874 in altogether, or find a thicker gasket kit.
            0.25 | 1.9 | MILLIMETRE | Do not skim, or find a thicker gasket kit.
            0.35 | 0.6 | MILLIMETRE | Skim at most 0.300 mm altogether.
            """)
    void too_deep_a_skim_says_how_deep_it_may_be(String skim, String least, LengthUnit unit, String next) {
        TwinShop shop = new TwinShop();
        shop.pistonToHead = new Limits(mm(least), mm("2.4"));
        MatchRequest plain = shop.request(Condition.WORN, "standard", surveys("70.110", "70.020"));
        Match match = shop.ask(new MatchRequest(
                plain.condition(),
                plain.present(),
                plain.cylinders(),
                plain.gauge(),
                plain.climate(),
                TwinShop.skimmed(skim),
                plain.asked(),
                plain.on()));

        assertThat(HoldAnswer.of(match.ruling().holds().get(0), unit).next()).isEqualTo(next);
        assertThat(Sentence.of(match, unit))
                .startsWith("Hold: the size would be +0.50. ")
                .endsWith(next);
    }
}
