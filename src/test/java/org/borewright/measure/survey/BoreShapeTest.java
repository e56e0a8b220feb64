package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.measure.survey.Grids.grid;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.borewright.measure.Length;
import org.borewright.measure.survey.BoreShape.Form;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class BoreShapeTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/measure/bore-shapes.csv", useHeadersInDisplayName = true)
    void theShapeIsReadOffTheGrid(String rows, Length taper, Length bottomMinusTop, Length outOfRound, Form form) {
        assertThat(BoreShape.of(grid(rows))).isEqualTo(new BoreShape(taper, bottomMinusTop, outOfRound, form));
    }

    @ParameterizedTest
    @CsvSource({
        "STRAIGHT, straight",
        "TAPERED_TO_BOTTOM, narrows downward",
        "BELL_MOUTH, bell-mouth",
        "BARREL, barrel",
        "WAIST, waist"
    })
    void everyFormHasItsNameInTheTrade(Form form, String label) {
        assertThat(form.label()).isEqualTo(label);
    }

    @Property
    boolean theOrderOfTheAxesDoesNotMatter(@ForAll("columns") List<List<Length>> columns) {
        BoreShape shape = BoreShape.of(ofColumns(columns));
        BoreShape exchanged = BoreShape.of(ofColumns(reversed(columns)));
        return shape.taper().equals(exchanged.taper()) && shape.outOfRound().equals(exchanged.outOfRound());
    }

    @Property
    boolean readFromTheBottomTheFiguresAreTheSame(@ForAll("columns") List<List<Length>> columns) {
        BoreShape shape = BoreShape.of(ofColumns(columns));
        BoreShape turned = BoreShape.of(
                ofColumns(columns.stream().map(BoreShapeTest::reversed).toList()));
        return shape.taper().equals(turned.taper())
                && shape.outOfRound().equals(turned.outOfRound())
                && shape.bottomMinusTop().equals(Length.ZERO.minus(turned.bottomMinusTop()));
    }

    @Property
    boolean aLargerHoleOfTheSameShapeHasTheSameShape(@ForAll("columns") List<List<Length>> columns) {
        Grid grid = ofColumns(columns);
        return BoreShape.of(grid.map(reading -> reading.plus(Length.ofMicrometres(250))))
                .equals(BoreShape.of(grid));
    }

    @Property
    boolean theSignedDifferenceIsNeverMoreThanTheTaper(@ForAll("columns") List<List<Length>> columns) {
        BoreShape shape = BoreShape.of(ofColumns(columns));
        return !shape.bottomMinusTop().absolute().isMoreThan(shape.taper())
                && !shape.outOfRound().isNegative()
                && (shape.form() == Form.STRAIGHT) == shape.taper().equals(Length.ZERO);
    }

    /** Two axes, two to five depths, within 0.050 mm above 70 mm. */
    @Provide
    Arbitrary<List<List<Length>>> columns() {
        Arbitrary<Length> reading = Arbitraries.longs().between(70_000, 70_050).map(Length::ofMicrometres);
        return Arbitraries.integers()
                .between(2, 5)
                .flatMap(depths -> reading.list().ofSize(depths).list().ofSize(2));
    }

    private static Grid ofColumns(List<List<Length>> columns) {
        int depths = columns.get(0).size();
        List<List<Optional<Length>>> rows = IntStream.range(0, depths)
                .mapToObj(row -> columns.stream()
                        .map(column -> Optional.of(column.get(row)))
                        .toList())
                .toList();
        return new Grid(Grids.depths(depths), List.of(Axis.THRUST, Axis.PIN), rows);
    }

    private static <T> List<T> reversed(List<T> list) {
        return IntStream.range(0, list.size())
                .mapToObj(i -> list.get(list.size() - 1 - i))
                .toList();
    }
}
