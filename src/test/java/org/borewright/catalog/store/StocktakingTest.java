package org.borewright.catalog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Offer;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.fit.CommonPractice;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What rows leave open is common practice, and what grows with the size grows. The two engines of the small catalogue. */
class StocktakingTest {

    private static final Catalogue SMALL = small();

    private static Catalogue small() {
        Delivery delivery = Delivery.from(Path.of("src/test/resources/catalog-small"));
        return Stocktaking.of(delivery.rows(), delivery.revision(), Instant.EPOCH);
    }

    private static Shelf shelf(String engine) {
        return SMALL.shelf(engine).orElseThrow();
    }

    @Test
    void whatAnEngineLeavesOpenIsCommonPractice() {
        BoreSpec bore = shelf("HALVERN-T2").engine().bore();

        assertThat(bore.honeStock()).isEqualTo(CommonPractice.honeStock());
        assertThat(bore.honeCleanUp()).isEqualTo(CommonPractice.honeCleanUp());
        assertThat(bore.centringError()).isEqualTo(CommonPractice.centringError());
        assertThat(bore.largestOversize()).isEqualTo(CommonPractice.largestOversize(LengthUnit.MILLIMETRE));
        assertThat(bore.expansion()).isEqualTo(new Expansion(11.0e-6, Expansion.USUAL_UNCERTAINTY));
        assertThat(shelf("HALVERN-T2").parts().gasketKits())
                .allMatch(kit -> kit.shape().margin().equals(CommonPractice.gasketMargin()));
        assertThat(shelf("HALVERN-T2").engine().limits().finishedShape()).isEqualTo(CommonPractice.finishedShape());
    }

    @Test
    void whatAnEngineStatesStandsInItsPlace() {
        assertThat(shelf("OSTRAVEL-4").engine().bore().expansion()).isEqualTo(new Expansion(11.0e-6, 0.5e-6));
        assertThat(shelf("OSTRAVEL-4").engine().bore().honeCleanUp()).isEqualTo(Length.ofMicrometres(8));
        assertThat(shelf("OSTRAVEL-4").engine().limits().finishedShape()).isEqualTo(Length.ofMicrometres(12));
    }

    /** +1.00 mm, +0.040 in: common practice, where the engine states no largest oversize of its own. */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, , 1.000", "INCH, , 1.016", "INCH, 0.762, 0.762", "MILLIMETRE, 1.500, 1.500"})
    void theLargestOversizeGoesByTheStepsOfTheEngine(LengthUnit steps, Length stated, Length largest) {
        CatalogRows rows =
                Delivery.from(Path.of("src/test/resources/catalog-small")).rows();
        rows.of(EngineRow.class).forEach(row -> {
            row.steps = steps;
            row.largestOversize = stated;
        });
        Shelf shelf = Stocktaking.of(rows, SMALL.revision(), Instant.EPOCH)
                .shelf("HALVERN-T2")
                .orElseThrow();

        assertThat(shelf.engine().bore().largestOversize()).isEqualTo(largest);
    }

    /** How far an iron sleeve follows the aluminium around it is only estimated: 3 × 10⁻⁶ /K where nothing is stated. */
    @ParameterizedTest
    @CsvSource({
        "SLEEVED_ALUMINIUM_BARREL, , 3e-6",
        "SLEEVED_ALUMINIUM_BARREL, 2.0, 2e-6",
        "IRON_BARREL, , 1e-6",
        "IRON_BARREL, 2.0, 2e-6"
    })
    void theGrowthOfASleeveInAluminiumIsLessWellKnown(Construction construction, Double stated, double uncertainty) {
        CatalogRows rows =
                Delivery.from(Path.of("src/test/resources/catalog-small")).rows();
        rows.of(EngineRow.class).stream()
                .filter(row -> row.engine.equals("HALVERN-T2"))
                .forEach(row -> {
                    row.construction = construction;
                    row.expansionUncertainty = stated;
                });
        Shelf shelf = Stocktaking.of(rows, SMALL.revision(), Instant.EPOCH)
                .shelf("HALVERN-T2")
                .orElseThrow();

        assertThat(shelf.engine().bore().expansion().standardUncertainty()).isCloseTo(uncertainty, within(1e-18));
    }

    @ParameterizedTest
    @CsvSource({"NH-OS4-000, 77.200, 70.200", "NH-OS4-025, 77.450, 70.450", "NH-OS4-050, 77.700, 70.700"})
    void nominalBoreAndBottomOfTheGroovesGrowWithTheSize(String piston, String bore, String root) {
        GrooveShape top = shape(piston).grooves().get(0);

        assertThat(shape(piston).nominalBore()).isEqualTo(Length.parseMillimetres(bore));
        assertThat(top.root().greatest()).isEqualTo(Length.parseMillimetres(root));
    }

    private static PistonShape shape(String piston) {
        return shelf("OSTRAVEL-4").parts().pistons().stream()
                .filter(made -> made.number().text().equals(piston))
                .findFirst()
                .orElseThrow()
                .shape();
    }

    @Test
    void ringsLieFromTheTopAndAreGaugedAtTheBoreOfTheirSet() {
        assertThat(shelf("OSTRAVEL-4").parts().ringSets()).allSatisfy(set -> {
            assertThat(set.rings()).extracting(RingShape::groove).containsExactly("top", "second", "oil");
            assertThat(set.rings()).extracting(RingShape::gaugeBore).containsOnly(set.nominalBore());
        });
    }

    @Test
    void boxesThatHoldNothingOfAnEngineAreNotOnItsShelf() {
        assertThat(shelf("HALVERN-T2").boxes()).isEmpty();
        assertThat(shelf("OSTRAVEL-4").boxes()).hasSize(7);
    }

    @Test
    void aWithdrawalLiesOnTheShelfOfItsEngine() {
        assertThat(shelf("HALVERN-T2").withdrawals()).containsOnlyKeys(new PartNumber("HVT2-GKA"));
        assertThat(shelf("OSTRAVEL-4").withdrawals()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"TV-HT2-050R, 0, 20", "NH-OS4-EB025, 1, 14"})
    void anOfferJoinsPriceAndStock(String number, int onHand, int leadDays) {
        Offer offer = SMALL.offers().of(new PartNumber(number)).orElseThrow();

        assertThat(offer.onHand()).isEqualTo(onHand);
        assertThat(offer.leadDays()).isEqualTo(OptionalInt.of(leadDays));
    }

    @ParameterizedTest
    @CsvSource({
        "BG-1, BORE_GAUGE, 0.004, REGISTER, 0.001, 0.001, 2026-11-09",
        // never calibrated: the usual U of its kind
        "MIC-1, MICROMETER, 0.003, COMMON_PRACTICE, 0.002, 0, ",
    })
    void aGaugeIsWorthWhatItsLineSaysAndElseTheUsual(
            String name,
            Gauge.Kind kind,
            Length uncertainty,
            Gauge.Source source,
            Length resolution,
            Length repeatability,
            LocalDate due) {
        Gauge gauge = SMALL.gauge(name).orElseThrow();

        assertThat(gauge.kind()).isEqualTo(kind);
        assertThat(gauge.name()).contains(name);
        assertThat(gauge.expandedUncertainty()).isEqualTo(uncertainty);
        assertThat(gauge.uncertaintySource()).isEqualTo(source);
        assertThat(gauge.resolution()).isEqualTo(resolution);
        assertThat(gauge.resolutionSource()).isEqualTo(Gauge.Source.REGISTER);
        assertThat(gauge.repeatability()).isEqualTo(repeatability);
        assertThat(gauge.calibration().due()).isEqualTo(Optional.ofNullable(due));
        assertThat(gauge.ring()).isEmpty();
    }

    @Test
    void aNumberWithoutAPriceIsNotOffered() {
        assertThat(SMALL.offers().of(new PartNumber("HVT2-GKA"))).isEmpty();
    }
}
