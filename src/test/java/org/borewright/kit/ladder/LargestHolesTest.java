package org.borewright.kit.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.kit.Match;
import org.borewright.kit.Pistons;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.TwoMakers;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Climate;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How large a hole of the twin may read that nobody measured yet; U of a diameter is 0.005 281 mm up to 70.115 and 0.005 282 up to 70.260. */
class LargestHolesTest {

    private final TwinShop shop = new TwinShop();

    /** By the bar 2·D − 70.000 + 0.04 + 2d + 2U ≤ 70.250 − 0.05 to be certain, D + 2d ≤ 70.200 + U to be possible. */
    @ParameterizedTest(name = "{0} and {1}, the first {2} {3} deep: certain up to {4}, possible up to {5}")
    @CsvSource({
        "-, -, , , 70.074719, 70.205282",
        // what is measured decides nothing any more
        "-, 70.190, , , 70.074719, 70.205282",
        "70.060, -, SCORED, 0.05, 70.074719, 70.205282",
        // the hardest hole of those that are not
        "-, -, SCORED, 0.05, 70.024719, 70.105281",
        "-, -, SCORED, , , 70.205282",
        "-, -, CRACKED, , , ",
    })
    void theHardestHoleThatIsNotMeasuredDecides(
            String first, String second, Finding.Kind kind, Length depth, Length certain, Length possible) {
        Finding[] findings = kind == null
                ? new Finding[0]
                : new Finding[] {new Finding(kind, Optional.ofNullable(depth), Optional.empty())};

        assertThat(atQuarter(request(TwinShop.survey("1", first, findings), TwinShop.survey("2", second))))
                .contains(
                        new LargestHole(Optional.empty(), Optional.ofNullable(certain), Optional.ofNullable(possible)));
    }

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({"70.060, 70.010"})
    void whereEveryHoleIsMeasuredNothingIsLeftToRead(String first, String second) {
        assertThat(atQuarter(request(TwinShop.survey("1", first), TwinShop.survey("2", second))))
                .isEmpty();
    }

    /** At 30 °C a hole of 70.074 5 has grown by 70.074 5 × 10 × 11.4 = 7 988 nm, and U is 0.005 464 mm. */
    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"20, 70.074719", "30, 70.082524"})
    void theReadingIsThatOfTheGaugeAtTheTemperatureOfTheRequest(BigDecimal celsius, Length certain) {
        MatchRequest plain = request(TwinShop.survey("1", "-"), TwinShop.survey("2", "-"));

        assertThat(atQuarter(Requests.measured(
                                plain, Climate.at(Temperature.parse(celsius, Temperature.Scale.CELSIUS))))
                        .flatMap(LargestHole::certainUpTo))
                .contains(certain);
    }

    /**
     * The smallest hole of +0.25 is 70.230, and 70.330 is borne in service. A gap of 0.45 mm at 70.250 grows by π of the
     * diameter: to 0.80, which the first maker's grooves bear, at 70.361, and to the second's 0.55 at 70.281 8.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"R-025, 70.324717", "R2-025, 70.276547"})
    void newRingsAreJudgedOnThePistonsTheyAreMadeFor(String rings, Length certain) {
        TwoMakers makers = new TwoMakers(shop, "0.250", "40");
        shop.pistons.add(bearing(shop.pistons.remove(shop.pistons.size() - 1), "0.55"));
        Shelf shelf = makers.shelf();
        MatchRequest request = shop.request(Condition.WORN, "+0.25", TwinShop.surveys("-", "-"));
        RingSet set = shop.rings.stream()
                .filter(made -> made.number().text().equals(rings))
                .findFirst()
                .orElseThrow();

        assertThat(new LargestHoles(FitTable.of(shelf), request, makers.ask(request)).ofRings(set))
                .contains(new LargestHole(Optional.empty(), Optional.of(certain), Optional.empty()));
    }

    private static Piston bearing(Piston piston, String greatestGap) {
        GrooveShape groove = piston.shape().grooves().get(0);
        return Pistons.grooved(
                piston,
                List.of(new GrooveShape(
                        groove.name(),
                        groove.section(),
                        groove.width(),
                        groove.root(),
                        new Limits(mm("0.2"), mm(greatestGap)),
                        groove.axialPlay(),
                        groove.backClearanceLeast())));
    }

    private MatchRequest request(CylinderSurvey... holes) {
        return shop.request(Condition.WORN, "standard", Arrays.asList(holes));
    }

    private Optional<LargestHole> atQuarter(MatchRequest request) {
        Shelf shelf = shop.shelf();
        FitTable fits = FitTable.of(shelf);
        Match match = Match.of(fits, new KitFinder(shelf, new Offers(shop.offers)), request);
        return new LargestHoles(fits, request, match).of(match.table().get(1));
    }
}
