package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Construction;
import org.borewright.fit.Certainty;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.survey.Finding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a worn hole of the twin, new at 70.000 mm; U of a diameter is 0.005 281 mm up to 70.115 and 0.005 282 up to 70.260. */
class WornHolesTest {

    private final TwinShop shop = new TwinShop();

    @ParameterizedTest(name = "{0} at {1} in an engine of {2}: {3} {4}")
    @CsvSource({
        "IRON_BARREL, standard, standard, HONE_ONLY, POSSIBLE",
        "IRON_BARREL, +0.25, standard, REBORE, CERTAIN",
        "IRON_BARREL, standard, +0.25, REBORE, NO",
        "IRON_BARREL, +0.25, +0.25, HONE_ONLY, CERTAIN",
        // nobody knows the present size: the bar cuts every size
        "IRON_BARREL, standard, -, REBORE, NO",
        "IRON_BARREL, +0.25, -, REBORE, POSSIBLE",
        "PLATED, standard, standard, AS_IS, CERTAIN",
        "PLATED, standard, -, AS_IS, CERTAIN",
        "PLATED, +0.25, standard, AS_IS, NO",
    })
    void theHoneServesThePresentSizeTheBarEveryOtherAndNeitherAPlatedWall(
            Construction construction, String size, String present, Work work, Certainty certainty) {
        shop.construction = construction;

        HoleAtSize fate = at(size, present, "69.998");

        assertThat(fate.work()).isEqualTo(work);
        assertThat(fate.certainty()).isEqualTo(certainty);
    }

    /** Grade A finishes at 70.250, B at 70.256: certain up to (finish + 69.910)/2 − U, excluded beyond finish − 0.050 + U. */
    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource({
        "70.074719, P-A, CERTAIN",
        "70.074720, P-B, CERTAIN",
        "70.077719, P-B, CERTAIN",
        // neither is proven: the smaller, for it takes out less
        "70.077720, P-A, POSSIBLE",
        "70.205282, P-A, POSSIBLE",
        "70.205283, P-B, POSSIBLE",
        "70.211282, P-B, POSSIBLE",
        "70.211283, P-A, NO",
        "-, P-A, POSSIBLE",
    })
    void ofTwoGradesTheSmallestThatCleansTheHoleIsTaken(String diameter, String piston, Certainty certainty) {
        grades("+0.25", "0.25", "0.256");

        HoleAtSize fate = at("+0.25", "standard", diameter);

        assertThat(fate.piston().number()).hasToString(piston);
        assertThat(fate.certainty()).isEqualTo(certainty);
    }

    /** Grade A runs in 69.990 to 70.040 and best in 70.005, B in 69.996 to 70.046 and best in 70.011: as far from either at 70.008. */
    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource({
        "70.007999, P-A, CERTAIN",
        "70.008, P-A, CERTAIN",
        "70.008001, P-B, CERTAIN",
        // proven before nearer
        "70.034720, P-B, CERTAIN",
        // 70.040 + U is beyond A, 70.046 + U beyond both
        "70.045280, P-B, POSSIBLE",
        "70.051281, P-B, NO",
        "-, P-A, POSSIBLE",
    })
    void inAWallThatIsNeverCutTheGradeNearestToItsTargetRuns(String diameter, String piston, Certainty certainty) {
        shop.construction = Construction.PLATED;
        grades("standard", "0", "0.006");

        HoleAtSize fate = at("standard", "standard", diameter);

        assertThat(fate.piston().number()).hasToString(piston);
        assertThat(fate.certainty()).isEqualTo(certainty);
        assertThat(fate.work()).isEqualTo(Work.AS_IS);
    }

    /** By the bar at 70.500: certain up to (70.500 + 69.910)/2 − U, excluded beyond 70.450 + U, there 0.005 284. */
    @ParameterizedTest(name = "{0} {1} of {2} and {3}: {4}")
    @CsvSource({
        "70.199718, , standard, IRON_BARREL, CERTAIN",
        "70.199719, , standard, IRON_BARREL, POSSIBLE",
        "70.455284, , standard, IRON_BARREL, POSSIBLE",
        "70.455285, , standard, IRON_BARREL, NO",
        // no bar goes to the present size, or to a smaller one, or into this wall, and none mends a crack
        "70.060, , +0.50, IRON_BARREL, NO",
        "70.060, , +0.75, IRON_BARREL, NO",
        "70.060, , standard, PLATED, NO",
        "70.060, CRACKED, standard, IRON_BARREL, NO",
        "70.060, SCORED, standard, IRON_BARREL, POSSIBLE",
    })
    void aSizeThatNoPistonWasMadeForIsJudgedByTheBarAlone(
            String diameter, Finding.Kind found, String present, Construction construction, Certainty certainty) {
        shop.construction = construction;
        Finding[] findings =
                found == null ? new Finding[0] : new Finding[] {new Finding(found, Optional.empty(), Optional.empty())};
        Hole hole = Hole.of(
                shop.shelf().engine().bore(),
                shop.shelf().engine().cylinders().get(0),
                TwinShop.survey("1", diameter, findings),
                shop.request(Condition.WORN, present, List.of()).measuring(),
                Optional.of(mm("70.000")));
        WornHoles worn =
                new WornHoles(shop.shelf().engine(), new PresentSize(shop.size(present), PresentSize.KnownFrom.RECORD));

        assertThat(worn.withoutPiston(shop.size("+0.50").orElseThrow(), hole, mm("70.500")))
                .isEqualTo(certainty);
    }

    private HoleAtSize at(String size, String present, String diameter) {
        return shop.worn(present, diameter, "69.998").table().stream()
                .filter(row -> row.size().label().equals(size))
                .findFirst()
                .orElseThrow()
                .holes()
                .get(0);
    }

    private void grades(String size, String oversizeOfA, String oversizeOfB) {
        shop.pistons.removeIf(piston -> piston.size().equals(size));
        shop.pistons.add(TwinShop.piston("P-A", size, oversizeOfA, Optional.of("A")));
        shop.pistons.add(TwinShop.piston("P-B", size, oversizeOfB, Optional.of("B")));
    }
}
