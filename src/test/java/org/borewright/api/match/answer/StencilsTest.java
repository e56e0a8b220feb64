package org.borewright.api.match.answer;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.borewright.api.shown.ShownCheck;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Engine;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Stocktaking;
import org.borewright.fit.Check;
import org.borewright.kit.Match;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is copied from a stencil says the same, to the byte, as what is written anew. */
class StencilsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    static final ObjectMapper JSON = new ObjectMapper()
            .registerModule(new JavaTimeModule())
            .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);

    private static final Catalogue DEMO = demo();

    private static Catalogue demo() {
        Delivery delivery = Delivery.from(Path.of("catalog-data"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    static List<String> engines() {
        return DEMO.engines().stream().map(Engine::code).toList();
    }

    @ParameterizedTest
    @MethodSource("engines")
    void aStencilSaysWhatItWasCutFrom(String engine) throws JsonProcessingException {
        FitTable fits = FitTable.of(DEMO.shelf(engine).orElseThrow());
        Match match = match(fits, Length.ZERO);
        for (LengthUnit unit : LengthUnit.values()) {
            Stencils stencils = new Stencils(JSON, fits, unit);

            assertThat(written(stencils.checks(match.checks()))).isEqualTo(anew(match.checks(), unit));
            assertThat(written(stencils.torques(match.torques())))
                    .isEqualTo(written(match.torques().stream()
                            .map(torque -> TorqueAnswer.of(torque, unit))
                            .toList()));
            assertThat(written(stencils.operations(match.work())))
                    .isEqualTo(written(match.work().lines().stream()
                            .map(OperationsAnswer.LineAnswer::of)
                            .toList()));
        }
    }

    @ParameterizedTest
    @MethodSource("engines")
    void checksOfASkimmedDeckAreWrittenAnew(String engine) throws JsonProcessingException {
        FitTable fits = FitTable.of(DEMO.shelf(engine).orElseThrow());
        Match match = match(fits, Length.ofMicrometres(50));

        assertThat(written(new Stencils(JSON, fits, LengthUnit.MILLIMETRE).checks(match.checks())))
                .isEqualTo(anew(match.checks(), LengthUnit.MILLIMETRE));
    }

    @ParameterizedTest
    @MethodSource("engines")
    void aBillIsOfTheDayItIsAskedFor(String engine) throws JsonProcessingException {
        FitTable fits = FitTable.of(DEMO.shelf(engine).orElseThrow());
        Stencils stencils = new Stencils(JSON, fits, LengthUnit.MILLIMETRE);
        List<Kit> kits = match(fits, Length.ZERO).table().stream()
                .flatMap(row -> row.kit().stream())
                .toList();

        assertThat(kits).isNotEmpty();
        for (LocalDate day : List.of(DAY, DAY, DAY.plusDays(1), DAY)) {
            for (Kit kit : kits) {
                assertThat(written(stencils.bill(kit, day))).isEqualTo(written(BillAnswer.of(kit, day)));
                assertThat(written(stencils.brief(kit, day))).isEqualTo(written(SizeRowAnswer.KitSummary.of(kit, day)));
            }
        }
    }

    /** A kit is asked for by the hundred where grades go into many holes: each time another, though it says the same. */
    @Test
    void noMoreBillsAreKeptThanKitsAreRemembered() throws JsonProcessingException {
        FitTable fits = FitTable.of(DEMO.shelf("TORRESK-P2").orElseThrow());
        Stencils stencils = new Stencils(JSON, fits, LengthUnit.MILLIMETRE);
        Kit kit = match(fits, Length.ZERO).table().get(0).kit().orElseThrow();
        String said = written(BillAnswer.of(kit, DAY));

        for (int asked = 0; asked <= 2 * KitFinder.mostRemembered(); asked++) {
            Kit another = new Kit(
                    kit.outfit(), kit.gaskets(), kit.needs(), kit.lines(), kit.surplus(), kit.missing(), kit.total());
            assertThat(written(stencils.bill(another, DAY))).isEqualTo(said);
            assertThat(stencils.bills()).isBetween(1, KitFinder.mostRemembered());
        }
    }

    private static Match match(FitTable fits, Length skim) {
        Engine engine = fits.shelf().engine();
        Length worn = engine.bore().asNew().least().plus(Length.ofMicrometres(30));
        return Match.of(
                fits,
                new KitFinder(fits.shelf(), DEMO.offers()),
                new MatchRequest(
                        Condition.WORN,
                        new PresentSize(fits.shelf().size("standard"), PresentSize.KnownFrom.RECORD),
                        engine.cylinders().stream()
                                .map(hole -> new CylinderSurvey(
                                        hole.name(), new SingleDiameter(worn), Wall.UNKNOWN, List.of()))
                                .toList(),
                        Gauge.Kind.BORE_GAUGE.usual(),
                        Climate.at(Temperature.REFERENCE),
                        new Deck(Optional.empty(), skim, Optional.empty()),
                        Optional.empty(),
                        DAY));
    }

    private static String anew(List<Check> checks, LengthUnit unit) throws JsonProcessingException {
        return written(checks.stream().map(check -> ShownCheck.of(check, unit)).toList());
    }

    private static String written(Object value) throws JsonProcessingException {
        return JSON.writeValueAsString(value);
    }
}
