package org.borewright.order.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;
import static org.borewright.kit.TwinShop.no;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Offers;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.kit.Requests;
import org.borewright.kit.TwinShop;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.ladder.Estimate;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The twin's holes worn little enough for new rings alone: +0.25 would clean them up, and takes metal that rings leave. */
class ChoosingTest {

    private static final String WORN = "70.060 70.045 / 70.050 70.040 / 70.030 70.025";

    private static final String LIKEWISE = "70.058 70.044 / 70.049 70.041 / 70.031 70.026";
    private static final List<Length> DEPTHS = List.of(mm("10"), mm("60"), mm("110"));

    private final TwinShop shop = new TwinShop();

    /**
     * Rings only is quoted where it is certain, the same kit can be had, and nothing else was asked for; in every other case what the match
     * names, which is the smallest size that is certain, or the size that it was asked for. Where it names none, somebody has to choose.
     */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "all is known,           -,     -,          -,     rings only",
                "the glaze is not known, -,     -,          -,     rebore +0.25",
                "the glaze is not known, -,     rings only, -,     rings only",
                "no rings are to be had, -,     -,          -,     rebore +0.25",
                "no rings are to be had, -,     rings only, -,     -",
                "all is known,           +0.25, -,          -,     rebore +0.25",
                "all is known,           +0.50, -,          -,     rebore +0.50",
                "all is known,           +0.50, -,          +0.50, rebore +0.50",
                "all is known,           +0.50, rings only, -,     rings only",
                "all is known,           -,     -,          +0.50, -",
                "all is known,           -,     rebore,     -,     rebore +0.25",
                "all is known,           -,     rebore,     +0.25, rebore +0.25",
                "all is known,           -,     rings only, +0.25, -",
                "all is known,           -,     sell it,    -,     -",
                "a hole is cracked,      -,     -,          -,     -",
            })
    void whatIsQuoted(String found, String askedOfTheMatch, String way, String size, String quoted) {
        MatchRequest request = Requests.asking(
                worn(found), Optional.ofNullable(askedOfTheMatch).map(this::size));
        Choosing choosing =
                new Choosing(Optional.ofNullable(way), Optional.ofNullable(size).map(this::size));

        assertThat(chosen(choosing, request).map(ChoosingTest::name)).isEqualTo(Optional.ofNullable(quoted));
    }

    /** Whoever asks for rings only before all is known gets a price, and is told what has to turn out right. */
    @ParameterizedTest
    @CsvSource({"the glaze is not known, true", "all is known, false"})
    void whatIsNotKnownOfTheRingsIsACondition(String found, boolean open) {
        List<String> conditions = chosen(new Choosing(Optional.of("rings only"), Optional.empty()), worn(found))
                .orElseThrow()
                .conditions();

        assertThat(conditions.contains("Open: glaze of the wall.")).isEqualTo(open);
    }

    private Optional<Proposal> chosen(Choosing choosing, MatchRequest request) {
        Shelf shelf = shop.shelf();
        Estimate estimate = Estimate.of(FitTable.of(shelf), new KitFinder(shelf, new Offers(shop.offers)), request);
        return choosing.among(Proposal.of(request, estimate), request, estimate.match());
    }

    private Size size(String label) {
        return shop.shelf().size(label).orElseThrow();
    }

    private static String name(Proposal proposal) {
        return proposal.way() + proposal.size().map(size -> " " + size.label()).orElse("");
    }

    private MatchRequest worn(String found) {
        if (found.equals("no rings are to be had")) {
            shop.offers.remove(no("R-STD"));
        }
        Optional<AsFound.Glaze> glaze =
                found.equals("the glaze is not known") ? Optional.empty() : Optional.of(AsFound.Glaze.BROKEN);
        List<Finding> findings = found.equals("a hole is cracked")
                ? List.of(new Finding(Finding.Kind.CRACKED, Optional.empty(), Optional.empty()))
                : List.of();
        MatchRequest request = shop.request(
                        Condition.WORN,
                        "standard",
                        List.of(
                                new CylinderSurvey("1", Grids.grid(WORN, DEPTHS), Wall.UNKNOWN, findings),
                                new CylinderSurvey("2", Grids.grid(LIKEWISE, DEPTHS), Wall.UNKNOWN, List.of())))
                .with(TwinShop.skimmed("0"));
        return Requests.seen(request, Collections.nCopies(2, asFound(glaze)));
    }

    private AsFound asFound(Optional<AsFound.Glaze> glaze) {
        Piston standard = shop.pistons.get(0);
        return new AsFound(
                new PresentPiston(
                        Optional.of(shop.shelf().parts().designs().get(0)),
                        Optional.of(standard),
                        Optional.of(mm("69.930")),
                        new Measuring(Gauge.Kind.MICROMETER.usual(), Climate.at(Temperature.REFERENCE))),
                Optional.of(AsFound.Grooves.GOOD),
                Optional.of(AsFound.Ridge.OFF),
                glaze);
    }
}
