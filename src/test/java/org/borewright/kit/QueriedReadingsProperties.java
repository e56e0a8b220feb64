package org.borewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.statistics.Statistics;
import org.borewright.fit.Certainty;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Wall;

/** What holds of readings in question, whatever they are. */
class QueriedReadingsProperties {

    private static final List<Long> SOUND = List.of(60L, 40L, 50L, 30L, 20L, 10L);

    private final TwinShop shop = new TwinShop();

    @Property(tries = 300)
    void standingByTheReadingsNeverBringsASmallerSize(
            @ForAll("micrometres") List<Long> first, @ForAll("micrometres") List<Long> second) {
        Match asked = ask(hole("1", first, false), hole("2", second, false));
        Match stoodBy = ask(hole("1", first, true), hole("2", second, true));

        Statistics.label("queried").collect(isQueried(asked));
        for (int row = 0; row < asked.table().size(); row++) {
            Certainty before = asked.table().get(row).certainty();
            Certainty after = stoodBy.table().get(row).certainty();
            assertThat(isQueried(asked) && before == Certainty.CERTAIN).isFalse();
            assertThat(before == Certainty.NO && after != Certainty.NO).isFalse();
        }
        assertThat(isQueried(stoodBy)).isFalse();
        if (!isQueried(asked)) {
            assertThat(TwinShop.named(stoodBy)).isEqualTo(TwinShop.named(asked));
        }
    }

    @Property(tries = 200)
    void theOrderOfTheCylindersDoesNotMatter(
            @ForAll("micrometres") List<Long> first, @ForAll("micrometres") List<Long> second) {
        Match asked = ask(hole("1", first, false), hole("2", second, false));
        Match turned = ask(hole("1", second, false), hole("2", first, false));

        assertThat(TwinShop.table(turned)).isEqualTo(TwinShop.table(asked));
        assertThat(turned.ruling().verdict()).isEqualTo(asked.ruling().verdict());
        assertThat(queries(turned, 0)).isEqualTo(queries(asked, 1));
        assertThat(queries(turned, 1)).isEqualTo(queries(asked, 0));
    }

    @Property(tries = 200)
    void aQueriedReadingChangedToAnotherGivesTheSameAnswer(
            @ForAll @LongRange(min = 211, max = 900) long one, @ForAll @LongRange(min = 211, max = 900) long other) {
        Match asked = ask(hole("1", strayBy(one), false), hole("2", SOUND, false));
        Match changed = ask(hole("1", strayBy(other), false), hole("2", SOUND, false));

        assertThat(queries(asked, 0)).isNotEmpty();
        assertThat(changed.ruling().verdict()).isEqualTo(asked.ruling().verdict());
        assertThat(changed.table()).isEqualTo(asked.table());
        assertThat(changed.settling()).isEqualTo(asked.settling());
        assertThat(changed.holes().get(0).cleanUp())
                .isEqualTo(asked.holes().get(0).cleanUp());
        assertThat(changed.ruling().holds())
                .extracting(Hold::reason)
                .isEqualTo(asked.ruling().holds().stream().map(Hold::reason).toList());
    }

    /** Thrust at the second of three depths. */
    private static List<Long> strayBy(long micrometres) {
        return List.of(60L, 40L, micrometres, 30L, 20L, 10L);
    }

    /** Worn by up to a few tenths, so that some are queried and some are not. */
    @Provide
    Arbitrary<List<Long>> micrometres() {
        Arbitrary<Long> worn = Arbitraries.frequencyOf(
                Tuple.of(5, Arbitraries.longs().between(0, 60)),
                Tuple.of(1, Arbitraries.longs().between(0, 400)));
        return Arbitraries.oneOf(worn.list().ofSize(6), Arbitraries.just(SOUND));
    }

    private Match ask(CylinderSurvey... holes) {
        return shop.ask(shop.request(Condition.WORN, "standard", List.of(holes)));
    }

    private static boolean isQueried(Match match) {
        return IntStream.range(0, 2).anyMatch(hole -> !queries(match, hole).isEmpty());
    }

    private static List<Query.Kind> queries(Match match, int hole) {
        return match.holes().get(hole).hole().survey().queries().stream()
                .map(Query::kind)
                .toList();
    }

    private static CylinderSurvey hole(String name, List<Long> over, boolean checked) {
        List<List<Optional<Length>>> rows = IntStream.range(0, over.size() / 2)
                .mapToObj(row -> over.subList(2 * row, 2 * row + 2).stream()
                        .map(cell -> Optional.of(Length.ofMicrometres(70_000 + cell)))
                        .toList())
                .toList();
        Grid grid = new Grid(Grids.depths(rows.size()), List.of(Axis.THRUST, Axis.PIN), rows);
        return new CylinderSurvey(name, grid, Wall.UNKNOWN, List.of(), checked);
    }
}
