package org.borewright.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.borewright.catalog.Box;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Outcome;
import org.borewright.fit.shape.BoreSurface;
import org.borewright.kit.choice.Block;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.GasketFit;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo catalogue holds one of everything that is awkward in the trade. */
class DemoCatalogueTest {

    @Test
    void nothingIsBadAboutIt() {
        assertThat(Demo.DELIVERY.bad()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "HALVERN-131,    two-stroke single",
        "HALVERN-T2,     two-stroke parallel twin",
        "MIRENDAL-P1,    two-stroke single",
        "BRIMSLEIGH-S34, four-stroke single",
        "DRUMLACH-S1,    four-stroke single",
        "TORRESK-P2,     four-stroke parallel twin",
        "KOVARDA-V11,    four-stroke V-twin",
        "DRUMLACH-F2,    four-stroke flat twin",
        "SELVARRE-3,     four-stroke inline three",
        "OSTRAVEL-4,     four-stroke inline four",
        "TORRESK-F4,     four-stroke inline four",
        "OSTRAVEL-6,     four-stroke inline six",
    })
    void itHoldsEnginesOfManyFamilies(String code, String family) {
        Engine engine = Demo.shelf(code).engine();

        assertThat((engine.build().strokes().count() == 2 ? "two" : "four") + "-stroke "
                        + engine.build().layout().label())
                .isEqualTo(family);
    }

    @Test
    void itHoldsTwelveEngines() {
        assertThat(Demo.CATALOGUE.engines()).hasSize(12);
    }

    @Test
    void theTwoStrokeTwinHasLeftAndRightPistonsAtEverySize() {
        Shelf twin = Demo.shelf("HALVERN-T2");

        assertThat(twin.engine().cylinders()).extracting(hole -> hole.hand()).containsExactly(Hand.LEFT, Hand.RIGHT);
        assertThat(twin.sizes())
                .allSatisfy(size -> assertThat(Demo.pistons(twin, size.label()))
                        .extracting(Piston::hand)
                        .containsExactly(Hand.LEFT, Hand.RIGHT));
    }

    @Test
    void oneInlineFourIsAnIronBlockWithSiamesedHoles() {
        Engine block = Demo.shelf("OSTRAVEL-4").engine();

        assertThat(block.build().construction()).isEqualTo(Construction.BLOCK);
        assertThat(block.build().surface()).isEqualTo(BoreSurface.IRON);
        assertThat(block.cylinders().subList(0, 3))
                .allSatisfy(hole -> assertThat(hole.pitchToNext()).isPresent());
        assertThat(block.wall().bridgeLeast()).isPresent();
    }

    @Test
    void oneEngineStepsInInchesFromTenToFortyThousandths() {
        Shelf inches = Demo.shelf("BRIMSLEIGH-S34");

        assertThat(inches.engine().build().steps()).isEqualTo(LengthUnit.INCH);
        assertThat(inches.sizes())
                .extracting(Size::label)
                .containsExactly("standard", "+0.010 in", "+0.020 in", "+0.030 in", "+0.040 in");
        assertThat(inches.sizes())
                .extracting(size -> size.oversize().nanometres())
                .containsExactly(0L, 254_000L, 508_000L, 762_000L, 1_016_000L);
    }

    @Test
    void onePlatedEngineIsNeverBoredAndMadeAtStandardAlone() {
        Shelf plated = Demo.shelf("MIRENDAL-P1");

        assertThat(plated.engine().build().construction()).isEqualTo(Construction.PLATED);
        assertThat(plated.engine().build().construction().mayBeBored()).isFalse();
        assertThat(plated.sizes()).extracting(Size::label).containsExactly("standard");
    }

    @ParameterizedTest
    @ValueSource(strings = {"MIRENDAL-P1", "TORRESK-P2"})
    void gradesABCRiseAtStandardAndAreNoOversizes(String code) {
        Shelf graded = Demo.shelf(code);
        List<Piston> atStandard = Demo.pistons(graded, "standard");

        assertThat(atStandard).extracting(piston -> piston.grade().orElse("")).containsExactly("A", "B", "C");
        assertThat(atStandard)
                .isSortedAccordingTo((one, other) -> one.shape()
                        .diameter()
                        .least()
                        .compareTo(other.shape().diameter().least()));
        assertThat(graded.parts().pistons())
                .filteredOn(piston -> !piston.size().equals("standard"))
                .allSatisfy(piston -> assertThat(piston.grade()).isEmpty());
    }

    @Test
    void twoMakersPistonsForOneEngineFinishAtDifferentHolesOfOneSize() {
        Shelf four = Demo.shelf("TORRESK-F4");
        List<Piston> halfOver = Demo.pistons(four, "+0.50");

        assertThat(four.parts().designs()).extracting(PistonDesign::maker).containsExactly("Norheim", "Kelvarn");
        assertThat(halfOver).extracting(Piston::design).containsExactly("NORHEIM-TF4", "KELVARN-TF4");
        assertThat(halfOver.get(0).shape().clearance())
                .isNotEqualTo(halfOver.get(1).shape().clearance());
        assertThat(halfOver.get(1)
                        .shape()
                        .finishForCleanUp()
                        .minus(halfOver.get(0).shape().finishForCleanUp()))
                .as("as the README says")
                .isEqualTo(Length.ofMicrometres(55));
    }

    @Test
    void oneMakerSellsRingsForAPistonAndTheOtherForAnEngine() {
        Shelf four = Demo.shelf("TORRESK-F4");

        assertThat(ringSets(four, "KELVARN-TF4")).isNotEmpty().allMatch(DemoCatalogueTest::isSoldLoose);
        assertThat(ringSets(four, "NORHEIM-TF4"))
                .isNotEmpty()
                .noneMatch(DemoCatalogueTest::isSoldLoose)
                .allSatisfy(set -> assertThat(four.boxes())
                        .filteredOn(box -> box.contents().containsKey(set.number()))
                        .singleElement()
                        .satisfies(pack -> assertThat(pack.contents()).containsOnlyKeys(set.number()))
                        .satisfies(pack -> assertThat(pack.contents().get(set.number()))
                                .isEqualTo(four.engine().cylinders().size())));
    }

    @Test
    void anEngineBoxStandsBesideCylinderBoxesAndLooseParts() {
        Shelf four = Demo.shelf("OSTRAVEL-4");
        PartNumber piston = new PartNumber("NH-OS4-050");

        assertThat(four.boxes())
                .filteredOn(box -> box.contents().containsKey(piston))
                .extracting(Box::kind)
                .containsExactlyInAnyOrder(Box.Kind.ENGINE_BOX, Box.Kind.CYLINDER_BOX);
        assertThat(Demo.CATALOGUE.offers().of(piston)).isPresent();
        assertThat(ringSets(four, "NORHEIM-OS4")).allMatch(DemoCatalogueTest::isSoldLoose);
    }

    @ParameterizedTest
    @CsvSource({
        "HVT2-GKA,     replaced,     HVT2-GKB",
        "KV-BS34-020,  replaced,     KV-BS34-020A",
        "KV-DS1-G1,    replaced,     KV-DS1-G2",
        "KV-DS1-G2,    replaced,     KV-DS1-G3",
        "NH-KV11-075F, discontinued,",
        "NH-OS4-EB075, discontinued,",
        "NH-TP2-R075,  never made,",
        "TV-SV3-075,   never made,",
    })
    void partsAreReplacedDiscontinuedOrNeverMade(String number, String state, String replacedBy) {
        Withdrawal withdrawal = Demo.CATALOGUE
                .listing(new PartNumber(number))
                .orElseThrow()
                .withdrawal()
                .orElseThrow();

        assertThat(withdrawal.state().label()).isEqualTo(state);
        assertThat(withdrawal.replacedBy().map(PartNumber::text)).isEqualTo(Optional.ofNullable(replacedBy));
    }

    @Test
    void aPistonOfOneAndAQuarterNeedsFurtherWorkAndIsNotOffered() {
        Shelf single = Demo.shelf("HALVERN-131");
        Size size = single.size("+1.25").orElseThrow();

        assertThat(size.furtherWork()).isTrue();
        assertThat(Demo.pistons(single, "+1.25"))
                .extracting(piston -> piston.number().text())
                .containsExactly("NH-H131-125");
        assertThat(FitTable.of(single).at(size).get(0).blocks())
                .extracting(Block::reason)
                .contains(Block.Reason.FURTHER_WORK);
    }

    /** The kit of the three bears 0.11 mm, that of the two-stroke 0.15 mm; 0.20 and 0.30 mm are allowed at the most. */
    @ParameterizedTest(name = "{0}, {1} skimmed: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            SELVARRE-3  | 0.11     | SVR3-GK; SVR3-GK with SVR3-H13
            SELVARRE-3  | 0.110001 | SVR3-GK with SVR3-H13
            SELVARRE-3  | 0.139999 | SVR3-GK with SVR3-H13
            SELVARRE-3  | 0.14     | SVR3-GK with SVR3-H14; SVR3-GK with SVR3-H13
            SELVARRE-3  | 0.20     | SVR3-GK with SVR3-H14; SVR3-GK with SVR3-H13
            SELVARRE-3  | 0.200001 | ''
            HALVERN-131 | 0        | HV131-GK; HV131-GK with HV131-B06; HV131-GK with HV131-B04
            HALVERN-131 | 0.15     | HV131-GK; HV131-GK with HV131-B06
            HALVERN-131 | 0.150001 | HV131-GK with HV131-B06
            HALVERN-131 | 0.30     | HV131-GK with HV131-B08
            """)
    void aThickerGasketRescuesASkimmedDeck(String engine, Length skims, String sets) {
        assertThat(String.join("; ", gasketsThatFit(Demo.shelf(engine), "+0.50", skims)))
                .isEqualTo(sets);
    }

    @Test
    void aGasketKitTooSmallForTheLargestSizeLiesBesideOneThatFits() {
        Shelf four = Demo.shelf("OSTRAVEL-4");

        assertThat(gasketsThatFit(four, "+1.00")).containsExactly("OVS4-GKL");
        assertThat(gasketsThatFit(four, "+0.75")).containsExactlyInAnyOrder("OVS4-GK", "OVS4-GKL");
    }

    /** The misfits of the README, and the sizes of which something was never made. */
    @Test
    void everyOtherPartFitsAtItsSize() {
        List<String> blocked = new ArrayList<>();
        for (Shelf shelf : Demo.CATALOGUE.shelves().values()) {
            FitTable fits = FitTable.of(shelf);
            for (Size size : shelf.sizes()) {
                boolean offered = fits.at(size).stream()
                        .anyMatch(choice -> choice.blocks().isEmpty()
                                && choice.gaskets().stream().anyMatch(GasketFit::fits)
                                && choice.wallAsMade().stream().allMatch(wall -> wall.outcome() == Outcome.IN));
                if (!offered) {
                    blocked.add(shelf.engine().code() + " " + size.label());
                }
            }
        }

        assertThat(blocked).containsExactly("HALVERN-131 +1.25", "SELVARRE-3 +0.75", "TORRESK-P2 +0.75");
    }

    @ParameterizedTest
    @CsvSource({"HALVERN-131, +0.75, 9", "OSTRAVEL-4, +1.00, 28"})
    void aSizeIsOutOfStockAndCanBeHadInDays(String code, String size, int days) {
        Shelf shelf = Demo.shelf(code);
        List<PartNumber> pistons =
                Demo.pistons(shelf, size).stream().map(Piston::number).toList();

        assertThat(pistons)
                .extracting(number -> Demo.CATALOGUE.offers().of(number).orElseThrow())
                .extracting(Offer::onHand, Offer::leadDays)
                .containsOnly(tuple(0, OptionalInt.of(days)));
        assertThat(shelf.boxes())
                .noneMatch(box ->
                        pistons.stream().anyMatch(piston -> box.contents().containsKey(piston)));
    }

    private static List<RingSet> ringSets(Shelf shelf, String design) {
        return shelf.parts().ringSets().stream()
                .filter(set -> set.design().equals(design))
                .toList();
    }

    private static boolean isSoldLoose(Part part) {
        return Demo.CATALOGUE.offers().of(part.number()).isPresent();
    }

    private static List<String> gasketsThatFit(Shelf shelf, String size) {
        return gasketsThatFit(shelf, size, Length.ZERO);
    }

    private static List<String> gasketsThatFit(Shelf shelf, String size, Length skims) {
        FitTable fits = FitTable.of(shelf);
        return GasketFit.fitting(
                        fits.gaskets(fits.at(shelf.size(size).orElseThrow()).get(0), skims))
                .stream()
                .map(fit -> fit.gaskets().words())
                .toList();
    }
}
