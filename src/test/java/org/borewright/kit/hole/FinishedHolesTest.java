package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Hand;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Size;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.TwinShop;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a finished hole of the twin at a size; U of a diameter is 0.005 281 mm at standard. */
class FinishedHolesTest {

    @ParameterizedTest(name = "{0} at {1}: {2} {3}, metal {4}")
    @CsvSource({
        "70.010, standard, AS_IS, CERTAIN, 0",
        "69.995280, standard, AS_IS, POSSIBLE, 0",
        // the bar leaves the hone 0.05 and goes first where U more is left: 70.250 − 0.05 − 0.005 282 = 70.194 718
        "70.010, +0.25, REBORE, CERTAIN, 0.240",
        "70.194718, +0.25, REBORE, CERTAIN, 0.055282",
        "70.194719, +0.25, HONE_ONLY, CERTAIN, 0.055281",
        // the window of +0.25 is out of reach up to 70.240 − 0.005 282
        "70.234718, +0.25, HONE_ONLY, CERTAIN, 0.015282",
        "70.234719, +0.25, AS_IS, POSSIBLE, 0",
        // larger than the size already: no metal is taken
        "70.300, standard, HONE_ONLY, NO, ",
        "70.010, +1.00, REBORE, CERTAIN, 0.990",
    })
    void aFinishedHoleFitsOrIsBoredOrHoned(String diameter, String size, Work work, String certainty, String metal) {
        HoleAtSize fate = at(new TwinShop(), diameter, size);

        assertThat(fate.work()).isEqualTo(work);
        assertThat(fate.certainty().name()).isEqualTo(certainty);
        assertThat(fate.metal()).isEqualTo(Optional.ofNullable(metal).map(TwinShop::mm));
    }

    /**
     * Pistons of 69.940 to 69.950 at 0.056, 0.060, 0.100: the target for the smallest is 70.000, no hole below 70.006 − U = 70.000 719 may
     * be left, and 70.040 − U bears every hone of the largest reading + 0.005.
     */
    @ParameterizedTest(name = "{0}: {1} {2} to {3}")
    @CsvSource({
        "69.990, HONE_ONLY, CERTAIN, 70.000",
        "69.995, HONE_ONLY, CERTAIN, 70.000",
        "69.995001, HONE_ONLY, CERTAIN, 70.000001",
        "70.000718, HONE_ONLY, CERTAIN, 70.005718",
        "70.000720, AS_IS, POSSIBLE, 70.000",
    })
    void aFinishedHoleIsHonedPastTheTargetWhereTheWindowHoldsItAndNotCutToTheNextSize(
            String diameter, Work work, String certainty, String finish) {
        TwinShop shop = new TwinShop();
        Piston standard = shop.pistons.get(0);
        shop.pistons.set(0, withLeastClearance(standard, "0.056"));

        HoleAtSize fate = at(shop, diameter, "standard");

        assertThat(fate.work()).isEqualTo(work);
        assertThat(fate.certainty().name()).isEqualTo(certainty);
        assertThat(fate.finish()).isEqualTo(mm(finish));
    }

    /** Grades A 69.940 to 69.945 and B 69.946 to 69.951, 0.040 to 0.100 mm each: targets 70.002 5 and 70.008 5, turning at 70.005 5. */
    @ParameterizedTest(name = "{0}: {1} {2}, of {3}")
    @CsvSource({
        "70.0054, P-A, CERTAIN, P-A P-B",
        "70.0056, P-B, CERTAIN, P-B P-A",
        // proven before not proven, though nearer to the target of none: B needs 69.991 + U
        "69.992, P-A, CERTAIN, P-A P-B",
        "70.036, P-B, CERTAIN, P-B P-A",
        // B holds it up to 70.046 + U, A no further than 70.040 + U
        "70.045282, P-B, POSSIBLE, P-B",
        // as it is before any work, though a hone would make it certain for B
        "69.9852, P-A, POSSIBLE, P-A",
    })
    void ofTwoGradesTheOneProvenAndNearestToTargetGoesInAndTheOtherIsNamed(
            String diameter, String piston, String certainty, String holding) {
        TwinShop shop = new TwinShop();
        Piston standard = shop.pistons.get(0);
        shop.pistons.set(0, graded(standard, "P-A", "69.940", "69.945"));
        shop.pistons.add(1, graded(standard, "P-B", "69.946", "69.951"));

        HoleAtSize fate = at(shop, diameter, "standard");

        assertThat(shop.finished(diameter, "70.010")
                        .finishedHoles(Condition.FINISHED)
                        .get(0)
                        .pistons())
                .extracting(named -> named.number().text())
                .isEqualTo(List.of(holding.split(" ", -1)));
        assertThat(fate.piston().number()).hasToString(piston);
        assertThat(fate.certainty().name()).isEqualTo(certainty);
        assertThat(fate.work()).isEqualTo(Work.AS_IS);
    }

    /** Two sizes whose windows hold the same holes, targets 70.005 and 70.020: the worst hole of the two decides. */
    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource({
        "70.011, 70.011, standard",
        "70.014, 70.014, +0.015",
        "70.011, 70.033, +0.015",
        "70.012, 70.0125, standard",
        // as far from one as from the other: the larger clearance
        "70.0125, 70.0125, standard",
        "70.0125, 70.012501, +0.015",
    })
    void ofTwoSizesTheOneNearestToTargetServes(String first, String second, String size) {
        TwinShop shop = new TwinShop();
        shop.sizes.add(new Size("+0.015", mm("0.015"), false));
        shop.pistons.add(TwinShop.piston("P-015", "+0.015", "0.015", Optional.empty()));
        shop.rings.add(new RingSet(
                TwinShop.no("R-015"),
                "DESIGN-1",
                "+0.015",
                mm("70.015"),
                shop.rings.get(0).rings()));
        shop.offer("P-015", "40", 10);
        shop.offer("R-015", "20", 10);

        assertThat(TwinShop.named(shop.finished(first, second))).isEqualTo(size);
    }

    private static HoleAtSize at(TwinShop shop, String diameter, String size) {
        return shop.finished(diameter, "70.010").table().stream()
                .filter(row -> row.size().label().equals(size))
                .findFirst()
                .orElseThrow()
                .holes()
                .get(0);
    }

    private static Piston withLeastClearance(Piston piston, String least) {
        ClearanceWindow window = piston.shape().clearance();
        return like(
                piston,
                piston.number(),
                piston.grade(),
                piston.shape().diameter(),
                new ClearanceWindow(mm(least), window.target(), window.greatest()));
    }

    private static Piston graded(Piston piston, String number, String least, String greatest) {
        return like(
                piston,
                TwinShop.no(number),
                Optional.of(number),
                new Limits(mm(least), mm(greatest)),
                piston.shape().clearance());
    }

    private static Piston like(
            Piston piston, PartNumber number, Optional<String> grade, Limits diameter, ClearanceWindow clearance) {
        PistonShape shape = piston.shape();
        return new Piston(
                number,
                piston.design(),
                piston.size(),
                Hand.ANY,
                grade,
                new PistonShape(
                        diameter,
                        shape.nominalBore(),
                        clearance,
                        shape.crown(),
                        shape.grooves(),
                        shape.pinSeat(),
                        shape.clipSeat(),
                        shape.mass()));
    }
}
