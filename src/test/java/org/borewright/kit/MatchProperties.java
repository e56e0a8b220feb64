package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.catalog.Box;
import org.borewright.catalog.PartNumber;
import org.borewright.fit.Certainty;
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

    private final TwinShop shop = new TwinShop();

    @Property(tries = 300)
    void more_wear_never_gives_a_smaller_size(
            @ForAll @LongRange(min = 69_900_000, max = 71_300_000) long diameter,
            @ForAll @LongRange(min = 0, max = 500_000) long more) {
        int before = sizeOf(diameter, 70_000_000);
        int after = sizeOf(diameter + more, 70_000_000);

        assertThat(after).isGreaterThanOrEqualTo(before);
    }

    /** The place of the named size among the sizes; beyond all of them when none is named. */
    private int sizeOf(long first, long second) {
        Match match = shop.ask(shop.request(Condition.WORN, "standard", List.of(hole("1", first), hole("2", second))));
        return match.ruling().row().map(row -> shop.sizes.indexOf(row.size())).orElse(shop.sizes.size());
    }

    private static CylinderSurvey hole(String name, long nanometres) {
        return new CylinderSurvey(name, new SingleDiameter(Length.ofNanometres(nanometres)), Wall.UNKNOWN, List.of());
    }

    @Property(tries = 200)
    void the_order_of_the_cylinders_does_not_matter(
            @ForAll @LongRange(min = 69_950_000, max = 70_900_000) long first,
            @ForAll @LongRange(min = 69_950_000, max = 70_900_000) long second) {
        assertThat(sizeOf(first, second)).isEqualTo(sizeOf(second, first));
    }

    @Property(tries = 200)
    void the_order_of_axes_and_of_rows_of_a_grid_does_not_matter(
            @ForAll @LongRange(min = 69_980_000, max = 70_400_000) long top,
            @ForAll @LongRange(min = 69_980_000, max = 70_400_000) long middle,
            @ForAll @LongRange(min = 69_980_000, max = 70_400_000) long bottom) {
        Match asRead = grid(List.of(Axis.THRUST, Axis.PIN), top, middle, bottom);
        Match turned = grid(List.of(Axis.PIN, Axis.THRUST), bottom, top, middle);

        assertThat(TwinShop.named(turned)).isEqualTo(TwinShop.named(asRead));
        assertThat(TwinShop.table(turned)).isEqualTo(TwinShop.table(asRead));
    }

    private Match grid(List<Axis> axes, long... rows) {
        List<Length> depths = List.of(TwinShop.mm("10"), TwinShop.mm("45"), TwinShop.mm("90"));
        Grid grid = new Grid(
                depths,
                axes,
                Arrays.stream(rows)
                        .mapToObj(row -> Collections.nCopies(axes.size(), Optional.of(Length.ofNanometres(row))))
                        .toList());
        CylinderSurvey first = new CylinderSurvey("1", grid, Wall.UNKNOWN, List.of());
        return shop.ask(shop.request(Condition.WORN, "standard", List.of(first, TwinShop.survey("2", "70.000"))));
    }

    @Property(tries = 200)
    void a_certain_size_is_never_below_the_clean_up(
            @ForAll @LongRange(min = 69_980_000, max = 70_900_000) long diameter) {
        Match match =
                shop.ask(shop.request(Condition.WORN, "standard", List.of(hole("1", diameter), hole("2", diameter))));

        for (HoleReport report : match.holes()) {
            Optional<Length> worst = report.hole().cleanUp().worst();
            match.table().stream()
                    .filter(row -> row.size().oversize().isMoreThan(Length.ZERO))
                    .filter(row -> row.certainty() == Certainty.CERTAIN)
                    .map(row -> row.choice().orElseThrow().finish())
                    .forEach(finish -> assertThat(finish).isGreaterThan(worst.orElseThrow()));
        }
    }

    @Property(tries = 200)
    void every_need_is_covered_once_and_nothing_is_covered_twice(
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
    void the_same_request_gives_the_same_answer(@ForAll @LongRange(min = 69_980_000, max = 70_900_000) long diameter) {
        Function<TwinShop, Match> ask = asked -> asked.ask(
                asked.request(Condition.WORN, "standard", List.of(hole("1", diameter), hole("2", 70_000_000))));

        assertThat(ask.apply(new TwinShop())).isEqualTo(ask.apply(new TwinShop()));
    }
}
