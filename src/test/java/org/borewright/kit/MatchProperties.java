package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.borewright.catalog.Box;
import org.borewright.catalog.PartNumber;
import org.borewright.fit.Certainty;
import org.borewright.fit.CleanUp;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.Need;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;

/** What holds of every match, whatever the readings. */
class MatchProperties {

    private static final List<Axis> AXES = List.of(Axis.THRUST, Axis.PIN);

    private final TwinShop shop = new TwinShop();

    @Property(tries = 300)
    void moreWearNeverGivesASmallerSize(
            @ForAll @LongRange(min = 69_980_000, max = 71_300_000) long first,
            @ForAll @LongRange(min = 69_980_000, max = 71_300_000) long second,
            @ForAll @LongRange(min = 0, max = 500_000) long more,
            @ForAll @LongRange(min = 0, max = 500_000) long moreOfTheOther) {
        int before = sizeOf(worn(hole("1", first), hole("2", second)));
        int after = sizeOf(worn(hole("1", first + more), hole("2", second + moreOfTheOther)));

        assertThat(after).isGreaterThanOrEqualTo(before);
    }

    /** A grid worn further in one cell; the unworn cells keep the size when new where it was. */
    @Property(tries = 200)
    void moreWearAtOnePlaceOfAGridNeverGivesASmallerSize(
            @ForAll @Size(6) List<@LongRange(min = 70_000_000, max = 70_500_000) Long> cells,
            @ForAll @IntRange(max = 5) int place,
            @ForAll @LongRange(min = 0, max = 500_000) long more,
            @ForAll @LongRange(min = 69_980_000, max = 70_500_000) long other) {
        List<Long> further = new ArrayList<>(cells);
        further.set(place, cells.get(place) + more);

        int before = sizeOf(worn(grid(AXES, cells), hole("2", other)));
        int after = sizeOf(worn(grid(AXES, further), hole("2", other)));

        assertThat(after).isGreaterThanOrEqualTo(before);
    }

    /** The place of the named size among the sizes; beyond all of them when none is named. */
    private int sizeOf(Match match) {
        return match.ruling().row().map(row -> shop.sizes.indexOf(row.size())).orElse(shop.sizes.size());
    }

    private Match worn(CylinderSurvey... holes) {
        return shop.ask(shop.request(Condition.WORN, "standard", List.of(holes)));
    }

    private static CylinderSurvey hole(String name, long nanometres) {
        return new CylinderSurvey(name, new SingleDiameter(Length.ofNanometres(nanometres)), Wall.UNKNOWN, List.of());
    }

    @Property(tries = 200)
    void theOrderOfTheCylindersDoesNotMatter(
            @ForAll @LongRange(min = 69_950_000, max = 70_900_000) long first,
            @ForAll @LongRange(min = 69_950_000, max = 70_900_000) long second) {
        Match asCounted = worn(hole("1", first), hole("2", second));
        Match swapped = worn(hole("1", second), hole("2", first));

        assertSameAnswer(swapped, asCounted);
        assertThat(swapped.job().total()).isEqualTo(asCounted.job().total());
        for (int i = 0; i < 2; i++) {
            HoleReport there = swapped.holes().get(1 - i);
            HoleReport here = asCounted.holes().get(i);
            assertThat(there.cleanUp()).isEqualTo(here.cleanUp());
            assertThat(there.ringGaps()).isEqualTo(here.ringGaps());
            assertThat(there.checks()).isEqualTo(here.checks());
        }
    }

    private static void assertSameAnswer(Match other, Match match) {
        assertThat(other.ruling().verdict()).isEqualTo(match.ruling().verdict());
        assertThat(TwinShop.named(other)).isEqualTo(TwinShop.named(match));
        assertThat(TwinShop.table(other)).isEqualTo(TwinShop.table(match));
        assertThat(other.ruling().holds().stream().map(Hold::reason).toList())
                .isEqualTo(match.ruling().holds().stream().map(Hold::reason).toList());
    }

    @Property(tries = 200)
    void theOrderOfAxesAndOfRowsOfAGridDoesNotMatter(
            @ForAll @Size(6) List<@LongRange(min = 69_980_000, max = 70_400_000) Long> cells) {
        Match asRead = worn(grid(AXES, cells), hole("2", 70_000_000));
        Match turned = worn(
                grid(
                        List.of(Axis.PIN, Axis.THRUST),
                        Stream.of(5, 4, 1, 0, 3, 2).map(cells::get).toList()),
                hole("2", 70_000_000));

        assertSameAnswer(turned, asRead);
        assertThat(turned.holes().get(0).cleanUp())
                .isEqualTo(asRead.holes().get(0).cleanUp());
        assertThat(turned.holes().get(0).hole().wear())
                .isEqualTo(asRead.holes().get(0).hole().wear());
    }

    /** A grid of the first hole at three depths, its cells row by row; somebody stands by them, so that they are computed with. */
    private static CylinderSurvey grid(List<Axis> axes, List<Long> cells) {
        List<List<Optional<Length>>> rows = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            rows.add(cells.subList(2 * row, 2 * row + 2).stream()
                    .map(cell -> Optional.of(Length.ofNanometres(cell)))
                    .toList());
        }
        List<Length> depths = List.of(TwinShop.mm("10"), TwinShop.mm("45"), TwinShop.mm("90"));
        return new CylinderSurvey("1", new Grid(depths, axes, rows), Wall.UNKNOWN, List.of(), true);
    }

    /** The bar leaves the hone its 0.05 mm, and the guard on top: what is left of the finish of a certain size. */
    @Property(tries = 200)
    void aCertainSizeClearsTheCleanUpByItsGuard(
            @ForAll @LongRange(min = 69_980_000, max = 70_900_000) long first,
            @ForAll @LongRange(min = 69_980_000, max = 70_900_000) long second) {
        Match match = worn(hole("1", first), hole("2", second));

        for (HoleReport report : match.holes()) {
            CleanUp cleanUp = report.hole().cleanUp();
            match.table().stream()
                    .filter(row -> row.size().oversize().isMoreThan(Length.ZERO))
                    .filter(row -> row.certainty() == Certainty.CERTAIN)
                    .map(row -> row.choice().orElseThrow().finish())
                    .forEach(finish -> assertThat(finish.minus(TwinShop.mm("0.05"))
                                    .minus(cleanUp.worst().orElseThrow()))
                            .isGreaterThanOrEqualTo(cleanUp.guard()));
            assertThat(cleanUp.guard()).isEqualTo(report.hole().uncertainty().doubled());
        }
    }

    @Property(tries = 200)
    void everyNeedIsCoveredOnceAndNothingIsCoveredTwice(
            @ForAll @IntRange(max = 3) int engineBoxes,
            @ForAll @IntRange(max = 3) int cylinderBoxes,
            @ForAll @IntRange(max = 3) int pistons,
            @ForAll @IntRange(max = 3) int rings) {
        Kit kit = shopWith(engineBoxes, cylinderBoxes, pistons, rings)
                .worn("standard", "70.110", "70.020")
                .ruling()
                .row()
                .orElseThrow()
                .kit()
                .orElseThrow();

        Map<PartNumber, Integer> covered = kit.lines().stream()
                .flatMap(line -> line.covers().stream())
                .collect(Collectors.toMap(Need::number, Need::count, Integer::sum));
        Map<PartNumber, Integer> needed = kit.needs().stream().collect(Collectors.toMap(Need::number, Need::count));
        assertThat(covered).isEqualTo(needed);
        assertThat(kit.lines().stream()
                        .flatMap(line -> line.covers().stream())
                        .map(Need::holes)
                        .map(List::size)
                        .mapToInt(Integer::intValue)
                        .sum())
                .isEqualTo(needed.values().stream().mapToInt(Integer::intValue).sum());
        assertThat(kit.lines().stream()
                        .collect(Collectors.groupingBy(line -> line.box().number(), Collectors.counting())))
                .allSatisfy((number, lines) -> assertThat(lines).isEqualTo(1));
    }

    private static TwinShop shopWith(int engineBoxes, int cylinderBoxes, int pistons, int rings) {
        TwinShop shop = new TwinShop();
        shop.box("EB-050", Box.Kind.ENGINE_BOX, "P-050 2 R-050 2 PIN-1 2 CLIP-1 4 GK-1 1", "140", engineBoxes);
        shop.box("CB-050", Box.Kind.CYLINDER_BOX, "P-050 1 R-050 1 PIN-1 1 CLIP-1 2", "62", cylinderBoxes);
        shop.offer("P-050", "40", pistons);
        shop.offer("R-050", "20", rings);
        return shop;
    }

    @Property(tries = 50)
    void theSameRequestGivesTheSameAnswer(@ForAll @LongRange(min = 69_980_000, max = 70_900_000) long diameter) {
        Function<TwinShop, Match> ask = asked -> asked.ask(
                asked.request(Condition.WORN, "standard", List.of(hole("1", diameter), hole("2", 70_000_000))));

        assertThat(ask.apply(new TwinShop())).isEqualTo(ask.apply(new TwinShop()));
    }
}
